package bayfolio.check.gas;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import bayfolio.model.Spot;
import bayfolio.model.Switch;
import java.util.List;
import java.util.stream.Stream;

/** Flags a main valve of the gas that not everybody can reach in an emergency. */
public final class GasValveOutOfReach implements Rule {
    private static final List<String> VALVES = List.of("lp-main-valve", "gas-cylinder-valve");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return VALVES.stream()
                .flatMap(role -> coach.coach().holders("switch", role).stream())
                .filter(valve -> !valve.facts().find(Switch.EMERGENCY).orElse(false))
                .filter(valve -> coach.coach()
                        .around(valve)
                        .filter(Compartment::emergency)
                        .isEmpty())
                .filter(valve -> coach.coach().around(valve).isPresent()
                        || valve.spot().flatMap(Spot::in).isEmpty())
                .map(valve -> Finding.error(
                                "gas-valve-out-of-reach",
                                valve.facts().has(Switch.EMERGENCY)
                                        ? valve.facts().at(Switch.EMERGENCY)
                                        : valve.at(),
                                "switch `" + valve.id() + "` shuts the gas, and "
                                        + coach.coach()
                                                .around(valve)
                                                .map(it -> "neither it nor compartment `" + it.id() + "` is")
                                                .orElse("it is not")
                                        + " `emergency: yes`")
                        .mend("See that everybody can reach it, and add `emergency: yes`."));
    }
}
