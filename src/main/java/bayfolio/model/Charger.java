package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Amps;
import bayfolio.measure.Share;

/** Charges the house battery from AC. */
public record Charger(Facts facts) implements Described {
    private static final Shape.Draft<Charger> DRAFT = Shape.draft("charger", "Charges the house battery from AC.");
    public static final Key<Amps> RATING = DRAFT.required(
            "rating",
            Type.measured(Amps.SCALE),
            "Direct current it charges with.",
            Range.of("3 A", "320 A")
                    .usual("bus-style", "30 A", "200 A")
                    .usual("cab-over", "15 A", "110 A")
                    .usual("low-profile", "10 A", "60 A")
                    .usual("van", "10 A", "130 A")
                    .because("up to about half of the capacity of the bank")
                    .source("manuals of batteries and inverters"));
    public static final Key<Share> EFFICIENCY = DRAFT.optional(
            "efficiency",
            Type.measured(Share.SCALE),
            "What comes out of what goes in.",
            Range.of("60 %", "99 %").usual("75 %", "96 %"));
    public static final Key<Amps> LIMIT = DRAFT.optional(
            "limit",
            Type.measured(Amps.SCALE),
            "The charging current to set on a small supply.",
            Range.of("1 A", "320 A").usual("3 A", "150 A").because("no more than rating"));
    public static final Key<String> NOTE = DRAFT.optional("note", Type.TEXT, "What a renter must know of it.");
    public static final Shape<Charger> SHAPE = DRAFT.done(Charger::new);
}
