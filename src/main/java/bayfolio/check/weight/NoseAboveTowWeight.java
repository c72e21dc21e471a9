package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.model.Region;
import bayfolio.model.Weights;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a load on the ball that is higher than the weight of the trailer. */
public final class NoseAboveTowWeight implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Region region = coach.unit().region();
        return Laden.limits(coach.unit()).flatMap(limits -> check(limits, region)).stream();
    }

    private static Optional<Finding> check(Facts limits, Region region) {
        return limits.find(Weights.TOW_WEIGHT)
                .flatMap(tow -> limits.find(Weights.NOSE_WEIGHT)
                        .filter(nose -> nose.exceeds(tow))
                        .map(nose -> Finding.error(
                                        "nose-above-tow-weight",
                                        limits.at(Weights.NOSE_WEIGHT),
                                        "the ball may carry %s, and the trailer may weigh %s"
                                                .formatted(nose.in(region.first()), tow.in(region.first())))
                                .mend("Read the plate of the hitch again: the two are easily swapped.")));
    }
}
