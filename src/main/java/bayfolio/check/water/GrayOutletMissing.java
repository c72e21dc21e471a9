package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.List;
import java.util.stream.Stream;

/** Flags a gray tank that nothing on the coach can empty. */
public final class GrayOutletMissing implements Rule {
    private static final List<String> OUTLETS = List.of("sewer-outlet", "macerator-outlet", "gray-outlet");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        boolean hose = unit.holds("gray-dump-valve") && OUTLETS.stream().anyMatch(unit::holds);
        return unit.draft() || hose || unit.holds("gray-drain-tap")
                ? Stream.of()
                : unit.tanks().stream()
                        .filter(tank -> tank.contents() == Tank.Contents.GRAY)
                        .map(tank -> Finding.error(
                                        "gray-outlet-missing",
                                        tank.at(),
                                        "nothing empties tank `" + tank.id() + "`: "
                                                + (unit.holds("gray-dump-valve")
                                                        ? "there is a gray-dump-valve and no sewer-outlet or gray-outlet"
                                                        : "there is no gray-dump-valve and no gray-drain-tap"))
                                .mend("Give the role to the valve and to the outlet, or to the tap that drains it."));
    }
}
