package bayfolio.check.orphan;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import java.util.stream.Stream;

/**
 * Flags a compartment without a role that no procedure links to and in which nothing is that a procedure links to or
 * that is stowed there.
 */
public final class OrphanCompartment implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Mentioned mentioned = Mentioned.on(coach);
        return coach.unit().compartments().stream()
                .filter(it -> !mentioned.spoken(it))
                .filter(it -> it.roles().isEmpty()
                        && it.facts().all(Compartment.INSIDE).isEmpty())
                .filter(it -> Mentioned.inside(it, coach).findAny().isEmpty())
                .map(it -> Finding.note(
                                "orphan-compartment",
                                it.at(),
                                "no procedure speaks of compartment `" + it.id() + "`, and nothing is in it")
                        .mend("Say what it holds, or link to it where it is used."));
    }
}
