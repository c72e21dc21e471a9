package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Meters;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a door or a connection that would lie past the end of the coach. */
public final class DoorOutsideTheCoach implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Stream.<Thing>concat(coach.unit().doors().stream(), coach.unit().connections().stream())
                .flatMap(thing -> check(thing, coach.unit()).stream());
    }

    private static Optional<Finding> check(Thing thing, Unit unit) {
        double width = thing.spot().flatMap(Spot::width).map(Meters::value).orElse(0.0);
        return BeyondTheEnd.of(thing, width, unit).map(beyond -> finding(thing, beyond, unit));
    }

    private static Finding finding(Thing thing, BeyondTheEnd beyond, Unit unit) {
        Place at =
                thing.facts().shape().key("from-front").map(thing.facts()::at).orElse(thing.at());
        return Finding.error(
                        "door-outside-the-coach",
                        at,
                        thing.kind() + " `" + thing.id()
                                + (thing.spot().flatMap(Spot::width).isPresent() ? "` ends at " : "` lies at ")
                                + beyond.end().in(unit.region().first())
                                + ", the coach at "
                                + beyond.limit().in(unit.region().first()))
                .mend("Measure `from-front` again, from the foremost point of the coach.");
    }
}
