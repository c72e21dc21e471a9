package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Door;
import bayfolio.model.Slide;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags what would be beyond the end of the coach; doors and connections have a rule of their own. */
public final class OutsideTheCoach implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.things()
                .filter(it -> !(it instanceof Door || it instanceof Connection)
                        && it.spot().flatMap(Spot::fromFront).isPresent())
                .flatMap(it ->
                        check(it, it.facts().at(it.spot().orElseThrow().keys().fromFront()), unit).stream());
    }

    private static Optional<Finding> check(Thing thing, Place at, Unit unit) {
        // Where it begins is measured; how wide a tank or a device is that way, only the wall things say for sure.
        boolean wall = thing instanceof Compartment || thing instanceof Slide;
        double width = wall ? thing.spot().flatMap(Spot::width).orElseThrow().value() : 0;
        return BeyondTheEnd.of(thing, width, unit)
                .map(beyond -> Finding.error(
                                "outside-the-coach",
                                at,
                                thing.kind()
                                        + " `"
                                        + thing.id()
                                        + (wall ? "` ends at " : "` is at ")
                                        + beyond.end().in(unit.region().first())
                                        + ", the coach "
                                        + (wall ? "at " : "ends at ")
                                        + beyond.limit().in(unit.region().first()))
                        .mend(wall ? "Measure `from-front` and `width` again." : "Measure `from-front` again."));
    }
}
