package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.KilometersPerHour;

/** How fast a coach may go where no sign says otherwise. */
public record SpeedLimit(Facts facts) implements ForSomeCoaches {
    private static final Shape.Draft<SpeedLimit> DRAFT =
            Shape.draft("speed-limit", "How fast a coach may go where no sign says less.");
    public static final Key<KilometersPerHour> TOWN = speed("town", "In towns.");
    public static final Key<KilometersPerHour> ROAD = speed("road", "On other roads.");
    public static final Key<KilometersPerHour> DUAL_ROAD =
            speed("dual-road", "On roads with a strip between the two ways, and on expressways.");
    public static final Key<KilometersPerHour> MOTORWAY = speed("motorway", "On motorways.");
    public static final Key<String> BESIDES =
            DRAFT.optional("besides", Type.TEXT, "What else holds, in whole sentences.");
    private static final ForCoaches FOR_COACHES = ForCoaches.declare(DRAFT);
    private static final Backing BACKING = Backing.declare(DRAFT);
    public static final Shape<SpeedLimit> SHAPE = DRAFT.done(SpeedLimit::new);

    private static Key<KilometersPerHour> speed(String key, String where) {
        return DRAFT.optional(
                key,
                Type.measured(KilometersPerHour.SCALE),
                where,
                Range.of("15 km/h", "150 km/h").because("limits on signs"));
    }

    @Override
    public ForCoaches forCoaches() {
        return FOR_COACHES;
    }

    @Override
    public Backing backing() {
        return BACKING;
    }
}
