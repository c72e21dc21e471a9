package bayfolio.check.space;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Meters;
import bayfolio.model.Side;
import bayfolio.model.Size;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a compartment or slide-out that would stick out at the end of the coach. */
public final class OutsideTheCoach implements Rule {
    private static final double TOLERANCE_METERS = 0.02;

    @Override
    public Stream<Finding> check(Case coach) {
        Unit unit = coach.unit();
        return Stream.concat(
                unit.compartments().stream()
                        .flatMap(it -> check(it, it.facts().at(it.spotKeys().fromFront()), unit).stream()),
                unit.slides().stream()
                        .flatMap(it -> check(it, it.facts().at(it.spotKeys().fromFront()), unit).stream()));
    }

    private static Optional<Finding> check(Thing thing, Place at, Unit unit) {
        Spot spot = thing.spot().orElseThrow();
        boolean across = spot.side()
                .filter(side -> side == Side.FRONT || side == Side.REAR)
                .isPresent();
        Optional<Meters> room = unit.size().facts().find(across ? Size.WIDTH : Size.LENGTH);
        double end = spot.fromFront().orElseThrow().value()
                + spot.width().orElseThrow().value();
        return room.filter(limit -> end > limit.value() + TOLERANCE_METERS)
                .map(limit -> Finding.error(
                                "outside-the-coach",
                                at,
                                thing.kind()
                                        + " `"
                                        + thing.id()
                                        + "` ends at "
                                        + new Meters(end).in(unit.region().first())
                                        + ", the coach at "
                                        + limit.in(unit.region().first()))
                        .mend("Measure `from-front` and `width` again."));
    }
}
