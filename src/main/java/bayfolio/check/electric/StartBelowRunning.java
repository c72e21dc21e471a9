package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Load;
import bayfolio.reckon.power.Draw;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a load that starts with less current than it runs with. */
public final class StartBelowRunning implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Draw.all(coach.unit()).flatMap(draw -> check(draw).stream());
    }

    private static Optional<Finding> check(Draw draw) {
        return draw.load()
                .facts()
                .find(Load.START_AMPS)
                .filter(start -> Draw.over(draw.amps(), start))
                .map(start -> Finding.error(
                                "start-below-running",
                                draw.load().facts().at(Load.START_AMPS),
                                "load `%s` starts with %s and runs with %s"
                                        .formatted(
                                                draw.load().id(),
                                                start.in(draw.region().first()),
                                                draw.amps().in(draw.region().first())))
                        .mend("Correct one of them; leave `start-amps` out where nobody has measured it."));
    }
}
