package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Share;
import java.time.LocalDate;

/** What a coach weighed on a scale. */
public record Weighing(Facts facts) implements Described {
    private static final Shape.Draft<Weighing> DRAFT = Shape.draft("weighing", "A weighing of the coach.");
    public static final Key<LocalDate> ON = DRAFT.optional(
            "on",
            Type.DAY,
            "When it was weighed.",
            Range.of("model-year - 2 years", "as-of")
                    .usual("as-of - 3 years", "as-of")
                    .because(
                            "not after the as-of day, not before the coach was built; older than 3 years or than a refit: ask"));
    public static final Key<Kilograms> TOTAL = DRAFT.required(
            "total",
            Type.measured(Kilograms.SCALE),
            "All axles together.",
            Range.of("1500 kg", "28000 kg")
                    .usual("bus-style", "5500 kg", "24000 kg")
                    .usual("bus-style europe", "2700 kg", "17000 kg")
                    .usual("cab-over", "2700 kg", "11000 kg")
                    .usual("low-profile", "2400 kg", "5200 kg")
                    .usual("van", "2100 kg", "4800 kg")
                    .because("55 to 100 % of gross")
                    .source("Regulation (EU) No 1230/2012"));
    public static final Key<Kilograms> FRONT = DRAFT.optional(
            "front",
            Type.measured(Kilograms.SCALE),
            "The front axle.",
            Range.of("500 kg", "9100 kg")
                    .usual("bus-style", "2000 kg", "9072 kg")
                    .usual("bus-style europe", "1200 kg", "7500 kg")
                    .usual("cab-over", "1000 kg", "4200 kg")
                    .usual("low-profile|van", "1000 kg", "2600 kg")
                    .because("28 to 58 % of the total"));
    public static final Key<Kilograms> REAR = DRAFT.optional(
            "rear",
            Type.measured(Kilograms.SCALE),
            "The rear axle or axles.",
            Range.of("600 kg", "17300 kg")
                    .usual("bus-style", "3500 kg", "15500 kg")
                    .usual("bus-style europe", "1400 kg", "11500 kg")
                    .usual("cab-over", "1500 kg", "8200 kg")
                    .usual("low-profile", "1200 kg", "4000 kg")
                    .usual("van", "1000 kg", "4000 kg")
                    .because("42 to 72 % of the total"));
    public static final Key<Integer> PEOPLE = DRAFT.optional(
            "people",
            Type.whole(0, 20),
            "How many people were on board.",
            Range.of("0", "8").usual("0", "2").because("a weighing with more is rarely meant"));
    public static final Key<Share> FRESH_WATER = DRAFT.optional(
            "fresh-water",
            Type.measured(Share.SCALE),
            "How full the fresh tanks were.",
            Range.of("0 %", "100 %").usual("0 %", "100 %").because("0 or 100 is usual"));
    public static final Key<Boolean> HEATER_FULL = DRAFT.optional(
            "heater-full",
            Type.YES_NO,
            "Whether the water heater or boiler was full; as the fresh tanks, empty or not, where left out.");
    public static final Key<String> STATE =
            DRAFT.required("state", Type.TEXT, "What was in the tanks and who was on board.");
    public static final Shape<Weighing> SHAPE = DRAFT.ofEachCoach(
                    ON, TOTAL, FRONT, REAR, PEOPLE, FRESH_WATER, HEATER_FULL, STATE)
            .done(Weighing::new);
}
