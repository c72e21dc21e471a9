package bayfolio.check.reference;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Hire;
import bayfolio.model.Unit;
import bayfolio.procedure.Library;
import bayfolio.source.Located;
import java.util.List;
import java.util.stream.Stream;

/** Flags a country of the fleet or of a coach, or one that it may be taken to, that has no file among the countries. */
public final class UnknownCountry implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        List<String> ids = fleet.countries().stream().map(Country::id).toList();
        Stream<Located<String>> named = Stream.concat(
                fleet.facts().facts().located(FleetFacts.COUNTRY).stream(),
                fleet.units().stream().flatMap(UnknownCountry::named));
        return named.filter(country -> !ids.contains(country.value()))
                .map(country -> Finding.error(
                                "unknown-country", country.at(), "there is no country `" + country.value() + "`")
                        .near(NearNames.to(country.value(), ids))
                        .mend("Each is a file in `units/shared/countries`; known: " + String.join(", ", ids) + "."));
    }

    private static Stream<Located<String>> named(Unit unit) {
        Stream<Located<String>> abroad = unit.facts().ifRead(Unit.HIRE).stream()
                .flatMap(hire -> hire.value().facts().ifRead(Hire.ABROAD).stream())
                .flatMap(countries -> countries.value().stream());
        return Stream.concat(unit.facts().located(Unit.COUNTRY).stream(), abroad);
    }
}
