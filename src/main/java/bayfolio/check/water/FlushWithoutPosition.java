package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.model.Water;
import java.util.stream.Stream;

/** Flags a tank flush inlet on a coach that does not tell how the black valve stands meanwhile. */
public final class FlushWithoutPosition implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        boolean stated = coach.unit()
                .facts()
                .find(Unit.WATER)
                .filter(water -> water.facts().has(Water.FLUSH_VALVE))
                .isPresent();
        return stated
                ? Stream.of()
                : coach.coach().holders("connection", "tank-flush-inlet").stream()
                        .map(inlet -> Finding.error(
                                        "flush-without-position",
                                        inlet.at(),
                                        "connection `" + inlet.id()
                                                + "` flushes the tank, and `water` has no `flush-valve`")
                                .mend("Tell in `flush-valve` how the black valve stands while the water runs."));
    }
}
