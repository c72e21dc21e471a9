package bayfolio.check.gas;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Appliance;
import bayfolio.model.Unit;
import java.util.List;
import java.util.stream.Stream;

/** Flags an appliance that runs on gas in a coach that has none. */
public final class GasApplianceWithoutGas implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().facts().has(Unit.GAS)
                ? Stream.of()
                : coach.unit().appliances().stream()
                        .flatMap(appliance -> appliance.facts().find(Appliance.ENERGY).orElse(List.of()).stream()
                                .filter(energy -> energy.value() == Appliance.Energy.GAS)
                                .map(energy -> Finding.error(
                                                "gas-appliance-without-gas",
                                                energy.at(),
                                                "appliance `" + appliance.id()
                                                        + "` runs on gas, and this coach has no `gas`")
                                        .mend("Describe the gas in `gas`, or take it out of `energy`.")));
    }
}
