package bayfolio.check.equipment;

import bayfolio.check.FleetRule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.After;
import bayfolio.model.Equipment;
import bayfolio.model.Fleet;
import bayfolio.model.Order;
import bayfolio.model.Situation;
import bayfolio.model.StatesOf;
import bayfolio.model.Whose;
import bayfolio.procedure.Form;
import bayfolio.procedure.Library;
import bayfolio.procedure.References;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags a file of equipment that cannot be, whatever the coach: a state that the kind cannot take, a procedure that undoes
 * itself, an order that runs in a circle, two files for one kind, names of nothing.
 */
public final class EquipmentAgainstItself implements FleetRule {
    private static final List<Key<List<Located<String>>>> PROCEDURES =
            List.of(Equipment.SET_UP_BY, Equipment.UNDONE_BY, Equipment.USED_BY, Equipment.STAFF_WORK);

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        List<Equipment> files = fleet.equipment().files();
        return Stream.of(
                        twice(files),
                        files.stream().flatMap(EquipmentAgainstItself::states),
                        files.stream().flatMap(EquipmentAgainstItself::way),
                        files.stream().flatMap(kind -> names(kind, fleet, library)),
                        circles(fleet))
                .flatMap(it -> it);
    }

    private static Stream<Finding> twice(List<Equipment> files) {
        Map<String, Equipment> first = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (Equipment kind : files) {
            Place at = kind.facts().at(Equipment.ID);
            String name = at.file().path().replaceFirst(".*/", "").replace(".md", "");
            Equipment other = first.putIfAbsent(kind.id(), kind);
            if (other != null) {
                findings.add(Finding.error(
                                "two-files-for-one-kind",
                                at,
                                "`" + kind.id() + "` has a file already: "
                                        + other.facts().at().file().path())
                        .mend("Keep one of them."));
            } else if (!name.equals(kind.id())) {
                findings.add(Finding.error(
                                "equipment-against-itself",
                                at,
                                "`" + kind.id() + "` stands in a file `" + name + ".md`")
                        .mend("Call the file `" + kind.id() + ".md`."));
            }
        }
        return findings.stream();
    }

    private static Stream<Finding> states(Equipment kind) {
        List<String> can = kind.facts().ifRead(Equipment.CAN_BE).stream()
                .flatMap(states -> states.value().stream())
                .map(Located::value)
                .toList();
        Stream<Finding> words = kind.facts().ifRead(Equipment.CAN_BE).stream()
                .flatMap(states -> states.value().stream())
                .filter(state -> !StatesOf.STATES.contains(state.value()))
                .map(state -> Finding.error(
                                "equipment-against-itself", state.at(), "`" + state.value() + "` is no state")
                        .near(NearNames.to(state.value(), StatesOf.STATES))
                        .mend("States are: " + String.join(", ", StatesOf.STATES) + "."));
        Stream<Finding> taken = kind.facts().ifRead(Equipment.STATES).stream()
                .flatMap(states -> Situation.WITH_STATE.stream()
                        .flatMap(situation -> states.value().facts().ifRead(StatesOf.key(situation)).stream()))
                .filter(state -> StatesOf.STATES.contains(state.value()) && !can.contains(state.value()))
                .map(state -> Finding.error(
                                "equipment-against-itself",
                                state.at(),
                                "`" + kind.id() + "` cannot be `" + state.value() + "`")
                        .near(NearNames.to(state.value(), can))
                        .mend(
                                can.isEmpty()
                                        ? "Say under `can-be` which states it can take."
                                        : "It can be: " + String.join(", ", can) + "."));
        return Stream.concat(words, taken);
    }

    private static Stream<Finding> way(Equipment kind) {
        List<String> there = kind.facts().ifRead(Equipment.SET_UP_BY).stream()
                .flatMap(ids -> ids.value().stream())
                .map(Located::value)
                .toList();
        Stream<Finding> itself = kind.facts().ifRead(Equipment.UNDONE_BY).stream()
                .flatMap(ids -> ids.value().stream())
                .filter(id -> there.contains(id.value()))
                .map(
                        id -> Finding.error(
                                        "equipment-against-itself",
                                        id.at(),
                                        "procedure `" + id.value() + "` sets up `" + kind.id()
                                                + "`, and cannot undo itself")
                                .mend(
                                        "Name the procedure that takes it back, or name it under `used-by` if its last step does."));
        boolean says = Stream.of(Equipment.SET_UP_BY, Equipment.USED_BY, Equipment.NEEDS_NO_SETTING_UP)
                .anyMatch(kind.facts()::has);
        boolean guided = Stream.of(Equipment.TROUBLE, Equipment.NEEDS_NO_GUIDE).anyMatch(kind.facts()::has);
        return Stream.of(
                        itself,
                        says
                                ? Stream.<Finding>of()
                                : Stream.of(unsaid(
                                        kind,
                                        "how `" + kind.id() + "` is set up",
                                        "Name procedures under `set-up-by` and `undone-by`, or under `used-by`; or write"
                                                + " `needs-no-setting-up: yes`.")),
                        guided
                                ? Stream.<Finding>of()
                                : Stream.of(unsaid(
                                        kind,
                                        "which guide helps when `" + kind.id() + "` fails",
                                        "Name trouble guides under `trouble`, or write `needs-no-guide: yes`.")))
                .flatMap(each -> each);
    }

    private static Finding unsaid(Equipment kind, String what, String mend) {
        return Finding.error("equipment-against-itself", kind.facts().at(Equipment.ID), "nothing says " + what)
                .mend(mend);
    }

    private static Stream<Finding> names(Equipment kind, Fleet fleet, Library library) {
        Stream<Finding> procedures = PROCEDURES.stream()
                .flatMap(key -> kind.facts().ifRead(key).stream())
                .flatMap(ids -> ids.value().stream())
                .flatMap(id -> unknown(Form.PROCEDURE, id, library));
        Stream<Finding> guides = kind.facts().ifRead(Equipment.TROUBLE).stream()
                .flatMap(ids -> ids.value().stream())
                .flatMap(id -> unknown(Form.TROUBLE, id, library));
        List<String> known = Stream.concat(
                        fleet.equipment().turns().stream(),
                        fleet.equipment().all().stream().map(Equipment::id))
                .distinct()
                .toList();
        Stream<Finding> order = Stream.of(Equipment.SET_UP_AFTER, Equipment.UNDONE_AFTER)
                .flatMap(key -> kind.facts().ifRead(key).stream())
                .flatMap(rules -> rules.value().stream())
                .flatMap(rule -> rule.value().facts().ifRead(After.WHAT).stream())
                .flatMap(what -> what.value().stream())
                .filter(what -> fleet.equipment().whole() && !known.contains(what.value()))
                .map(what -> Finding.error(
                                "unknown-reference",
                                what.at(),
                                "there is no equipment and no turn `" + what.value() + "`")
                        .near(NearNames.to(what.value(), known)));
        return Stream.of(procedures, guides, order).flatMap(it -> it);
    }

    private static Stream<Finding> unknown(Form form, Located<String> id, Library library) {
        return library.knows(form, id.value(), Whose.ALL)
                ? Stream.of()
                : Stream.of(References.unknownScript(form, id.value(), id.at(), library))
                        // A link may be changed into one of the other kind; a list of guides holds nothing but guides.
                        .map(finding -> finding.code().equals("wrong-kind") ? finding.near(List.of()) : finding);
    }

    /** What must be so runs in a circle, on whichever coach. */
    private static Stream<Finding> circles(Fleet fleet) {
        return Stream.of(false, true)
                .flatMap(back -> Order.ofAll(fleet.equipment(), back).conflicts().stream())
                .map(conflict -> Finding.error(
                                "equipment-against-itself",
                                conflict.said().at(),
                                "`" + conflict.said().first() + "` comes before `"
                                        + conflict.said().then() + "` here, and after it by "
                                        + conflict.against().stream()
                                                .map(rule -> rule.at().file().path() + ":"
                                                        + rule.at().line())
                                                .distinct()
                                                .collect(Collectors.joining(", ")))
                        .mend("One of them must not be so on every coach: leave out its `must`."));
    }
}
