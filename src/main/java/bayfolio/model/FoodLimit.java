package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Celsius;
import bayfolio.measure.Seconds;

/** How cold a country's food authority wants food kept, and how long it may be warmer. */
public record FoodLimit(Facts facts) implements Backed {
    private static final Shape.Draft<FoodLimit> DRAFT =
            Shape.draft("food-limit", "How cold food is kept, and how long it may be warmer.");
    public static final Key<Celsius> LIMIT =
            DRAFT.required("limit", Type.measured(Celsius.SCALE), "The warmest that food in a fridge may be.");
    public static final Key<Seconds> EAT_AFTER = DRAFT.optional(
            "eat-after",
            Type.measured(Seconds.SCALE),
            "How long it may be warmer before it must be eaten at once and not put back.");
    public static final Key<Seconds> OUT_AFTER = DRAFT.optional(
            "out-after", Type.measured(Seconds.SCALE), "How long it may be warmer before it is thrown away.");
    private static final Backing BACKING = Backing.declare(DRAFT);
    public static final Shape<FoodLimit> SHAPE = DRAFT.done(FoodLimit::new);

    @Override
    public Backing backing() {
        return BACKING;
    }
}
