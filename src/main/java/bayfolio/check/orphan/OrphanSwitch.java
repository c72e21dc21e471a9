package bayfolio.check.orphan;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Access;
import bayfolio.model.Switch;
import java.util.stream.Stream;

/**
 * Flags a switch for renters without a role that no procedure links to, that no other thing names, and that does
 * not say how it is worked: the renter finds it and learns nothing.
 */
public final class OrphanSwitch implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Mentioned mentioned = Mentioned.on(coach);
        return coach.unit().switches().stream()
                .filter(it -> it.access() == Access.FREE || it.access() == Access.TASK)
                .filter(it -> it.roles().isEmpty() && !it.facts().has(Switch.WORK))
                .filter(it -> !mentioned.spoken(it))
                .map(it -> Finding.note(
                                "orphan-switch",
                                it.at(),
                                "no procedure speaks of switch `" + it.id() + "`, and it does not say how it is worked")
                        .mend("Link to it where it is used, or state `work`."));
    }
}
