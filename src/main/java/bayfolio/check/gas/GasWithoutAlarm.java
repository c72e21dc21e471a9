package bayfolio.check.gas;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import java.util.stream.Stream;

/** Flags a coach with LP gas and no gas alarm. */
public final class GasWithoutAlarm implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().draft() || coach.unit().holds("gas-alarm")
                ? Stream.of()
                : coach.unit().facts().find(Unit.GAS).stream()
                        .map(gas -> Finding.warning(
                                        "gas-without-alarm",
                                        coach.unit().facts().at(Unit.GAS),
                                        "this coach has `gas` and no gas-alarm")
                                .mend("Give the role to the gauge that warns of gas."));
    }
}
