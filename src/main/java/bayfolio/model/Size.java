package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import java.time.LocalDate;

/** Outer measures of a coach, as measured. */
public record Size(Facts facts) implements Described {
    private static final Shape.Draft<Size> DRAFT = Shape.draft("size", "Outer measures, as measured on the coach.");
    public static final Key<Meters> LENGTH = DRAFT.required(
            "length",
            Type.clearance(),
            "Bumper to bumper, with rack or hitch.",
            Range.of("4.5 m", "14.2 m")
                    .in("europe", "4.5 m", "12.9 m")
                    .usual("bus-style", "7.9 m", "13.72 m")
                    .usual("cab-over", "6.1 m", "10.7 m")
                    .usual("low-profile", "5.9 m", "8.8 m")
                    .usual("van", "5 m", "7.5 m")
                    .because("45 ft in most states, 12.00 m in Europe; hard bound lets a rack hang over,; state page")
                    .source("Regulation (EU) No 1230/2012"));
    public static final Key<Meters> WIDTH = DRAFT.required(
            "width",
            Type.clearance(),
            "Without mirrors.",
            Range.of("1.6 m", "2.65 m")
                    .usual("bus-style", "2.4 m", "2.6 m")
                    .usual("cab-over", "2.05 m", "2.6 m")
                    .usual("low-profile", "2.05 m", "2.4 m")
                    .usual("van", "1.75 m", "2.15 m")
                    .because("102 in; 2.55 m in Europe; 23 CFR 658.15")
                    .source("23 CFR 658.15"));
    public static final Key<Meters> WIDTH_MIRRORS = DRAFT.optional(
            "width-over-mirrors",
            Type.clearance(),
            "Over both mirrors.",
            Range.of("1.8 m", "3.5 m")
                    .usual("bus-style", "2.8 m", "3.35 m")
                    .usual("cab-over", "2.6 m", "3.2 m")
                    .usual("low-profile", "2.4 m", "3 m")
                    .usual("van", "2.2 m", "2.8 m")
                    .because("0.25 to 0.85 m more than the width"));
    public static final Key<Meters> HEIGHT = DRAFT.required(
            "height",
            Type.clearance(),
            "Highest point, air conditioner and antenna down.",
            Range.of("1.9 m", "4.42 m")
                    .in("europe", "1.9 m", "4 m")
                    .usual("bus-style", "3.2 m", "4.12 m")
                    .usual("cab-over", "2.9 m", "3.75 m")
                    .usual("low-profile", "2.6 m", "3.25 m")
                    .usual("van", "1.93 m", "3.1 m")
                    .because("a pop-top roof rides below 2.1 m; 13 ft 6 in to 14 ft 6 in; 4.00 m")
                    .source("state notices on sizes of coaches"));
    public static final Key<Meters> HEIGHT_ANTENNA_UP = DRAFT.optional(
            "height-antenna-up",
            Type.clearance(),
            "Highest point with the antenna raised, to know what a mistake costs.",
            Range.of("2.2 m", "6.5 m").usual("2.9 m", "5.2 m").because("0.2 to 1.8 m above the height"));
    public static final Key<LocalDate> MEASURED_ON = DRAFT.optional(
            "measured-on",
            Type.DAY,
            "When the height was measured.",
            Range.of("model-year - 2 years", "as-of")
                    .usual("as-of - 3 years", "as-of")
                    .because(
                            "not after the as-of day, not before the coach was built; older than 3 years or than a refit: ask"));
    public static final Key<String> MEASURED_BY = DRAFT.forStaff("measured-by", Type.TEXT, "Who measured it.");
    public static final Key<Meters> WHEELBASE = DRAFT.optional(
            "wheelbase",
            Type.measured(Meters.SCALE),
            "Front axle to rear axle.",
            Range.of("2.7 m", "9.2 m")
                    .usual("bus-style", "4.5 m", "8.2 m")
                    .usual("cab-over", "3.4 m", "6.2 m")
                    .usual("low-profile", "3.3 m", "5.1 m")
                    .usual("van", "3 m", "4.5 m"));
    public static final Key<Meters> FRONT_OVERHANG = DRAFT.optional(
            "front-overhang",
            Type.measured(Meters.SCALE),
            "Front axle forward to the bumper.",
            Range.of("0.4 m", "3 m")
                    .usual("bus-style", "0.8 m", "2.4 m")
                    .usual("cab-over|low-profile|van", "0.7 m", "1.2 m")
                    .because("cab ahead of the axle or behind it")
                    .orNothing());
    public static final Key<Meters> REAR_OVERHANG = DRAFT.optional(
            "rear-overhang",
            Type.measured(Meters.SCALE),
            "Rear axle back to the bumper.",
            Range.of("0.3 m", "5.6 m")
                    .usual("bus-style", "2 m", "4.6 m")
                    .usual("cab-over", "1.4 m", "3.8 m")
                    .usual("low-profile", "1.1 m", "2.8 m")
                    .usual("van", "0.7 m", "1.7 m"));
    public static final Key<Meters> TURNING_CIRCLE = DRAFT.optional(
            "turning-circle",
            Type.clearance(),
            "Between walls.",
            Range.of("9 m", "36 m")
                    .usual("bus-style", "17 m", "29 m")
                    .usual("cab-over", "12.5 m", "21 m")
                    .usual("low-profile", "11.5 m", "17.5 m")
                    .usual("van", "10.5 m", "16 m")
                    .because("between walls"));
    public static final Key<Meters> TAIL_SWING = DRAFT.optional(
            "tail-swing",
            Type.clearance(),
            "How far the tail swings out in a tight turn.",
            Range.of("0.02 m", "2 m")
                    .usual("bus-style", "0.5 m", "1.25 m")
                    .usual("cab-over", "0.25 m", "0.9 m")
                    .usual("low-profile", "0.15 m", "0.8 m")
                    .usual("van", "0.04 m", "0.3 m")
                    .because("a third of the rear overhang is the upper rule of thumb"));
    public static final Shape<Size> SHAPE = DRAFT.done(Size::new);
}
