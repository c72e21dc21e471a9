package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Access;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a thing for renters in a compartment that they may not open: an item stowed there, a switch
 * or connection that is theirs to use.
 */
public final class OutOfReach implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Stream.of(
                        coach.unit().items().stream()
                                .filter(item -> !item.forStaff())
                                .flatMap(item -> check(item, Access.FREE, coach).stream()),
                        coach.unit().switches().stream()
                                .flatMap(it -> check(it, it.facts().get(Switch.ACCESS), coach).stream()),
                        coach.unit().connections().stream()
                                .flatMap(it -> check(it, it.facts().get(Connection.ACCESS), coach).stream()))
                .flatMap(findings -> findings);
    }

    private static Optional<Finding> check(Thing thing, Access access, CheckedCoach coach) {
        boolean renters = access == Access.FREE || access == Access.TASK;
        Optional<Compartment> around = coach.coach().around(thing);
        return around.filter(it -> renters && !it.emergency() && it.access().compareTo(Access.TASK) > 0)
                .map(it -> Finding.error(
                                "out-of-reach",
                                thing.at(),
                                thing.kind()
                                        + " `"
                                        + thing.id()
                                        + "` is for renters, and compartment `"
                                        + it.id()
                                        + "` is "
                                        + (it.access() == Access.STAFF ? "for staff" : "on call"))
                        .mend("Put it elsewhere, or correct the access of one of them."));
    }
}
