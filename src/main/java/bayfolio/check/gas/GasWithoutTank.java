package bayfolio.check.gas;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.stream.Stream;

/** Flags a coach with LP gas and nothing that carries it. */
public final class GasWithoutTank implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        boolean carried = coach.unit().tanks().stream().anyMatch(tank -> tank.contents() == Tank.Contents.LP_GAS);
        return coach.unit().draft() || carried
                ? Stream.of()
                : coach.unit().facts().find(Unit.GAS).stream()
                        .map(gas -> Finding.error(
                                        "gas-without-tank",
                                        coach.unit().facts().at(Unit.GAS),
                                        "this coach has `gas` and no tank whose `contents` is `lp-gas`")
                                .mend("Describe the tank or the cylinders in `tanks`."));
    }
}
