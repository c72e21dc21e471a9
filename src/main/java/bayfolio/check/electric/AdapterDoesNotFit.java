package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.model.Adapter;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import bayfolio.reckon.power.Shore;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags an adapter that fits nothing: neither the plug of the coach's cord nor the adapter that it
 * plugs onto.
 */
public final class AdapterDoesNotFit implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        Set<Amps> sizes = Shore.of(unit).stream()
                .map(supply -> supply.facts().get(Supply.AMPS))
                .collect(Collectors.toSet());
        return Shore.adapters(unit).stream().flatMap(it -> check(it, sizes, unit).stream());
    }

    private static Optional<Finding> check(Adapter adapter, Set<Amps> sizes, Unit unit) {
        Amps to = adapter.facts().get(Adapter.TO);
        if (!adapter.facts().has(Adapter.ONTO)) {
            return sizes.isEmpty() || sizes.contains(to)
                    ? Optional.empty()
                    : Optional.of(
                            finding(adapter, unit, "the cord of this coach has a plug for " + print(sizes, unit)));
        }
        // One that names no adapter of this coach is an unknown reference, and told as that.
        return onto(adapter, unit)
                .flatMap(other -> other.facts().get(Adapter.FROM).equals(to)
                        ? circle(adapter, unit)
                        : Optional.of(finding(
                                adapter,
                                unit,
                                "adapter `%s`, which it plugs onto, has a plug for %s"
                                        .formatted(
                                                other.id(),
                                                other.facts()
                                                        .get(Adapter.FROM)
                                                        .in(unit.region().first())))));
    }

    private static Optional<Finding> circle(Adapter adapter, Unit unit) {
        Set<String> passed = new HashSet<>();
        Optional<Adapter> next = Optional.of(adapter);
        while (next.isPresent() && passed.add(next.get().id())) {
            next = onto(next.get(), unit);
        }
        return next.map(it -> Finding.error(
                        "adapter-does-not-fit",
                        adapter.facts().at(Adapter.ONTO),
                        "adapter `%s` plugs onto `%s` in a circle and never reaches the cord"
                                .formatted(adapter.id(), adapter.facts().get(Adapter.ONTO)))
                .mend("Leave `onto` out of the one that fits the cord."));
    }

    private static Optional<Adapter> onto(Adapter adapter, Unit unit) {
        Optional<String> id = adapter.facts().find(Adapter.ONTO);
        return Shore.adapters(unit).stream()
                .filter(it -> id.filter(it.id()::equals).isPresent())
                .findFirst();
    }

    private static Finding finding(Adapter adapter, Unit unit, String other) {
        return Finding.error(
                        "adapter-does-not-fit",
                        adapter.facts().at(Adapter.TO),
                        "adapter `%s` takes a plug for %s, and %s"
                                .formatted(
                                        adapter.id(),
                                        adapter.facts()
                                                .get(Adapter.TO)
                                                .in(unit.region().first()),
                                        other))
                .mend("Correct `to`, or name the adapter that it plugs onto as `onto`.");
    }

    private static String print(Set<Amps> sizes, Unit unit) {
        return sizes.stream()
                .sorted(Comparator.comparingDouble(Amps::value))
                .map(size -> size.in(unit.region().first()))
                .collect(Collectors.joining(" or "));
    }
}
