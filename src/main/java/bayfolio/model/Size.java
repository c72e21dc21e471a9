package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import java.time.LocalDate;

/** Outer measures of a coach, as measured. */
public record Size(Facts facts) implements Described {
    private static final Shape.Draft<Size> DRAFT = Shape.draft("size", "Outer measures, as measured on the coach.");
    public static final Key<Meters> LENGTH =
            DRAFT.required("length", Type.clearance(), "Bumper to bumper, with rack or hitch.");
    public static final Key<Meters> WIDTH = DRAFT.required("width", Type.clearance(), "Without mirrors.");
    public static final Key<Meters> WIDTH_MIRRORS =
            DRAFT.optional("width-over-mirrors", Type.clearance(), "Over both mirrors.");
    public static final Key<Meters> HEIGHT =
            DRAFT.required("height", Type.clearance(), "Highest point, air conditioner and antenna down.");
    public static final Key<Meters> HEIGHT_ANTENNA_UP = DRAFT.optional(
            "height-antenna-up",
            Type.clearance(),
            "Highest point with the antenna raised, to know what a mistake costs.");
    public static final Key<LocalDate> MEASURED_ON =
            DRAFT.optional("measured-on", Type.DAY, "When the height was measured.");
    public static final Key<String> MEASURED_BY = DRAFT.forStaff("measured-by", Type.TEXT, "Who measured it.");
    public static final Key<Meters> WHEELBASE =
            DRAFT.optional("wheelbase", Type.measured(Meters.SCALE), "Front axle to rear axle.");
    public static final Key<Meters> FRONT_OVERHANG =
            DRAFT.optional("front-overhang", Type.measured(Meters.SCALE), "Front axle forward to the bumper.");
    public static final Key<Meters> REAR_OVERHANG =
            DRAFT.optional("rear-overhang", Type.measured(Meters.SCALE), "Rear axle back to the bumper.");
    public static final Key<Meters> TURNING_CIRCLE =
            DRAFT.optional("turning-circle", Type.clearance(), "Between walls.");
    public static final Key<Meters> TAIL_SWING =
            DRAFT.optional("tail-swing", Type.clearance(), "How far the tail swings out in a tight turn.");
    public static final Shape<Size> SHAPE = DRAFT.done(Size::new);
}
