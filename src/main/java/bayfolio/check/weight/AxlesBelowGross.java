package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.model.Weights;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a gross limit that is higher than the limits of all axles together. */
public final class AxlesBelowGross implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return Laden.limits(unit)
                .flatMap(limits -> limits.find(Weights.FRONT_AXLE)
                        .flatMap(front -> limits.find(Weights.REAR_AXLE)
                                .flatMap(rear -> check(limits, front.plus(rear), unit.region()))))
                .stream();
    }

    private static Optional<Finding> check(Facts limits, Kilograms axles, Region region) {
        Kilograms gross = limits.get(Weights.GROSS);
        return Laden.over(gross, axles)
                ? Optional.of(Finding.error(
                                "axles-below-gross",
                                limits.at(Weights.GROSS),
                                "the gross limit is %s, and the axles together carry %s"
                                        .formatted(gross.in(region.first()), axles.in(region.first())))
                        .mend("Read all three on the plate again."))
                : Optional.empty();
    }
}
