package bayfolio.check.access;

import bayfolio.check.Case;
import bayfolio.finding.Finding;
import bayfolio.model.Access;
import bayfolio.model.Reach;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Target;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** Procedures that send renters to places that are not free to them. */
final class Sending {
    private Sending() {}

    /**
     * Looks into those that name a place which only those of an access come at.
     *
     * @param each what is wrong with one of them, given all such places
     */
    static Stream<Finding> check(Case coach, Access access, BiFunction<Procedure, Set<Target>, Stream<Finding>> each) {
        Set<Target> places = Reach.all(access, coach.coach());
        return coach.procedures().stream()
                .filter(procedure -> procedure.head().who().forRenters())
                .filter(procedure -> procedure.links().anyMatch(link -> places.contains(link.target())))
                .flatMap(procedure -> each.apply(procedure, places));
    }

    /** The beginning of the message. */
    static String said(Procedure procedure, Target.OfThing to) {
        return "procedure `" + procedure.id() + "` sends the renter to " + to.kind() + " `" + to.id() + "`, which is ";
    }
}
