package bayfolio.check.gas;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Gas;
import bayfolio.model.Unit;
import java.util.stream.Stream;

/** Flags a crash sensor that shuts the gas and that nothing resets. */
public final class CrashSensorWithoutReset implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().holds("gas-safety-reset")
                ? Stream.of()
                : coach.unit().facts().find(Unit.GAS).stream()
                        .filter(gas -> gas.facts().find(Gas.CRASH_SENSOR).orElse(false))
                        .map(
                                gas -> Finding.error(
                                                "crash-sensor-without-reset",
                                                gas.facts().at(Gas.CRASH_SENSOR),
                                                "a crash sensor shuts the gas, and no switch is the gas-safety-reset")
                                        .mend(
                                                "Give the role to the button that opens the gas again, or write `crash-sensor: no`."));
    }
}
