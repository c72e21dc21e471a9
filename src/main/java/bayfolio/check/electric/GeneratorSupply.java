package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.measure.Volts;
import bayfolio.model.Generator;
import bayfolio.model.Region;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a supply from the generator that does not agree with the generator. Of several sets the description tells the first
 * one's plate.
 */
public final class GeneratorSupply implements Rule {
    /** Plates round. */
    private static final double TOLERANCE = 1.01;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        Optional<Facts> generator = unit.generator().map(Generator::facts);
        return unit.supplies().stream()
                .filter(supply -> supply.source() == Supply.Source.GENERATOR)
                .limit(generator.isPresent() ? 1 : Long.MAX_VALUE)
                .flatMap(supply -> generator
                        .map(it -> check(supply, it, unit.region()))
                        .orElseGet(() -> Stream.of(missing(supply))));
    }

    private static Finding missing(Supply supply) {
        return Finding.error(
                        "generator-supply",
                        supply.facts().at(Supply.SOURCE),
                        "supply `%s` comes from a generator, and this coach describes none".formatted(supply.id()))
                .mend("Describe it under `generator`, or correct `source`.");
    }

    private static Stream<Finding> check(Supply supply, Facts generator, Region region) {
        Volts volts = supply.facts().get(Supply.VOLTS);
        Amps amps = supply.facts().get(Supply.AMPS);
        int legs = supply.facts().get(Supply.LEGS);
        Optional<Finding> otherVolts = generator
                .find(Generator.VOLTS)
                .filter(it -> it.value() != volts.value())
                .map(it -> finding(
                        supply, Supply.VOLTS, volts.in(region.first()), "the generator has " + it.in(region.first())));
        Optional<Finding> otherLegs = generator
                .find(Generator.LEGS)
                .filter(it -> it != legs)
                .map(it -> finding(supply, Supply.LEGS, legs(legs), "the generator has " + legs(it)));
        Optional<Finding> overBreaker = generator
                .find(Generator.BREAKER)
                .filter(amps::exceeds)
                .map(it -> finding(
                        supply,
                        Supply.AMPS,
                        amps.in(region.first()),
                        "the generator's breaker is rated for " + it.in(region.first())));
        // A breaker may be a step larger than what the generator makes.
        Optional<Finding> overPower = GeneratorBreaker.rated(generator)
                .filter(it -> !generator.has(Generator.BREAKER) && amps.value() > TOLERANCE * it.value())
                .map(it -> finding(
                        supply,
                        Supply.AMPS,
                        amps.in(region.first()),
                        "the generator makes " + it.in(region.first()) + " on each leg"));
        return Stream.of(otherVolts, otherLegs, overBreaker, overPower).flatMap(Optional::stream);
    }

    private static Finding finding(Supply supply, Key<?> key, String gives, String generator) {
        return Finding.error(
                        "generator-supply",
                        supply.facts().at(key),
                        "supply `%s` gives %s, and %s".formatted(supply.id(), gives, generator))
                .mend("Read the generator's plate again, and correct one of them.");
    }

    private static String legs(int legs) {
        return legs == 1 ? "one leg" : "two legs";
    }
}
