package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Watts;

/** Makes AC from the house battery. */
public record Inverter(Facts facts) implements Described {
    private static final Shape.Draft<Inverter> DRAFT = Shape.draft("inverter", "Makes AC from the house battery.");
    public static final Key<Watts> RATING = DRAFT.required(
            "rating",
            Type.measured(Watts.SCALE),
            "What it gives for as long as the battery lasts.",
            Range.of("100 W", "12000 W")
                    .usual("bus-style", "1000 W", "4500 W")
                    .usual("cab-over", "300 W", "3500 W")
                    .usual("low-profile", "150 W", "3000 W")
                    .usual("van", "150 W", "3500 W"));
    public static final Key<Watts> SURGE = DRAFT.optional(
            "surge",
            Type.measured(Watts.SCALE),
            "What it gives for a moment.",
            Range.of("100 W", "36000 W").usual("300 W", "12000 W").because("1.2 to 3 x rating"));
    public static final Key<Share> EFFICIENCY = DRAFT.optional(
            "efficiency",
            Type.measured(Share.SCALE),
            "What comes out of what goes in.",
            Range.of("70 %", "99 %")
                    .usual("84 %", "96 %")
                    .because("85 to 95 %")
                    .source("manuals of batteries and inverters"));
    public static final Key<Watts> IDLE_DRAW = DRAFT.optional(
            "idle-draw",
            Type.measured(Watts.SCALE),
            "What it takes with nothing on.",
            Range.of("0.2 W", "200 W")
                    .usual("1 W", "60 W")
                    .because("1.5 to 2.5 % of a small one; 15 to 40 W at 2 to 3 kW")
                    .source("manuals of batteries and inverters")
                    .orNothing());
    public static final Key<Seconds> START = DRAFT.optional(
            "start",
            Type.measured(Seconds.SCALE),
            "From switching on until the outlets are live.",
            Range.of("0.1 s", "120 s").usual("0.5 s", "30 s").orNothing());
    public static final Key<String> OUTLETS = DRAFT.optional("outlets", Type.TEXT, "Which outlets it feeds.");
    public static final Key<String> MARK = DRAFT.optional("mark", Type.PLATE, "How those outlets are marked.");
    public static final Shape<Inverter> SHAPE = DRAFT.done(Inverter::new);
}
