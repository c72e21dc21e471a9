package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Region;
import bayfolio.model.Weights;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a limit of coach and trailer together that is lower than that of the coach alone. */
public final class CombinationBelowGross implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Region region = coach.unit().region();
        return Laden.limits(coach.unit()).flatMap(limits -> check(limits, region)).stream();
    }

    private static Optional<Finding> check(Facts limits, Region region) {
        Kilograms gross = limits.get(Weights.GROSS);
        return limits.find(Weights.GROSS_COMBINATION)
                .filter(gross::exceeds)
                .map(both -> Finding.error(
                                "combination-below-gross",
                                limits.at(Weights.GROSS_COMBINATION),
                                "coach and trailer together may weigh %s, and the coach alone %s"
                                        .formatted(both.in(region.first()), gross.in(region.first())))
                        .mend("Read both on the plate again."));
    }
}
