package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import bayfolio.measure.Seconds;
import java.time.LocalDate;

/** Work that comes round again: by date, by distance, by hours on a counter, by a day that is written somewhere, or at whichever comes first. */
public record Service(Facts facts) implements Described {
    private static final Shape.Draft<Service> DRAFT =
            Shape.draft("service", "Work that comes round again, at whichever of its intervals ends first.");
    public static final Key<String> WHAT = DRAFT.required("what", Type.TEXT, "What is done: `Generator oil`.");
    public static final Key<Integer> EVERY_DAYS = DRAFT.optional(
            "every-days",
            Type.whole(1, 3660),
            "Days from one time to the next.",
            Range.of("1", "3660").usual("28", "3650"));
    public static final Key<LocalDate> LAST = DRAFT.optional(
            "last",
            Type.DAY,
            "The day on which it was last done.",
            Range.of("model-year - 2 years", "as-of")
                    .usual("as-of - 3 years", "as-of")
                    .because("last + every-days before the as-of day: overdue, told as such"));
    public static final Key<Meters> EVERY_DISTANCE = DRAFT.optional(
            "every-distance",
            Type.measured(Meters.SCALE),
            "Distance driven between two times.",
            Range.of("100 km", "200000 km").usual("4000 km", "65000 km"));
    public static final Key<Meters> LAST_ODOMETER = DRAFT.optional(
            "last-odometer",
            Type.measured(Meters.SCALE),
            "The odometer when it was last done.",
            Range.of("0 km", "1500000 km").usual("50 km", "400000 km"));
    public static final Key<Seconds> EVERY_HOURS = DRAFT.optional(
            "every-hours",
            Type.measured(Seconds.SCALE),
            "Hours run between two times.",
            Range.of("1 h", "5000 h").usual("20 h", "1000 h").because("generator oil 100 to 250 h"));
    public static final Key<Seconds> LAST_HOURS = DRAFT.optional(
            "last-hours",
            Type.measured(Seconds.SCALE),
            "Its hour counter when it was last done.",
            Range.of("0 h", "50000 h").usual("1 h", "10000 h"));
    public static final Key<LocalDate> DUE = DRAFT.optional(
            "due",
            Type.DAY,
            "The day by which it is to be done, where a sticker, a paper or the part itself says it: an inspection, a gas hose.",
            Range.of("as-of - 10 years", "as-of + 20 years")
                    .usual("as-of - 60 days", "as-of + 11 years")
                    .because("past: told as overdue"));
    public static final Key<String> BY =
            DRAFT.optional("by", Type.TEXT, "Who does it: yard staff, a licensed gas fitter.");
    public static final Shape<Service> SHAPE =
            DRAFT.ofEachCoach(LAST, LAST_ODOMETER, LAST_HOURS, DUE).done(Service::new);
}
