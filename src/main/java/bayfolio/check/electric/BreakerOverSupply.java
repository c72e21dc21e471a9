package bayfolio.check.electric;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.model.Circuit;
import bayfolio.model.Region;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags an AC circuit whose breaker is larger than what one leg of the coach's shore power carries. */
public final class BreakerOverSupply implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        Optional<Amps> shore = Shore.size(coach.unit());
        return coach.unit().circuits().stream()
                .filter(circuit -> circuit.facts().get(Circuit.CURRENT) == Circuit.Current.AC)
                .flatMap(circuit -> shore
                        .filter(limit -> circuit.facts().get(Circuit.BREAKER).exceeds(limit))
                        .map(limit -> finding(circuit, limit, coach.unit().region()))
                        .stream());
    }

    private static Finding finding(Circuit circuit, Amps limit, Region region) {
        return Finding.error(
                        "breaker-over-supply",
                        circuit.facts().at(Circuit.BREAKER),
                        "the breaker of circuit `%s` is rated for %s, and shore power gives %s on a leg"
                                .formatted(
                                        circuit.id(),
                                        circuit.facts().get(Circuit.BREAKER).in(region.first()),
                                        limit.in(region.first())))
                .mend("Read the figure on the breaker handle again, or the size of the cord's plug.");
    }
}
