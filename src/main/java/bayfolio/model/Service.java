package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import bayfolio.measure.Seconds;
import java.time.LocalDate;

/** Work that comes round again: by date, by distance, by hours on a counter, or at whichever comes first. */
public record Service(Facts facts) implements Described {
    private static final Shape.Draft<Service> DRAFT =
            Shape.draft("service", "Work that comes round again, at whichever of its intervals ends first.");
    public static final Key<String> WHAT = DRAFT.required("what", Type.TEXT, "What is done: `Generator oil`.");
    public static final Key<Integer> EVERY_DAYS =
            DRAFT.optional("every-days", Type.whole(1, 3660), "Days from one time to the next.");
    public static final Key<LocalDate> LAST = DRAFT.optional("last", Type.DAY, "The day on which it was last done.");
    public static final Key<Meters> EVERY_DISTANCE =
            DRAFT.optional("every-distance", Type.measured(Meters.SCALE), "Distance driven between two times.");
    public static final Key<Meters> LAST_ODOMETER =
            DRAFT.optional("last-odometer", Type.measured(Meters.SCALE), "The odometer when it was last done.");
    public static final Key<Seconds> EVERY_HOURS =
            DRAFT.optional("every-hours", Type.measured(Seconds.SCALE), "Hours run between two times.");
    public static final Key<Seconds> LAST_HOURS =
            DRAFT.optional("last-hours", Type.measured(Seconds.SCALE), "Its hour counter when it was last done.");
    public static final Key<String> BY =
            DRAFT.optional("by", Type.TEXT, "Who does it: yard staff, a licensed gas fitter.");
    public static final Shape<Service> SHAPE = DRAFT.done(Service::new);
}
