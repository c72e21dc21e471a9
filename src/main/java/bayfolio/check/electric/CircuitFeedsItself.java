package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Circuit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Flags a circuit that is fed through itself, at once or through others. */
public final class CircuitFeedsItself implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Map<String, Circuit> circuits = new HashMap<>();
        coach.unit().circuits().forEach(it -> circuits.putIfAbsent(it.id(), it));
        return coach.unit().circuits().stream()
                .filter(circuit -> comesBack(circuit, circuits))
                .map(CircuitFeedsItself::finding);
    }

    private static boolean comesBack(Circuit circuit, Map<String, Circuit> circuits) {
        Set<String> seen = new HashSet<>();
        Optional<String> feed = feed(circuit);
        while (feed.isPresent() && seen.add(feed.get())) {
            if (feed.get().equals(circuit.id())) {
                return true;
            }
            feed = Optional.ofNullable(circuits.get(feed.get())).flatMap(CircuitFeedsItself::feed);
        }
        return false;
    }

    private static Optional<String> feed(Circuit circuit) {
        return circuit.facts().find(Circuit.FED_THROUGH);
    }

    private static Finding finding(Circuit circuit) {
        String feed = circuit.facts().get(Circuit.FED_THROUGH);
        return Finding.error(
                        "circuit-feeds-itself",
                        circuit.facts().at(Circuit.FED_THROUGH),
                        feed.equals(circuit.id())
                                ? "circuit `%s` is fed through itself".formatted(feed)
                                : "circuit `%s` is fed through `%s`, which leads back to it"
                                        .formatted(circuit.id(), feed))
                .mend("Name in `fed-through` the circuit that comes before it, on the side of the supply.");
    }
}
