package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Watts;

/** Solar charging. */
public record Solar(Facts facts) implements Described {
    private static final Shape.Draft<Solar> DRAFT = Shape.draft("solar", "Solar charging.");
    public static final Key<Watts> RATING =
            DRAFT.required("rating", Type.measured(Watts.SCALE), "Rated power of all panels.");
    public static final Key<String> ALIVE_WITH_SWITCH_OFF =
            DRAFT.optional("with-battery-off", Type.TEXT, "Whether it charges while the house battery switch is off.");
    public static final Shape<Solar> SHAPE = DRAFT.done(Solar::new);
}
