package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.List;
import java.util.stream.Stream;

/** Flags a black tank that nothing on the coach can empty. */
public final class BlackOutletMissing implements Rule {
    private static final List<String> OUTLETS = List.of("sewer-outlet", "macerator-outlet");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        boolean valve = unit.holds("black-dump-valve");
        boolean outlet = OUTLETS.stream().anyMatch(unit::holds);
        return unit.draft() || (valve && outlet)
                ? Stream.of()
                : unit.tanks().stream()
                        .filter(tank -> tank.contents() == Tank.Contents.BLACK)
                        .map(tank -> Finding.error(
                                        "black-outlet-missing",
                                        tank.at(),
                                        "nothing empties tank `" + tank.id() + "`: there is no "
                                                + (valve
                                                        ? "sewer-outlet"
                                                        : outlet
                                                                ? "black-dump-valve"
                                                                : "black-dump-valve and no sewer-outlet"))
                                .mend("Give the role to the valve or outlet that empties it."));
    }
}
