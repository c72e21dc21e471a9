package bayfolio.check.reference;

import bayfolio.check.CheckedCoach;
import bayfolio.check.FleetRule;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.TakenOut;
import bayfolio.model.Unit;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Library;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Flags a former id that is the id of another thing, procedure or coach now, or a former one of two of them. */
public final class FormerIdInUse implements Rule, FleetRule {
    /** What had ids before: a thing, a procedure, a coach. */
    private record Named(String kind, String id, Place at, List<Located<String>> formerly) {
        String whose() {
            return kind + " `" + id + "`";
        }
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        List<Named> things = unit.things()
                .map(thing -> new Named(
                        thing.kind(),
                        thing.id(),
                        thing.at(),
                        thing.facts().find(thing.identity().formerly()).orElse(List.of())))
                .toList();
        List<Named> scripts = coach.procedures().stream()
                .filter(it -> it.form().hasSteps())
                .map(it -> new Named(
                        it.form().called(),
                        it.id(),
                        it.head().facts().at(Head.ID),
                        it.head().facts().find(Head.FORMERLY).orElse(List.of())))
                .toList();
        List<Named> out = coach.coach().fleet().takenOut(unit).stream()
                .map(it -> new Named(it.kind(), it.id(), it.facts().at(TakenOut.WAS), List.of()))
                .toList();
        return Stream.of(
                        things.stream().flatMap(thing -> inUse(thing, things)),
                        scripts.stream().flatMap(script -> inUse(script, scripts)),
                        twice(things),
                        twice(scripts),
                        things.stream().flatMap(thing -> takenOut(thing, out)),
                        scripts.stream().flatMap(script -> takenOut(script, out)))
                .flatMap(findings -> findings);
    }

    private static Stream<Finding> inUse(Named named, List<Named> all) {
        return named.formerly.stream()
                .flatMap(former -> all.stream()
                        .filter(other -> other != named && other.id.equals(former.value()))
                        .limit(1)
                        .map(other -> finding(named.whose(), former, other.kind, other.at)));
    }

    /** Of things of one kind, since only those had one address. */
    private static Stream<Finding> twice(List<Named> all) {
        Map<String, Named> first = new HashMap<>();
        return all.stream()
                .flatMap(named -> named.formerly.stream().flatMap(former -> {
                    Named other = first.putIfAbsent(named.kind + " " + former.value(), named);
                    return other == null || other == named
                            ? Stream.of()
                            : Stream.of(Finding.error(
                                            "former-id-in-use",
                                            former.at(),
                                            named.whose() + " was called `" + former.value() + "` before, and "
                                                    + other.whose() + " says the same, at " + other.at)
                                    .mend("Keep it with the one that old addresses shall lead to."));
                }));
    }

    private static Stream<Finding> takenOut(Named named, List<Named> out) {
        return named.formerly.stream()
                .flatMap(former -> out.stream()
                        .filter(it -> it.id.equals(former.value()) && named.kind.equals(called(it.kind)))
                        .limit(1)
                        .map(it -> Finding.error(
                                        "former-id-in-use",
                                        former.at(),
                                        named.whose() + " was called `" + former.value()
                                                + "` before, and that is taken out, at " + it.at)
                                .mend("Say one of the two: it has another id now, or it is gone.")));
    }

    private static String called(String scheme) {
        return Form.ofSteps(scheme).map(Form::called).orElse(scheme);
    }

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        List<Named> coaches = fleet.units().stream()
                .filter(unit -> unit.facts().read(Unit.ID))
                .map(unit -> new Named(
                        "coach",
                        unit.id(),
                        unit.facts().at(Unit.ID),
                        unit.facts().find(Unit.FORMERLY).orElse(List.of())))
                .toList();
        return Stream.concat(
                twice(coaches),
                coaches.stream().flatMap(coach -> inUse(coach, coaches).map(finding -> finding.on(coach.id))));
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
