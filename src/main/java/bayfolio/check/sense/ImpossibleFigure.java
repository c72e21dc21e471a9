package bayfolio.check.sense;

import bayfolio.check.CheckedCoach;
import bayfolio.check.FleetRule;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import java.util.stream.Stream;

/**
 * Flags a figure that cannot be: a coach 29 m high, a tank that holds nothing, a day that is yet to come; and asks about one
 * that hardly ever is, under the code {@code unlikely-figure}.
 */
public final class ImpossibleFigure implements Rule, FleetRule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Figures.outside(coach.coach());
    }

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Figures.outside(fleet);
    }
}
