package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Share;
import bayfolio.model.Region;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a stated payload that is not what the weighing leaves of the gross limit, once water and
 * people on board are taken out. In Europe the driver counts as part of the coach.
 */
public final class PayloadDisagrees implements Rule {
    private static final double TOLERANCE = 0.10 + 1e-9;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Laden.of(coach.unit()).flatMap(PayloadDisagrees::check).stream();
    }

    private static Optional<Finding> check(Laden laden) {
        Optional<Integer> people = laden.weighing().find(Weighing.PEOPLE);
        Optional<Share> fresh = laden.weighing().find(Weighing.FRESH_WATER);
        if (people.isEmpty() || fresh.isEmpty()) {
            return Optional.empty();
        }
        Region region = laden.unit().region();
        int driver = region == Region.EUROPE ? 1 : 0;
        Kilograms bare = laden.weighed()
                .minus(Laden.persons(people.get() - driver, region))
                .minus(Laden.water(laden.unit(), fresh.get().value()));
        Kilograms left = laden.limits().get(Weights.GROSS).minus(bare);
        return laden.limits()
                .find(Weights.PAYLOAD)
                .filter(payload -> Math.abs(payload.minus(left).value()) > TOLERANCE * Math.abs(left.value()))
                .map(payload -> Finding.warning(
                                "payload-disagrees",
                                laden.limits().at(Weights.PAYLOAD),
                                "the payload is stated as %s, and the scale leaves %s of the gross limit of %s"
                                        .formatted(
                                                laden.print(payload),
                                                laden.print(left),
                                                laden.print(laden.limits().get(Weights.GROSS))))
                        .mend("State the smaller of the two; what was fitted after the label was printed counts."));
    }
}
