package bayfolio.check.gas;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import java.util.stream.Stream;

/** Flags a gas locker that is not kept open for an emergency. */
public final class GasLockerLocked implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().compartments().stream()
                .filter(it -> it.roles().contains("gas-locker") && !it.emergency())
                .map(it -> Finding.error(
                                "gas-locker-locked",
                                it.facts().has(Compartment.EMERGENCY)
                                        ? it.facts().at(Compartment.EMERGENCY)
                                        : it.at(),
                                "compartment `" + it.id() + "` is the gas locker and is not `emergency: yes`")
                        .mend("Leave it unlocked on the coach, and add `emergency: yes`."));
    }
}
