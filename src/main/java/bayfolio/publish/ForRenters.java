package bayfolio.publish;

import bayfolio.check.Check;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Shared;
import bayfolio.model.Unit;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import java.util.List;
import java.util.Map;

/**
 * A fleet as if nothing had been written for staff: no facts, things or notes of theirs, no procedures, no sources. It is
 * made a coach at a time.
 */
final class ForRenters {
    private final Check check;
    private final FleetFacts facts;
    private final Shared shared;
    private final Library library;

    ForRenters(Check check) {
        Fleet fleet = check.fleet();
        this.check = check;
        this.facts = new FleetFacts(fleet.facts().facts().forRenters());
        this.shared = new Shared(
                fleet.roles(),
                fleet.words(),
                List.of(),
                fleet.countries().stream()
                        .map(country -> new Country(country.facts().forRenters()))
                        .toList(),
                fleet.equipment());
        this.library = check.library()
                .with(check.library().scripts().stream()
                        .filter(script -> !script.forStaff())
                        .map(Script::forRenters)
                        .toList());
    }

    /** That coach, and no other one. */
    Check of(Unit unit) {
        List<Unit> theirs = List.of(unit.with(unit.facts().forRenters()));
        Fleet fleet = new Fleet(facts, theirs, shared)
                .having(Map.of(unit.id(), check.fleet().had(unit)));
        // The newest day may be one for staff, or of another coach; what has run out by then has done so for renters,
        // too.
        return new Check(
                check.fleet().asOf().map(fleet::asOf).orElse(fleet),
                library,
                check.catalogs(),
                theirs,
                check.findings(),
                Map.of());
    }
}
