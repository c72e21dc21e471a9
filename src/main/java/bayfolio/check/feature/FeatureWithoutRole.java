package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.model.Unit;
import java.util.List;
import java.util.stream.Stream;

/** Flags equipment of a coach for which nothing holds a role that works it. */
public final class FeatureWithoutRole implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.draft()
                ? Stream.of()
                : unit.equipment().on(unit).stream()
                        .filter(kind -> unmet(kind, unit))
                        .map(kind -> Finding.error(
                                        "feature-without-role",
                                        unit.equipment()
                                                .at(unit, kind.id())
                                                .orElse(unit.facts().at()),
                                        "this coach has the feature `" + kind.id()
                                                + "`, and nothing on it has the role `"
                                                + String.join(
                                                        "` or `", kind.facts().all(Equipment.WORKED_BY)) + "`")
                                .mend("Give the role to what works it, or take out what this coach does not have."));
    }

    private static boolean unmet(Equipment kind, Unit unit) {
        List<String> roles = kind.facts().all(Equipment.WORKED_BY);
        return !roles.isEmpty() && roles.stream().noneMatch(unit::holds);
    }
}
