package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Switch;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Stage;
import bayfolio.prose.Target;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a battery switch that is off while the coach stands, and that nobody is told to turn on. */
public final class StoredNeverWoken implements Rule {
    private static final Set<String> ROLES = Set.of("house-battery-switch", "chassis-battery-switch");
    private static final Pattern OFF = Pattern.compile("\\boff\\b", Pattern.CASE_INSENSITIVE);

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Procedure> pickup = coach.procedures().stream()
                .filter(it -> it.head().stage() == Stage.PICKUP_AFTER_HOURS)
                .toList();
        return coach.unit().switches().stream()
                .filter(it -> it.holdsOneOf(ROLES))
                .filter(it -> off(it, Switch.STORED))
                .flatMap(it -> check(it, pickup).stream());
    }

    private static boolean off(Switch battery, Key<String> state) {
        return battery.facts()
                .find(state)
                .filter(words -> OFF.matcher(words).find())
                .isPresent();
    }

    private static Optional<Finding> check(Switch battery, List<Procedure> pickup) {
        String stored =
                "switch `" + battery.id() + "` is stored `" + battery.facts().get(Switch.STORED) + "`, and ";
        if (!battery.facts().has(Switch.AT_PICKUP)) {
            return Optional.of(Finding.warning(
                            "stored-never-woken",
                            battery.facts().at(Switch.STORED),
                            stored + "nothing tells its state `at-pickup`")
                    .mend("Tell in `at-pickup` how the renter finds it."));
        }
        boolean woken = pickup.isEmpty() || pickup.stream().anyMatch(it -> links(it, battery));
        return woken || !off(battery, Switch.AT_PICKUP)
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "stored-never-woken",
                                battery.facts().at(Switch.AT_PICKUP),
                                stored + "no procedure of pickup after hours turns it on")
                        .mend("Add a step that turns it on to a procedure of the stage `pickup-after-hours`."));
    }

    private static boolean links(Procedure procedure, Switch battery) {
        return procedure
                .links()
                .anyMatch(link -> link.target().equals(new Target.OfThing(battery.kind(), battery.id())));
    }
}
