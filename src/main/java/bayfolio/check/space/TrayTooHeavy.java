package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Compartment;
import bayfolio.model.Tray;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a tray that is said to carry more than the floor of its compartment. */
public final class TrayTooHeavy implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().trays().stream().flatMap(tray -> check(tray, coach).stream());
    }

    private static Optional<Finding> check(Tray tray, CheckedCoach coach) {
        Optional<Compartment> around = coach.coach().around(tray);
        Optional<Kilograms> floor = around.flatMap(it -> it.facts().find(Compartment.LOAD_LIMIT));
        return tray.facts()
                .find(Tray.LOAD_LIMIT)
                .filter(limit -> floor.filter(limit::exceeds).isPresent())
                .map(limit -> Finding.error(
                                "tray-too-heavy",
                                tray.facts().at(Tray.LOAD_LIMIT),
                                "tray `" + tray.id() + "` may carry "
                                        + limit.in(coach.unit().region().first()) + ", and compartment `"
                                        + around.orElseThrow().id() + "` around it only "
                                        + floor.orElseThrow()
                                                .in(coach.unit().region().first()))
                        .mend("Read both plates again; the smaller limit holds for both."));
    }
}
