package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Circuit;
import bayfolio.model.Load;
import bayfolio.model.Unit;
import bayfolio.reckon.power.Draw;
import java.util.stream.Stream;

/** Flags a load that is said to run from the inverter and hangs on a circuit that the inverter does not feed. */
public final class LoadNotFedByInverter implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.loads().stream()
                .filter(load -> load.facts().find(Load.ON_INVERTER).orElse(false))
                .flatMap(load -> Draw.circuit(load, unit)
                        .filter(circuit ->
                                !circuit.facts().find(Circuit.BY_INVERTER).orElse(true))
                        .map(circuit -> finding(load, circuit))
                        .stream());
    }

    private static Finding finding(Load load, Circuit circuit) {
        return Finding.error(
                        "load-not-fed-by-inverter",
                        load.facts().at(Load.ON_INVERTER),
                        "load `%s` is said to run from the inverter, and circuit `%s` is not fed by it"
                                .formatted(load.id(), circuit.id()))
                .mend("Try it with shore power off, then correct `on-inverter` here or `by-inverter` of the circuit.");
    }
}
