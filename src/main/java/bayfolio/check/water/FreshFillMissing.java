package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.List;
import java.util.stream.Stream;

/** Flags a fresh tank that nothing on the coach can fill. */
public final class FreshFillMissing implements Rule {
    private static final List<String> FILLS = List.of("fresh-fill-port", "water-fill-valve", "city-water-inlet");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.draft() || FILLS.stream().anyMatch(unit::holds)
                ? Stream.of()
                : unit.tanks().stream()
                        .filter(tank -> tank.contents() == Tank.Contents.FRESH)
                        .map(tank -> Finding.error(
                                        "fresh-fill-missing",
                                        tank.at(),
                                        "nothing fills tank `" + tank.id()
                                                + "`: there is no fresh-fill-port, no water-fill-valve and no city-water-inlet")
                                .mend("Give the role to the connection or valve that fills it."));
    }
}
