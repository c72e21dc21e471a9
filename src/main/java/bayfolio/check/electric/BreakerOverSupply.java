package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.model.Bank;
import bayfolio.model.Circuit;
import bayfolio.model.Region;
import bayfolio.model.Thing;
import bayfolio.reckon.power.Shore;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags an AC circuit whose breaker is larger than what one leg of the coach's shore power carries, and a DC circuit
 * whose fuse is larger than the main fuse of the batteries that feed it.
 */
public final class BreakerOverSupply implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Optional<Amps> shore = Shore.size(coach.unit());
        Region region = coach.unit().region();
        return coach.unit().circuits().stream().flatMap(circuit -> switch (circuit.facts()
                .get(Circuit.CURRENT)) {
            case AC ->
                over(circuit, shore)
                        .map(limit -> finding(
                                        circuit,
                                        "breaker",
                                        "shore power gives %s on a leg".formatted(limit.in(region.first())),
                                        region)
                                .mend("Read the figure on the breaker handle again, or the size of the cord's plug."));
            case DC ->
                over(circuit, mainFuse(circuit, coach))
                        .map(limit -> finding(
                                        circuit,
                                        "fuse",
                                        "the main fuse of its batteries for %s".formatted(limit.in(region.first())),
                                        region)
                                .mend("Read the figure on the fuse again, or on the main fuse at the batteries."));
        });
    }

    private static Stream<Amps> over(Circuit circuit, Optional<Amps> most) {
        return most.filter(limit -> circuit.facts().get(Circuit.BREAKER).exceeds(limit)).stream();
    }

    /** The largest of those that may feed it; nothing while one of these does not tell its own. */
    private static Optional<Amps> mainFuse(Circuit circuit, CheckedCoach coach) {
        List<Optional<Amps>> fuses = feeding(circuit, coach)
                .map(bank -> bank.facts().find(Bank.FUSE))
                .toList();
        return fuses.contains(Optional.<Amps>empty())
                ? Optional.empty()
                : fuses.stream().flatMap(Optional::stream).max(Comparator.comparingDouble(Amps::value));
    }

    /** The batteries that the circuit names, else those that have the role, else any. */
    private static Stream<Bank> feeding(Circuit circuit, CheckedCoach coach) {
        List<Bank> banks = coach.unit().banks();
        List<Thing> house = coach.coach().holders(Bank.SHAPE.name(), "house-bank");
        return circuit.facts()
                .find(Circuit.BANK)
                .map(id -> banks.stream().filter(bank -> bank.id().equals(id)))
                .orElseGet(() -> banks.stream().filter(bank -> house.isEmpty() || house.contains(bank)));
    }

    private static Finding finding(Circuit circuit, String breaker, String limit, Region region) {
        return Finding.error(
                "breaker-over-supply",
                circuit.facts().at(Circuit.BREAKER),
                "the %s of circuit `%s` is rated for %s, and %s"
                        .formatted(
                                breaker,
                                circuit.id(),
                                circuit.facts().get(Circuit.BREAKER).in(region.first()),
                                limit));
    }
}
