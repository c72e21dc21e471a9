package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Circuit;
import bayfolio.model.Load;
import bayfolio.model.Supply;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import java.util.stream.Stream;

/** Flags a load, a circuit or a supply that speaks of an inverter on a coach that describes none. */
public final class InverterMissing implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        if (unit.facts().has(Unit.INVERTER)) {
            return Stream.empty();
        }
        return Stream.of(
                        unit.supplies().stream()
                                .filter(supply -> supply.source() == Supply.Source.INVERTER)
                                .map(supply -> finding(supply, Supply.SOURCE, "is")),
                        unit.circuits().stream()
                                .filter(circuit -> circuit.facts()
                                        .find(Circuit.BY_INVERTER)
                                        .orElse(false))
                                .map(circuit -> finding(circuit, Circuit.BY_INVERTER, "is fed by")),
                        unit.loads().stream()
                                .filter(load ->
                                        load.facts().find(Load.ON_INVERTER).orElse(false))
                                .map(load -> finding(load, Load.ON_INVERTER, "is said to run from")))
                .flatMap(findings -> findings);
    }

    private static Finding finding(Thing thing, Key<?> key, String relation) {
        return Finding.error(
                        "inverter-missing",
                        thing.facts().at(key),
                        "%s `%s` %s an inverter, and this coach describes none"
                                .formatted(thing.kind(), thing.id(), relation))
                .mend("Describe it under `inverter`, or correct this.");
    }
}
