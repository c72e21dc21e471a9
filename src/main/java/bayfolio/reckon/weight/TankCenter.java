package bayfolio.reckon.weight;

import bayfolio.measure.Meters;
import bayfolio.model.Side;
import bayfolio.model.Size;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import java.util.Optional;

/** How far the middle of a thing is behind the foremost point of the coach. */
public final class TankCenter {
    private TankCenter() {}

    /**
     * A thing without a distance of its own is where its compartment is. On front and rear the distance is measured
     * across, so that the thing is at the very end. Nothing where neither is known.
     */
    public static Optional<Meters> of(Thing thing, Unit unit) {
        Optional<Spot> spot = thing.spot();
        return spot.flatMap(own -> of(own, unit))
                .or(() -> spot.flatMap(Spot::in)
                        .flatMap(id -> unit.compartments().stream()
                                .filter(compartment -> compartment.id().equals(id))
                                .findFirst())
                        .flatMap(around -> around.spot().flatMap(place -> of(place, unit))));
    }

    private static Optional<Meters> of(Spot spot, Unit unit) {
        return spot.fromFront().flatMap(front -> {
            Optional<Side> side = spot.side();
            if (side.equals(Optional.of(Side.FRONT))) {
                return Optional.of(new Meters(0));
            }
            if (side.equals(Optional.of(Side.REAR))) {
                return unit.size().facts().find(Size.LENGTH);
            }
            return spot.middle();
        });
    }
}
