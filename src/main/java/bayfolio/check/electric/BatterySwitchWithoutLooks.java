package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Switch;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags a battery switch that does not tell what ON looks like, and what OFF. */
public final class BatterySwitchWithoutLooks implements Rule {
    private static final Set<String> ROLES = Set.of("house-battery-switch", "chassis-battery-switch");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().switches().stream()
                .filter(it -> it.holdsOneOf(ROLES))
                .flatMap(it -> check(it).stream());
    }

    private static Optional<Finding> check(Switch battery) {
        String missing = Stream.of(Switch.ON_LOOK, Switch.OFF_LOOK)
                .filter(key -> !battery.facts().has(key))
                .map(key -> "`" + key.name() + "`")
                .collect(Collectors.joining(" and no "));
        return missing.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.error(
                                "battery-switch-without-looks",
                                battery.at(),
                                "switch `%s` cuts off a battery and has no %s".formatted(battery.id(), missing))
                        .mend("Go and look: tell what each state looks like, not by color alone."));
    }
}
