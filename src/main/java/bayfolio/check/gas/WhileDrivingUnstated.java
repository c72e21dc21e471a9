package bayfolio.check.gas;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Gas;
import bayfolio.model.Unit;
import java.util.stream.Stream;

/** Flags a coach with LP gas that does not tell whether gas may be on while driving. */
public final class WhileDrivingUnstated implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().draft()
                ? Stream.of()
                : coach.unit().facts().find(Unit.GAS).stream()
                        .filter(gas -> !gas.facts().has(Gas.WHILE_DRIVING))
                        .map(gas -> Finding.warning(
                                        "while-driving-unstated",
                                        coach.unit().facts().at(Unit.GAS),
                                        "`gas` does not tell `while-driving`")
                                .mend("Tell whether gas may be on while driving; off is the safe answer."));
    }
}
