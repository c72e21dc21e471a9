package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import java.util.stream.Stream;

/** Flags a coach whose list of items has no fire extinguisher. */
public final class NoFireExtinguisher implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().draft()
                        || coach.unit().items().isEmpty()
                        || coach.unit().holds("fire-extinguisher")
                ? Stream.of()
                : Stream.of(Finding.warning(
                                "no-fire-extinguisher",
                                coach.unit().facts().at(Unit.ITEMS),
                                "no item of this coach has the role `fire-extinguisher`")
                        .mend("Give the role to the extinguisher, and tell where it hangs."));
    }
}
