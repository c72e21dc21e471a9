package bayfolio.check.country;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import java.util.stream.Stream;

/** Flags a country that has no emergency number that a renter may be told: a page for danger would say "phone" and no more. */
public final class CountryWithoutNumber implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return fleet.countries().stream()
                .filter(country ->
                        country.facts().whole() && country.emergency().isEmpty())
                .map(country -> Finding.error(
                                "country-without-number",
                                country.facts().at(Country.EMERGENCY),
                                "country `" + country.id() + "` has no emergency number that renters may be told")
                        .mend("Look it up where it is published, and name that under `source`."));
    }
}
