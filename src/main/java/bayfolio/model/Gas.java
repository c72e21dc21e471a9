package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** LP gas. */
public record Gas(Facts facts) implements Described {
    /** How gas is carried. */
    public enum Kind {
        TANK,
        CYLINDERS
    }

    private static final Shape.Draft<Gas> DRAFT = Shape.draft("gas", "LP gas.");
    public static final Key<Kind> KIND =
            DRAFT.required("kind", Type.choice(Kind.class), "A fixed tank or exchange cylinders.");
    public static final Key<Boolean> CRASH_SENSOR =
            DRAFT.optional("crash-sensor", Type.YES_NO, "Whether a crash sensor shuts it.");
    public static final Key<String> WHILE_DRIVING =
            DRAFT.optional("while-driving", Type.TEXT, "Whether gas may be on while driving.");
    public static final Key<String> REGULATOR =
            DRAFT.optional("regulator", Type.TEXT, "The regulator and its pressure.");
    public static final Key<String> THREAD = DRAFT.optional("thread", Type.TEXT, "Which way the connector turns.");
    public static final Shape<Gas> SHAPE = DRAFT.done(Gas::new);
}
