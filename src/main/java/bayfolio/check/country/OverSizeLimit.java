package bayfolio.check.country;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.measure.Meters;
import bayfolio.model.Coach;
import bayfolio.model.Country;
import bayfolio.model.Hire;
import bayfolio.model.Size;
import bayfolio.model.SizeLimit;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.stream.Stream;

/** Flags a coach that is larger than a country lets on its roads, where it is hired out or may be taken to. */
public final class OverSizeLimit implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach checked) {
        Coach coach = checked.coach();
        return coach.fleet().driven(coach.unit()).flatMap(country -> check(coach.unit(), country));
    }

    private static Stream<Finding> check(Unit unit, Country country) {
        Facts size = unit.size().facts();
        boolean tows = unit.facts()
                .find(Unit.HIRE)
                .flatMap(hire -> hire.facts().find(Hire.TOWING))
                .orElse(false);
        // What is only remembered accuses nobody.
        return country.facts().find(Country.LARGEST).filter(it -> !it.fromMemory()).stream()
                .flatMap(largest -> Stream.of(
                                over(size, Size.LENGTH, largest, SizeLimit.LENGTH, "long", country),
                                tows
                                        ? over(
                                                size,
                                                Size.LENGTH,
                                                largest,
                                                SizeLimit.LENGTH_TOWING,
                                                "long and may tow",
                                                country)
                                        : Stream.<Finding>of(),
                                over(size, Size.WIDTH, largest, SizeLimit.WIDTH, "wide", country),
                                over(size, Size.HEIGHT, largest, SizeLimit.HEIGHT, "high", country))
                        .flatMap(it -> it));
    }

    private static Stream<Finding> over(
            Facts size, Key<Meters> measure, SizeLimit largest, Key<Meters> limit, String how, Country country) {
        return largest.facts().located(limit).stream()
                .flatMap(most -> size.located(measure).stream()
                        .filter(is -> is.value().value() > most.value().value())
                        .map(is -> told(is, most, how, country)));
    }

    private static Finding told(Located<Meters> is, Located<Meters> most, String how, Country country) {
        return Finding.warning(
                        "over-size-limit",
                        is.at(),
                        "the coach is %s %s, and %s lets %s at most on its roads"
                                .formatted(is.written(), how, country.name(), most.written()))
                .mend("Measure again; if it is right, it needs a permit there, or stays out.");
    }
}
