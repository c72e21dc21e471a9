package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Features;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags a part of something that the coach does not have, such as the switch of a generator that was taken out. */
public final class RoleWithoutFeature implements Rule {

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        if (!coach.unit().facts().has(Unit.HIRE)) {
            return Stream.of(); // a draft; what it belongs to may still come
        }
        Features features = coach.unit().features();
        return coach.unit()
                .things()
                .flatMap(thing -> roles(thing).flatMap(role -> check(role, thing, coach.unit(), features).stream()));
    }

    private static Stream<Located<String>> roles(Thing thing) {
        return thing.facts().located(thing.identity().roles()).stream().flatMap(roles -> roles.value().stream());
    }

    private static Optional<Finding> check(Located<String> role, Thing thing, Unit unit, Features features) {
        List<String> any = unit.equipment().belongsTo(role.value());
        if (any.isEmpty() || any.stream().anyMatch(features::contains)) {
            return Optional.empty();
        }
        String lacking = any.stream().map(it -> "`" + it + "`").collect(Collectors.joining(" or "));
        return Optional.of(Finding.warning(
                        "role-without-feature",
                        role.at(),
                        thing.kind()
                                + " `"
                                + thing.id()
                                + "` has the role `"
                                + role.value()
                                + "`, and this coach has no "
                                + lacking)
                .mend("Take out what the coach no longer has, or describe what the part belongs to."));
    }
}
