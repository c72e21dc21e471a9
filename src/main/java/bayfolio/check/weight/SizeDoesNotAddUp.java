package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.measure.Meters;
import bayfolio.model.Region;
import bayfolio.model.Size;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a coach whose overhangs and wheelbase together are not its length. */
public final class SizeDoesNotAddUp implements Rule {
    private static final double TOLERANCE = 0.02 + 1e-9;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Region region = coach.unit().region();
        return Optional.of(coach.unit().size().facts())
                .filter(Facts::whole)
                .flatMap(size -> check(size, region))
                .stream();
    }

    private static Optional<Finding> check(Facts size, Region region) {
        Optional<Meters> front = size.find(Size.FRONT_OVERHANG);
        Optional<Meters> base = size.find(Size.WHEELBASE);
        Optional<Meters> rear = size.find(Size.REAR_OVERHANG);
        if (front.isEmpty() || base.isEmpty() || rear.isEmpty()) {
            return Optional.empty();
        }
        Meters length = size.get(Size.LENGTH);
        Meters sum =
                new Meters(front.get().value() + base.get().value() + rear.get().value());
        return Math.abs(sum.value() - length.value()) <= TOLERANCE * length.value()
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "size-does-not-add-up",
                                size.at(Size.LENGTH),
                                "the coach is %s long, and front overhang %s, wheelbase %s and rear overhang %s make %s"
                                        .formatted(
                                                length.in(region.first()),
                                                front.get().in(region.first()),
                                                base.get().in(region.first()),
                                                rear.get().in(region.first()),
                                                sum.in(region.first())))
                        .mend("Measure all four again from the same bumpers."));
    }
}
