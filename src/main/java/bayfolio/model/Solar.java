package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Watts;

/** Solar charging. */
public record Solar(Facts facts) implements Described {
    private static final Shape.Draft<Solar> DRAFT = Shape.draft("solar", "Solar charging.");
    public static final Key<Watts> RATING = DRAFT.required(
            "rating",
            Type.measured(Watts.SCALE),
            "Rated power of all panels.",
            Range.of("5 W", "3000 W").usual("50 W", "1600 W").because("about 150 to 230 W a square meter of roof"));
    public static final Key<String> ALIVE_WITH_SWITCH_OFF =
            DRAFT.optional("with-battery-off", Type.TEXT, "Whether it charges while the house battery switch is off.");
    public static final Shape<Solar> SHAPE = DRAFT.done(Solar::new);
}
