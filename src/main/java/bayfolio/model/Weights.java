package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;

/** Weight limits of a coach and what it weighs. */
public record Weights(Facts facts) implements Described {
    private static final Shape.Draft<Weights> DRAFT =
            Shape.draft("weights", "Limits from the plate, and what the scale said.");
    public static final Key<Kilograms> GROSS = DRAFT.required(
            "gross",
            Type.measured(Kilograms.SCALE),
            "Highest allowed weight.",
            Range.of("2000 kg", "28000 kg")
                    .usual("bus-style north-america", "7000 kg", "25000 kg")
                    .usual("bus-style europe", "3500 kg", "18000 kg")
                    .usual("cab-over north-america", "4500 kg", "12000 kg")
                    .usual("cab-over europe", "2800 kg", "7500 kg")
                    .usual("low-profile", "2800 kg", "5600 kg")
                    .usual("van north-america", "3600 kg", "5500 kg")
                    .usual("van europe", "2500 kg", "4300 kg")
                    .because("plates: 26,000 lb and 3,500 kg are license limits")
                    .source("Regulation (EU) No 1230/2012"));
    public static final Key<Kilograms> GROSS_COMBINATION = DRAFT.optional(
            "gross-combination",
            Type.measured(Kilograms.SCALE),
            "Highest allowed weight with a trailer.",
            Range.of("2500 kg", "45000 kg")
                    .usual("bus-style", "8000 kg", "35000 kg")
                    .usual("cab-over", "5000 kg", "15500 kg")
                    .usual("low-profile", "3500 kg", "9000 kg")
                    .usual("van", "3000 kg", "8500 kg")
                    .because("gross plus 450 to 9,100 kg"));
    public static final Key<Kilograms> FRONT_AXLE = DRAFT.optional(
            "front-axle",
            Type.measured(Kilograms.SCALE),
            "Limit of the front axle.",
            Range.of("900 kg", "9100 kg")
                    .usual("bus-style", "2700 kg", "9072 kg")
                    .usual("bus-style europe", "1600 kg", "7500 kg")
                    .usual("cab-over", "1500 kg", "4200 kg")
                    .usual("low-profile", "1400 kg", "2600 kg")
                    .usual("van", "1300 kg", "2600 kg")
                    .because("20,000 lb a single axle"));
    public static final Key<Kilograms> REAR_AXLE = DRAFT.optional(
            "rear-axle",
            Type.measured(Kilograms.SCALE),
            "Limit of the rear axle or axles.",
            Range.of("1000 kg", "17300 kg")
                    .usual("bus-style", "4500 kg", "15500 kg")
                    .usual("bus-style europe", "1800 kg", "12000 kg")
                    .usual("cab-over", "2000 kg", "8200 kg")
                    .usual("low-profile", "1600 kg", "4000 kg")
                    .usual("van", "1500 kg", "4000 kg")
                    .because("34,000 lb a tandem; tag axle may be separate"));
    public static final Key<Weighing> AS_WEIGHED =
            DRAFT.optional("as-weighed", Type.nested(Weighing.SHAPE), "A weighing, with what was on board.");
    public static final Key<Kilograms> PAYLOAD = DRAFT.optional(
            "payload",
            Type.measured(Kilograms.SCALE),
            "What may be loaded, where the label states it.",
            Range.of("50 kg", "9000 kg")
                    .usual("north-america", "350 kg", "3600 kg")
                    .usual("europe", "250 kg", "1500 kg")
                    .because("Europe at least 10 x (people + length in m)")
                    .source("Regulation (EU) No 1230/2012"));
    public static final Key<Kilograms> TOW_WEIGHT = DRAFT.optional(
            "tow-weight",
            Type.measured(Kilograms.SCALE),
            "The heaviest trailer allowed.",
            Range.of("200 kg", "16000 kg")
                    .usual("north-america", "450 kg", "9100 kg")
                    .usual("europe", "500 kg", "3500 kg")
                    .orNothing());
    public static final Key<Kilograms> NOSE_WEIGHT = DRAFT.optional(
            "nose-weight",
            Type.measured(Kilograms.SCALE),
            "The heaviest load on the ball or hitch.",
            Range.of("25 kg", "1600 kg")
                    .usual("north-america", "45 kg", "1000 kg")
                    .usual("europe", "50 kg", "150 kg")
                    .because("10 to 15 % of the trailer in North America")
                    .orNothing());
    public static final Shape<Weights> SHAPE = DRAFT.ofEachCoach(AS_WEIGHED).done(Weights::new);
}
