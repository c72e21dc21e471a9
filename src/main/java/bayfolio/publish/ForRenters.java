package bayfolio.publish;

import bayfolio.check.Check;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Shared;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A fleet as if nothing had been written for staff: no facts, things or notes of theirs, no procedures, no sources. It is
 * made a coach at a time.
 */
final class ForRenters {
    private final Check check;
    private final FleetFacts facts;
    private final Shared shared;
    private final List<Script> common;

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
        // Those of one coach alone are made when it is asked for.
        this.common = forRenters(
                check.library().scripts().stream().filter(script -> !(script.whose() instanceof Whose.OfACoach)));
    }

    private static List<Script> forRenters(Stream<Script> scripts) {
        return scripts.filter(script -> !script.forStaff())
                .map(Script::forRenters)
                .toList();
    }

    private Library library(Unit unit) {
        return check.library()
                .with(Stream.concat(
                                common.stream(),
                                forRenters(check.library().of(unit).stream()
                                                .filter(script -> script.whose() instanceof Whose.OfACoach))
                                        .stream())
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
                library(unit),
                check.catalogs(),
                check.findings(),
                Map.of());
    }
}
