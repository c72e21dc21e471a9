package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Region;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.procedure.Script;
import bayfolio.source.Place;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Asks for a role that a coach has nothing for, though every coach needs it, or all its sisters have it, or a step of a
 * shared text falls away for lack of it: wedges that were taken out of the list are missed by nobody else, since a text
 * leaves out what is not there. Told once a role; {@code not-on-this-coach} says that it is so.
 */
public final class MissingRole implements Rule {
    /** What a coach has by its nature; common practice, no source. What has a rule of its own is left to that. */
    private static final List<Requirement> NEEDS = List.of(
            new Requirement("smoke-alarm", unit -> true, "people sleep in it"),
            new Requirement("co-alarm", unit -> unit.has("burns-fuel"), "something in it burns fuel"),
            new Requirement("first-aid-kit", unit -> true, "it is hired out"),
            new Requirement("wheel-chock", unit -> true, "it stands on slopes"),
            new Requirement("leveling-ramp", unit -> !unit.has("jacks"), "it has no jacks, and stands on slopes"),
            new Requirement(
                    "tank-gauge", unit -> holds(unit, Tank.Contents.GRAY), "it has a tank for waste that fills up"),
            new Requirement("lp-fill-port", unit -> unit.has("lp-tank"), "its gas tank is fixed"),
            new Requirement("generator-compartment", unit -> unit.has("generator"), "it has a generator"),
            new Requirement("warning-triangle", unit -> unit.region() == Region.EUROPE, "it is for Europe"));

    private record Requirement(String role, Predicate<Unit> when, String why) {}

    private static boolean holds(Unit unit, Tank.Contents contents) {
        return unit.tanks().stream().anyMatch(tank -> tank.contents() == contents);
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        if (unit.draft()) {
            return Stream.of();
        }
        List<String> without = unit.facts().all(Unit.NOT_ON_THIS_COACH);
        Map<String, String> missing = new LinkedHashMap<>();
        NEEDS.stream()
                .filter(need -> need.when.test(unit) && !unit.holds(need.role))
                .forEach(need -> missing.put(need.role, need.why));
        custom(coach).forEach(role -> missing.putIfAbsent(role, "all its sisters have it"));
        missing.keySet().removeAll(without);
        Map<String, String> fallen = fallen(coach);
        fallen.keySet().removeAll(without);
        fallen.keySet().removeAll(missing.keySet());
        return Stream.of(
                        missing.entrySet().stream()
                                .map(it -> Finding.warning(
                                                "missing-role",
                                                at(unit),
                                                "nothing on this coach has the role `" + it.getKey() + "`, and "
                                                        + it.getValue())
                                        .mend("Give something the role, or list it under `not-on-this-coach`.")),
                        fallen.isEmpty() ? Stream.<Finding>of() : Stream.of(fallen(unit, fallen)),
                        contradictions(coach))
                .flatMap(it -> it);
    }

    /** One note for all of them: most coaches lack ten. */
    private static Finding fallen(Unit unit, Map<String, String> fallen) {
        return Finding.note(
                        "missing-role",
                        at(unit),
                        "steps fall away since nothing on this coach has the roles "
                                + fallen.entrySet().stream()
                                        .map(it -> "`" + it.getKey() + "` (in `" + it.getValue() + "`)")
                                        .collect(Collectors.joining(", ")))
                .mend("Give what is there its role; for what is not, write `not-on-this-coach: ["
                        + String.join(
                                ", ",
                                Stream.concat(
                                                unit.facts().all(Unit.NOT_ON_THIS_COACH).stream(),
                                                fallen.keySet().stream())
                                        .toList())
                        + "]`.");
    }

    private static Place at(Unit unit) {
        return unit.facts().at(unit.facts().has(Unit.NOT_ON_THIS_COACH) ? Unit.NOT_ON_THIS_COACH : Unit.ID);
    }

    private static Stream<Finding> contradictions(CheckedCoach coach) {
        return coach.unit().facts().find(Unit.NOT_ON_THIS_COACH).stream()
                .flatMap(List::stream)
                .filter(role -> coach.unit().holds(role.value()))
                .map(role -> Finding.error(
                                "role-there-after-all",
                                role.at(),
                                "`" + role.value() + "` is said not to be on this coach, and something has that role")
                        .mend("Take it from the list, or the role from the thing."));
    }

    /** What all other coaches of its body have, or all others of the fleet, without a feature that this one lacks. */
    private static Stream<String> custom(CheckedCoach coach) {
        Fleet fleet = coach.coach().fleet();
        return fleet.customs().missing(coach.unit(), fleet.roles()).stream()
                .filter(role -> belongs(role, coach.coach()));
    }

    private static boolean belongs(String role, Coach coach) {
        List<String> features = coach.unit().equipment().belongsTo(role);
        return features.isEmpty() || features.stream().anyMatch(coach.features()::contains);
    }

    /** Roles that nothing has, each with the first script in which a step falls away for that. */
    private static Map<String, String> fallen(CheckedCoach coach) {
        Map<String, String> fallen = new TreeMap<>();
        for (Script script : coach.library().of(coach.unit())) {
            if (script.whose().shared()) {
                script.once("", (it, nothing) -> GuardedSteps.in(it)).stream()
                        .filter(guarded -> guarded.around().stream().allMatch(it -> it.takenOn(coach.coach())))
                        .filter(guarded -> !guarded.guard().takenOn(coach.coach()))
                        .flatMap(guarded -> guarded.guard().role().stream())
                        .filter(role -> belongs(role, coach.coach()))
                        .forEach(role -> fallen.putIfAbsent(role, script.id()));
            }
        }
        return fallen;
    }
}
