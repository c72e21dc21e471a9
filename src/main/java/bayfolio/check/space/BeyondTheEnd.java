package bayfolio.check.space;

import bayfolio.measure.Meters;
import bayfolio.model.Side;
import bayfolio.model.Size;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import java.util.Optional;

/**
 * A thing that ends where the coach has ended: along it, or across it at front and rear.
 *
 * @param limit the end of the coach
 */
record BeyondTheEnd(Meters end, Meters limit) {
    private static final double TOLERANCE_METERS = 0.02;

    /**
     * @param width in meters, of what is that wide in this direction; 0 where only its beginning is known
     */
    static Optional<BeyondTheEnd> of(Thing thing, double width, Unit unit) {
        Spot spot = thing.spot().orElseThrow();
        boolean across = spot.side()
                .filter(side -> side == Side.FRONT || side == Side.REAR)
                .isPresent();
        return spot.fromFront()
                .map(start -> new Meters(start.value() + width))
                .flatMap(end -> unit.size()
                        .facts()
                        .find(across ? Size.WIDTH : Size.LENGTH)
                        .filter(limit -> end.value() > limit.value() + TOLERANCE_METERS)
                        .map(limit -> new BeyondTheEnd(end, limit)));
    }
}
