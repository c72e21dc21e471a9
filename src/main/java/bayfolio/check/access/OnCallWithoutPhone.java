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
import java.util.Set;
import java.util.stream.Stream;

/**
 * Flags a step that sends the renter to an on-call place before the procedure has named a number to
 * call.
 */
public final class OnCallWithoutPhone implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        return Sending.check(coach, Access.ON_CALL, OnCallWithoutPhone::check);
    }

    private static Stream<Finding> check(Procedure procedure, Set<Target> places) {
        List<Finding> findings = new ArrayList<>();
        List<Inline.Link> links = new ArrayList<>();
        procedure.opening().forEach(block -> block.links(links::add));
        procedure.steps().forEach(step -> step.text().forEach(block -> block.links(links::add)));
        boolean phone = false;
        for (Inline.Link link : links) {
            phone |= link.target() instanceof Target.OfPhone;
            if (!phone && link.target() instanceof Target.OfThing target && places.contains(target)) {
                findings.add(Finding.error(
                                "on-call-without-phone",
                                link.at(),
                                Sending.said(procedure, target) + "on-call, and has named no phone before")
                        .mend("Begin the procedure with `[](phone:hours)`."));
            }
        }
        return findings.stream();
    }
}
