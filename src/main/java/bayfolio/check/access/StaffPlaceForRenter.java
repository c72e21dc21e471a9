package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
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
    private static final Sending SENDING =
            new Sending(Access.STAFF, "for staff", "Take the step out", StaffPlaceForRenter::links);

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return SENDING.tell("staff-place-for-renter", coach);
    }

    private static Stream<Inline.Link> links(Procedure procedure, Set<Target> places) {
        return procedure
                .steps()
                .flatMap(step -> step.text().stream())
                .flatMap(Block::links)
                .filter(link -> places.contains(link.target()));
    }
}
