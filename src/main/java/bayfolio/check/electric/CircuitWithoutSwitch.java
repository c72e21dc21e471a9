package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Circuit;
import java.util.stream.Stream;

/** Flags an AC circuit that does not name the breaker handle that it is switched by. */
public final class CircuitWithoutSwitch implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().circuits().stream()
                .filter(circuit -> circuit.facts().get(Circuit.CURRENT) == Circuit.Current.AC
                        && !circuit.facts().has(Circuit.SWITCH))
                .map(circuit -> Finding.warning(
                                "circuit-without-switch",
                                circuit.at(),
                                "circuit `%s` carries AC and does not name its breaker handle".formatted(circuit.id()))
                        .mend("Name the switch that it goes off with as `switch`."));
    }
}
