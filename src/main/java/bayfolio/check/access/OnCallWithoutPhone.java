package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
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
    private static final Sending SENDING = new Sending(
            Access.ON_CALL,
            "on-call, and no phone was named before",
            "Begin the procedure with `[](phone:hours)`",
            OnCallWithoutPhone::links);

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return SENDING.tell("on-call-without-phone", coach);
    }

    private static Stream<Inline.Link> links(Procedure procedure, Set<Target> places) {
        List<Inline.Link> wrong = new ArrayList<>();
        List<Inline.Link> links = new ArrayList<>();
        procedure.opening().forEach(block -> block.links(links::add));
        procedure.steps().forEach(step -> step.text().forEach(block -> block.links(links::add)));
        boolean phone = false;
        for (Inline.Link link : links) {
            phone |= link.target() instanceof Target.OfPhone;
            if (!phone && places.contains(link.target())) {
                wrong.add(link);
            }
        }
        return wrong.stream();
    }
}
