package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags an axle that carries more than its limit, as weighed or with the fresh tanks full. Where
 * people and bags would sit is not known, and they are left out.
 */
public final class AxleOverLoaded implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Laden.of(coach.unit()).stream()
                .flatMap(laden -> Stream.of(
                                check("front", laden, Weighing.FRONT, Weights.FRONT_AXLE, onFront(laden)),
                                check("rear", laden, Weighing.REAR, Weights.REAR_AXLE, laden.waterOnRear()))
                        .flatMap(Optional::stream));
    }

    private static Optional<Kilograms> onFront(Laden laden) {
        return laden.waterOnRear().map(rear -> laden.waterWeight().minus(rear));
    }

    private static Optional<Finding> check(
            String axle, Laden laden, Key<Kilograms> weighed, Key<Kilograms> limit, Optional<Kilograms> water) {
        Optional<Kilograms> bare = laden.weighing().find(weighed);
        Optional<Kilograms> most = laden.limits().find(limit);
        if (bare.isEmpty() || most.isEmpty()) {
            return Optional.empty();
        }
        Kilograms full = bare.get().plus(water.orElse(new Kilograms(0)));
        if (Laden.over(bare.get(), most.get())) {
            return Optional.of(finding(
                    laden,
                    weighed,
                    "the %s axle carried %s on the scale, and its limit is %s"
                            .formatted(axle, laden.print(bare.get()), laden.print(most.get()))));
        }
        return Laden.over(full, most.get())
                ? Optional.of(finding(
                        laden,
                        weighed,
                        "the %s axle carries %s with full fresh tanks, %s of it on the scale, and its limit is %s"
                                .formatted(axle, laden.print(full), laden.print(bare.get()), laden.print(most.get()))))
                : Optional.empty();
    }

    private static Finding finding(Laden laden, Key<Kilograms> weighed, String message) {
        return Finding.error("axle-over-loaded", laden.weighing().at(weighed), message)
                .mend("Read plate and scale ticket again; if they are right, this coach must not go out so.");
    }
}
