package bayfolio.check.country;

import bayfolio.check.FleetRule;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Backed;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Flags what a country that coaches are driven in says, where nobody has compared it with its source for a year: laws change. */
public final class CheckedLongAgo implements FleetRule {
    private static final int MONTHS = 12;

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return fleet.asOf().stream().flatMap(day -> driven(fleet).flatMap(country -> check(country, day)));
    }

    private static Stream<Country> driven(Fleet fleet) {
        return fleet.units().stream().flatMap(fleet::driven).distinct();
    }

    private static Stream<Finding> check(Country country, LocalDate asOf) {
        List<Finding> findings = new ArrayList<>();
        Facts facts = country.facts();
        String named = "country `" + country.id() + "`";
        old(facts, Country.CHECKED_ON, named + " was", asOf).forEach(findings::add);
        boolean dated = facts.has(Country.CHECKED_ON);
        facts.each((key, value) -> backed(value).forEach(backed -> {
            Key<LocalDate> day = backed.backing().checkedOn();
            String subject = "`" + key.name() + "` of " + named;
            if (!dated && !backed.facts().has(day)) {
                findings.add(
                        told(backed.facts().at(), "nobody says when " + subject + " was compared with its source"));
            }
            old(backed.facts(), day, subject + " was", asOf).forEach(findings::add);
        }));
        return findings.stream();
    }

    private static Stream<Backed> backed(Located<?> value) {
        Stream<?> all = value.value() instanceof List<?> list
                ? list.stream().map(each -> ((Located<?>) each).value())
                : Stream.of(value.value());
        return all.filter(Backed.class::isInstance).map(Backed.class::cast);
    }

    private static Stream<Finding> old(Facts facts, Key<LocalDate> key, String what, LocalDate asOf) {
        return facts.located(key).stream()
                .filter(day -> day.value().plusMonths(MONTHS).isBefore(asOf))
                .map(day -> told(
                        day.at(),
                        "%s last compared with its source on %s, more than %d months before %s"
                                .formatted(what, day.value(), MONTHS, asOf)));
    }

    private static Finding told(Place at, String message) {
        return Finding.note("checked-long-ago", at, message)
                .mend("Read the source again, mend what has changed, and date it under `checked-on`.");
    }
}
