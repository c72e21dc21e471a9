package bayfolio.check.electric;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.model.Bank;
import bayfolio.model.Circuit;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.reckon.Shore;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags an AC circuit whose breaker is larger than what one leg of the coach's shore power carries, and a DC circuit
 * whose fuse is larger than the main fuse of every bank.
 */
public final class BreakerOverSupply implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        Optional<Amps> shore = Shore.size(coach.unit());
        Optional<Amps> banks = largestMainFuse(coach.unit());
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
                over(circuit, banks)
                        .map(limit -> finding(
                                        circuit,
                                        "fuse",
                                        "the largest main fuse of the batteries for %s"
                                                .formatted(limit.in(region.first())),
                                        region)
                                .mend("Read the figure on the fuse again, or on the main fuse at the batteries."));
        });
    }

    private static Stream<Amps> over(Circuit circuit, Optional<Amps> most) {
        return most.filter(limit -> circuit.facts().get(Circuit.BREAKER).exceeds(limit)).stream();
    }

    /** Nothing while one of the banks does not tell its own, since any of them may feed a circuit. */
    private static Optional<Amps> largestMainFuse(Unit unit) {
        List<Optional<Amps>> fuses =
                unit.banks().stream().map(bank -> bank.facts().find(Bank.FUSE)).toList();
        return fuses.contains(Optional.<Amps>empty())
                ? Optional.empty()
                : fuses.stream().flatMap(Optional::stream).max(Comparator.comparingDouble(Amps::value));
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
