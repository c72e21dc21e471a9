package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Volts;
import bayfolio.model.Circuit;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a circuit that cannot be fed through the one that it names: another current, or another leg of the same voltage. */
public final class FeedDisagrees implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().circuits().stream()
                .flatMap(circuit -> coach.unit().circuits().stream()
                        .filter(feed -> circuit.facts()
                                .find(Circuit.FED_THROUGH)
                                .filter(feed.id()::equals)
                                .isPresent())
                        .flatMap(feed -> check(circuit, feed).stream()));
    }

    private static Optional<Finding> check(Circuit circuit, Circuit feed) {
        Circuit.Current own = circuit.facts().get(Circuit.CURRENT);
        Circuit.Current other = feed.facts().get(Circuit.CURRENT);
        if (own != other) {
            return Optional.of(finding(circuit, feed, name(own), name(other)));
        }
        Volts volts = circuit.facts().get(Circuit.VOLTS);
        Optional<Integer> leg = circuit.facts().find(Circuit.LEG);
        Optional<Integer> before = feed.facts().find(Circuit.LEG);
        return volts.equals(feed.facts().get(Circuit.VOLTS))
                        && leg.isPresent()
                        && before.isPresent()
                        && !leg.equals(before)
                ? Optional.of(finding(circuit, feed, "on leg " + leg.get(), "on leg " + before.get()))
                : Optional.empty();
    }

    private static String name(Circuit.Current current) {
        return current == Circuit.Current.AC ? "AC" : "DC";
    }

    private static Finding finding(Circuit circuit, Circuit feed, String own, String other) {
        return Finding.error(
                        "feed-disagrees",
                        circuit.facts().at(Circuit.FED_THROUGH),
                        "circuit `%s` is %s and is fed through `%s`, which is %s"
                                .formatted(circuit.id(), own, feed.id(), other))
                .mend("Read on the panel which breaker stands before it.");
    }
}
