package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Switch;
import bayfolio.source.Located;
import java.util.List;
import java.util.stream.Stream;

/** Flags a switch that names a twin which does not name it in turn. */
public final class TwinsDoNotAgree implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().switches().stream()
                .flatMap(one -> one.facts().find(Switch.TWINS).orElse(List.of()).stream()
                        .flatMap(twin -> coach.unit().switches().stream()
                                .filter(other -> other.id().equals(twin.value()))
                                .filter(other ->
                                        !other.facts().all(Switch.TWINS).contains(one.id()))
                                .filter(other -> known(other.facts().all(Switch.TWINS), coach))
                                .map(other -> finding(one, twin))));
    }

    /** A twin that does not exist is told elsewhere, and may be a misspelling of this one. */
    private static boolean known(List<String> twins, CheckedCoach coach) {
        return twins.stream()
                .allMatch(
                        id -> coach.unit().things().anyMatch(thing -> thing.id().equals(id)));
    }

    private static Finding finding(Switch one, Located<String> twin) {
        return Finding.warning(
                        "twins-do-not-agree",
                        twin.at(),
                        "switch `" + one.id() + "` names `" + twin.value() + "` as its twin, and `" + twin.value()
                                + "` does not name `" + one.id() + "`")
                .mend("Let both name each other in `twins`.");
    }
}
