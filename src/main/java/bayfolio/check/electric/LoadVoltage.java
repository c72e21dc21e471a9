package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Volts;
import bayfolio.model.Circuit;
import bayfolio.model.Load;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.reckon.power.Draw;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a load whose voltage is not that of the circuit that it hangs on. */
public final class LoadVoltage implements Rule {
    /** A 12 V system stands at 13.6 V while it is charged, a plate says 115 V or 125 V for 120 V. */
    private static final double TOLERANCE = 0.15 + 1e-9;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.loads().stream()
                .flatMap(load -> Draw.circuit(load, unit).flatMap(it -> check(load, it, unit.region())).stream());
    }

    private static Optional<Finding> check(Load load, Circuit circuit, Region region) {
        Volts line = circuit.facts().get(Circuit.VOLTS);
        return load.facts()
                .find(Load.VOLTS)
                .filter(volts -> Math.abs(volts.value() - line.value()) > TOLERANCE * line.value())
                .map(volts -> Finding.error(
                                "load-voltage",
                                load.facts().at(Load.VOLTS),
                                "load `%s` is made for %s, and circuit `%s` has %s"
                                        .formatted(
                                                load.id(),
                                                volts.in(region.first()),
                                                circuit.id(),
                                                line.in(region.first())))
                        .mend("Correct the voltage of one of them, or hang the load on its own circuit."));
    }
}
