package bayfolio.check.access;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Access;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a step for renters that sends them to a place that only staff may open. A hazard may name
 * such a place, since it warns of it; what must be reachable in an emergency is reachable.
 */
public final class StaffPlaceForRenter implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        return coach.procedures().stream()
                .filter(procedure -> procedure.head().who().forRenters())
                .flatMap(procedure -> check(procedure, coach));
    }

    private static Stream<Finding> check(Procedure procedure, Case coach) {
        List<Inline.Link> links = new ArrayList<>();
        procedure.steps().forEach(step -> step.text().forEach(block -> block.links(links::add)));
        return links.stream().flatMap(link -> check(link, procedure, coach).stream());
    }

    private static Optional<Finding> check(Inline.Link link, Procedure procedure, Case coach) {
        if (!(link.target() instanceof Target.OfThing target)) {
            return Optional.empty();
        }
        return coach.coach()
                .thing(target.kind(), target.id())
                .map(thing -> Reach.of(thing, coach.coach()))
                .filter(reach -> reach.access() == Access.STAFF && !reach.emergency())
                .map(reach -> Finding.error(
                                "staff-place-for-renter",
                                link.at(),
                                "procedure `"
                                        + procedure.id()
                                        + "` sends the renter to "
                                        + target.kind()
                                        + " `"
                                        + target.id()
                                        + "`, which is for staff")
                        .mend("Take the step out, or correct the access of the " + target.kind() + "."));
    }
}
