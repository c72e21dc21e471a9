package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Region;
import bayfolio.model.Weights;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a limit of one axle that is higher than that of the whole coach. */
public final class AxleLimitAboveGross implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Region region = coach.unit().region();
        return Laden.limits(coach.unit()).stream()
                .flatMap(limits -> Stream.of(Weights.FRONT_AXLE, Weights.REAR_AXLE)
                        .flatMap(axle -> check(limits, axle, region).stream()));
    }

    private static Optional<Finding> check(Facts limits, Key<Kilograms> axle, Region region) {
        Kilograms gross = limits.get(Weights.GROSS);
        return limits.find(axle)
                .filter(limit -> limit.exceeds(gross))
                .map(limit -> Finding.warning(
                                "axle-limit-above-gross",
                                limits.at(axle),
                                "the limit of the %s is %s, and that of the whole coach is %s"
                                        .formatted(
                                                axle.name().replace('-', ' '),
                                                limit.in(region.first()),
                                                gross.in(region.first())))
                        .mend("Read the plate again: the lines of axle and coach are easily swapped."));
    }
}
