package bayfolio.publish;

import bayfolio.check.Check;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Shared;
import bayfolio.model.Unit;
import bayfolio.procedure.Script;
import java.util.List;
import java.util.Set;

/** A fleet as if nothing had been written for staff: no facts, things or notes of theirs, no procedures, no sources. */
final class ForRenters {
    private ForRenters() {}

    /** @param coaches ids of those that are wanted */
    static Check of(Check check, Set<String> coaches) {
        Fleet fleet = check.fleet();
        List<Unit> units = check.units().stream()
                .filter(unit -> coaches.contains(unit.id()))
                .map(unit -> unit.with(unit.facts().forRenters()))
                .toList();
        Fleet theirs = new Fleet(
                new FleetFacts(fleet.facts().facts().forRenters()),
                units,
                new Shared(
                        fleet.roles(),
                        fleet.words(),
                        List.of(),
                        fleet.countries().stream()
                                .map(country -> new Country(country.facts().forRenters()))
                                .toList(),
                        fleet.equipment()));
        return new Check(
                // The newest day may be one for staff; what has run out by then has done so for renters, too.
                fleet.asOf().map(theirs::asOf).orElse(theirs),
                check.library()
                        .with(check.library().scripts().stream()
                                .filter(script -> !script.forStaff())
                                .map(Script::forRenters)
                                .toList()),
                check.catalogs(),
                units,
                check.findings());
    }
}
