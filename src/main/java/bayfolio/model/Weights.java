package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;

/** Weight limits of a coach and what it weighs. */
public record Weights(Facts facts) implements Described {
    private static final Shape.Draft<Weights> DRAFT =
            Shape.draft("weights", "Limits from the plate, and what the scale said.");
    public static final Key<Kilograms> GROSS =
            DRAFT.required("gross", Type.measured(Kilograms.SCALE), "Highest allowed weight.");
    public static final Key<Kilograms> GROSS_COMBINATION = DRAFT.optional(
            "gross-combination", Type.measured(Kilograms.SCALE), "Highest allowed weight with a trailer.");
    public static final Key<Kilograms> FRONT_AXLE =
            DRAFT.optional("front-axle", Type.measured(Kilograms.SCALE), "Limit of the front axle.");
    public static final Key<Kilograms> REAR_AXLE =
            DRAFT.optional("rear-axle", Type.measured(Kilograms.SCALE), "Limit of the rear axle or axles.");
    public static final Key<Weighing> AS_WEIGHED =
            DRAFT.optional("as-weighed", Type.nested(Weighing.SHAPE), "A weighing, with what was on board.");
    public static final Key<Kilograms> PAYLOAD =
            DRAFT.optional("payload", Type.measured(Kilograms.SCALE), "What may be loaded, where the label states it.");
    public static final Key<Kilograms> TOW_WEIGHT =
            DRAFT.optional("tow-weight", Type.measured(Kilograms.SCALE), "The heaviest trailer allowed.");
    public static final Key<Kilograms> NOSE_WEIGHT =
            DRAFT.optional("nose-weight", Type.measured(Kilograms.SCALE), "The heaviest load on the ball or hitch.");
    public static final Shape<Weights> SHAPE = DRAFT.done(Weights::new);
}
