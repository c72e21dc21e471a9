package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.FleetRule;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.procedure.Library;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a former id that is the id of another thing or coach now. */
public final class FormerIdInUse implements Rule, FleetRule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.things()
                .flatMap(thing -> thing.facts().find(thing.identity().formerly()).orElse(List.of()).stream()
                        .flatMap(former -> unit.things()
                                .filter(other -> other != thing && other.id().equals(former.value()))
                                .limit(1)
                                .map(other -> finding(
                                        thing.kind() + " `" + thing.id() + "`", former, other.kind(), other.at()))));
    }

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        Map<String, Unit> byId = new HashMap<>();
        fleet.units().forEach(unit -> unit.facts().find(Unit.ID).ifPresent(id -> byId.putIfAbsent(id, unit)));
        return fleet.units().stream()
                .flatMap(unit -> unit.facts().find(Unit.FORMERLY).orElse(List.of()).stream()
                        .flatMap(former -> Optional.ofNullable(byId.get(former.value())).stream()
                                .filter(other -> other != unit)
                                .map(other -> finding(
                                                "coach `" + unit.id() + "`",
                                                former,
                                                "coach",
                                                other.facts().at(Unit.ID))
                                        .on(unit.id()))));
    }

    private static Finding finding(String whose, Located<String> former, String kind, Place now) {
        return Finding.error(
                        "former-id-in-use",
                        former.at(),
                        whose + " was called `" + former.value() + "` before, and that is the id of another " + kind
                                + " now, at " + now)
                .mend("Give the new one another id, or old addresses lead to the wrong page.");
    }
}
