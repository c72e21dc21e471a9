package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags a coach that is over its gross weight as weighed, or with every belted seat taken and the fresh tanks full. */
public final class GrossExceeded implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Laden.of(coach.unit()).flatMap(GrossExceeded::check).stream();
    }

    private static Optional<Finding> check(Laden laden) {
        Kilograms limit = laden.limits().get(Weights.GROSS);
        return Laden.over(laden.gross(), limit)
                ? Optional.of(
                        Finding.error(
                                        "gross-exceeded",
                                        laden.weighing().at(Weighing.TOTAL),
                                        "the coach weighs %s%s, and its gross limit is %s"
                                                .formatted(laden.print(laden.gross()), sum(laden), laden.print(limit)))
                                .mend(
                                        "Read plate and scale ticket again; if they are right, rent it with fewer seats or less water."))
                : Optional.empty();
    }

    private static String sum(Laden laden) {
        String added = Stream.of(
                        laden.seats()
                                .filter(it -> it.value() > 0)
                                .map(it -> laden.print(it) + " for people on the empty seats"),
                        Optional.of(laden.waterWeight())
                                .filter(it -> it.value() > 0)
                                .map(it -> laden.print(it) + " of fresh water"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" and "));
        return added.isEmpty() ? " on the scale" : " with " + added;
    }
}
