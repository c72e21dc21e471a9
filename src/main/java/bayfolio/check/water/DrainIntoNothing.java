package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Connection;
import bayfolio.model.Tank;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a waste tank that is said to drain through a connection of another tank. */
public final class DrainIntoNothing implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().tanks().stream()
                .filter(tank -> tank.contents() == Tank.Contents.GRAY || tank.contents() == Tank.Contents.BLACK)
                .flatMap(tank -> tank.facts().find(Tank.DRAINS).orElse(List.of()).stream()
                        .flatMap(drain -> check(tank, drain, coach).stream()));
    }

    private static Optional<Finding> check(Tank tank, Located<String> drain, CheckedCoach coach) {
        return coach.coach()
                .thing("connection", drain.value())
                .flatMap(connection -> connection.facts().find(Connection.TANK))
                .filter(other -> !other.equals(tank.id()))
                .filter(other -> coach.coach().thing("tank", other).isPresent())
                .map(
                        other -> Finding.error(
                                        "drain-into-nothing",
                                        drain.at(),
                                        "tank `" + tank.id() + "` drains through connection `" + drain.value()
                                                + "`, which is that of tank `" + other + "`")
                                .mend(
                                        "Name the connection that empties this tank, or leave `tank` out of one that empties several."));
    }
}
