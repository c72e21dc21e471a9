package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Liters;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a tank whose capacity is not the one that its plate gives. */
public final class CapacityDisagrees implements Rule {
    /** A maker rounds gallons to whole liters and back; this is more than that. */
    private static final double TOLERANCE = 0.02;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().tanks().stream().flatMap(tank -> check(tank, coach.unit()).stream());
    }

    private static Optional<Finding> check(Tank tank, Unit unit) {
        Liters holds = tank.facts().get(Tank.CAPACITY);
        return tank.facts()
                .find(Tank.CAPACITY_PLATE)
                .filter(plate -> Math.abs(holds.value() - plate.value()) > TOLERANCE * plate.value())
                .map(plate -> Finding.error(
                                "capacity-disagrees",
                                tank.facts().at(Tank.CAPACITY),
                                "tank `" + tank.id() + "` holds "
                                        + holds.both(unit.region().first()) + ", and its plate says "
                                        + plate.both(unit.region().first()))
                        .mend("Correct the one that is wrong; if the plate is, leave `capacity-plate` out."));
    }
}
