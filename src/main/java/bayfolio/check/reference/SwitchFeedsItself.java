package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Switch;
import bayfolio.source.Located;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Flags a switch that feeds itself, at once or through the switches that it feeds. */
public final class SwitchFeedsItself implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Map<String, Switch> switches = new HashMap<>();
        coach.unit().switches().forEach(it -> switches.putIfAbsent(it.id(), it));
        return coach.unit().switches().stream()
                .flatMap(it -> it.facts().find(Switch.FEEDS).orElse(List.of()).stream()
                        .filter(fed -> reaches(fed.value(), it.id(), switches))
                        .map(fed -> finding(it, fed)));
    }

    private static boolean reaches(String from, String to, Map<String, Switch> switches) {
        Deque<String> left = new ArrayDeque<>(List.of(from));
        Set<String> seen = new HashSet<>();
        while (!left.isEmpty()) {
            String id = left.pop();
            if (id.equals(to)) {
                return true;
            }
            if (seen.add(id)) {
                Optional.ofNullable(switches.get(id))
                        .ifPresent(it -> it.facts().all(Switch.FEEDS).forEach(left::push));
            }
        }
        return false;
    }

    private static Finding finding(Switch feeding, Located<String> fed) {
        String message = fed.value().equals(feeding.id())
                ? "switch `" + feeding.id() + "` feeds itself"
                : "switch `" + feeding.id() + "` feeds `" + fed.value() + "`, which leads back to it";
        return Finding.error("switch-feeds-itself", fed.at(), message)
                .mend("Name in `feeds` only what comes after the switch.");
    }
}
