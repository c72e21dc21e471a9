package bayfolio.check.feature;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.reckon.Reckoned;
import bayfolio.reckon.Reckonings;
import java.util.stream.Stream;

/** Tells which facts would answer a question of renters that the handbook must leave out now. */
public final class ReckoningLacksFacts implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        // What could not be read is told as that.
        return coach.unit().draft() || !coach.unit().facts().entire()
                ? Stream.empty()
                : Reckonings.of(coach.coach()).stream()
                        .filter(Reckoned.Lacking.class::isInstance)
                        .map(Reckoned.Lacking.class::cast)
                        .filter(lacking -> !lacking.facts().isEmpty())
                        .map(lacking -> finding(lacking, coach.unit()));
    }

    private static Finding finding(Reckoned.Lacking lacking, Unit unit) {
        return Finding.note(
                        "reckoning-lacks-facts",
                        unit.facts().at(Unit.ID),
                        "the handbook does not answer `" + lacking.asked() + "`, since the description does not say: "
                                + String.join("; ", lacking.facts()))
                .mend("State it where it is known; nothing is made up in its place.");
    }
}
