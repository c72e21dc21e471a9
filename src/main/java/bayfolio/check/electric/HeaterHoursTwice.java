package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.measure.Seconds;
import bayfolio.model.Appliance;
import bayfolio.model.Load;
import bayfolio.reckon.gas.GasFlame;
import java.util.stream.Stream;

/** Flags hours of a load that belongs to a gas heater whose hours of flame are stated: the flame's hours are taken for both. */
public final class HeaterHoursTwice implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().loads().stream()
                .flatMap(load -> GasFlame.heaterOf(load, coach.unit()).stream()
                        .filter(heater -> heater.facts().has(Appliance.GAS_HOURS))
                        .flatMap(heater -> Stream.of(Load.A_NIGHT, Load.A_NIGHT_FROST)
                                .filter(load.facts()::has)
                                .map(key -> finding(load, heater, key))));
    }

    private static Finding finding(Load load, Appliance heater, Key<Seconds> key) {
        return Finding.error(
                        "heater-hours-twice",
                        load.facts().at(key),
                        "load `%s` states `%s`, and its heater `%s` states `gas-hours`: the hours are told twice"
                                .formatted(load.id(), key.name(), heater.id()))
                .mend("Leave it out here: the blower runs while the flame does.");
    }
}
