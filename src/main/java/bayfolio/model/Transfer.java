package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Seconds;

/** How the coach changes between shore power and generator. */
public record Transfer(Facts facts) implements Described {
    /** By itself or by hand. */
    public enum Kind {
        AUTOMATIC,
        MANUAL
    }

    private static final Shape.Draft<Transfer> DRAFT =
            Shape.draft("transfer", "The change between shore power and generator.");
    public static final Key<Kind> KIND = DRAFT.required("kind", Type.choice(Kind.class), "By itself or by hand.");
    public static final Key<Seconds> DELAY = DRAFT.optional(
            "delay",
            Type.measured(Seconds.SCALE),
            "From power arriving until the coach has it.",
            Range.of("0.01 s", "300 s").usual("0.02 s", "120 s"));
    public static final Key<String> PRIORITY =
            DRAFT.optional("priority", Type.TEXT, "Which supply wins when both are live.");
    public static final Key<String> NOTE = DRAFT.optional("note", Type.TEXT, "What a renter must know of it.");
    public static final Shape<Transfer> SHAPE = DRAFT.done(Transfer::new);
}
