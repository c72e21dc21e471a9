package bayfolio.check.access;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Access;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Flags a step for renters that sends them to a place that only staff may open. A hazard may name
 * such a place, since it warns of it; what must be reachable in an emergency is reachable.
 */
public final class StaffPlaceForRenter implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        return Sending.check(coach, Access.STAFF, StaffPlaceForRenter::check);
    }

    private static Stream<Finding> check(Procedure procedure, Set<Target> places) {
        return procedure
                .steps()
                .flatMap(step -> step.text().stream())
                .flatMap(Block::links)
                .filter(link -> places.contains(link.target()))
                .map(link -> finding(link, (Target.OfThing) link.target(), procedure));
    }

    private static Finding finding(Inline.Link link, Target.OfThing target, Procedure procedure) {
        return Finding.error("staff-place-for-renter", link.at(), Sending.said(procedure, target) + "for staff")
                .mend("Take the step out, or correct the access of the " + target.kind() + ".");
    }
}
