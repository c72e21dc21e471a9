package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Weighing;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a weighing whose axles together are not its total. */
public final class WeighingDoesNotAddUp implements Rule {
    private static final double TOLERANCE = 0.01 + 1e-9;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Laden.of(coach.unit()).flatMap(WeighingDoesNotAddUp::check).stream();
    }

    private static Optional<Finding> check(Laden laden) {
        Optional<Kilograms> front = laden.weighing().find(Weighing.FRONT);
        Optional<Kilograms> rear = laden.weighing().find(Weighing.REAR);
        if (front.isEmpty() || rear.isEmpty()) {
            return Optional.empty();
        }
        Kilograms sum = front.get().plus(rear.get());
        Kilograms total = laden.weighed();
        return Math.abs(sum.minus(total).value()) <= TOLERANCE * total.value()
                ? Optional.empty()
                : Optional.of(Finding.error(
                                "weighing-does-not-add-up",
                                laden.weighing().at(Weighing.TOTAL),
                                "the scale gave %s in all, and %s in front with %s behind make %s"
                                        .formatted(
                                                laden.print(total),
                                                laden.print(front.get()),
                                                laden.print(rear.get()),
                                                laden.print(sum)))
                        .mend("Read the scale ticket again."));
    }
}
