package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.model.Generator;
import bayfolio.model.Region;
import bayfolio.reckon.power.LegRating;
import bayfolio.source.Place;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a generator whose breaker does not fit its output: below its rated current it trips before
 * the generator is loaded, far above it guards nothing.
 */
public final class GeneratorBreaker implements Rule {
    /** Breakers come in steps; the next step above the rated current is no more than this. */
    private static final double MOST = 1.25 + 1e-9;

    /** Plates round: 7,000 W at 240 V is 29.2 A, and reads 29 A. */
    private static final double LEAST = 0.99;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Region region = coach.unit().region();
        return coach.unit().generator().map(Generator::facts).flatMap(it -> check(it, region)).stream();
    }

    /** What one leg gives at rated power. */
    static Optional<Amps> rated(Facts generator) {
        Optional<LegRating> legs = generator
                .find(Generator.VOLTS)
                .filter(volts -> volts.value() > 0)
                .flatMap(volts -> generator.find(Generator.LEGS).map(count -> new LegRating(volts, count)));
        return legs.flatMap(each -> generator.find(Generator.POWER).map(each::amps));
    }

    private static Optional<Finding> check(Facts generator, Region region) {
        return rated(generator)
                .flatMap(rated -> generator.find(Generator.BREAKER).flatMap(it -> check(it, rated, generator, region)));
    }

    private static Optional<Finding> check(Amps breaker, Amps rated, Facts generator, Region region) {
        String message = "the breaker of the generator is rated for %s, and %s makes %s on each leg"
                .formatted(
                        breaker.in(region.first()),
                        generator.get(Generator.POWER).in(region.first()),
                        rated.in(region.first()));
        Place at = generator.at(Generator.BREAKER);
        if (breaker.value() > MOST * rated.value()) {
            return Optional.of(Finding.error("generator-breaker", at, message + ": too large to guard it")
                    .mend("Read the figure on the breaker handle again, and power, volts and legs on the plate."));
        }
        return breaker.value() < LEAST * rated.value()
                ? Optional.of(Finding.warning("generator-breaker", at, message + ": it trips before full load")
                        .mend("Read the figure on the breaker handle again, and power, volts and legs on the plate."))
                : Optional.empty();
    }
}
