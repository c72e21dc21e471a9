package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.model.Access;
import bayfolio.model.Appliance;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Compartment;
import bayfolio.model.Door;
import bayfolio.model.Load;
import bayfolio.model.Role;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How things are made, who may use them and what they work: facts of one thing that must agree with its words and with others. */
final class UseRelations {
    /** Parts and doings by which a switch of each make is told. */
    private static final Map<Switch.Make, Pattern> PARTS = new EnumMap<>(Map.ofEntries(
            parts(Switch.Make.ROTARY_DISCONNECT, "turn|knob|handle|key|wing|disconnect|cut-?off"),
            parts(Switch.Make.ROCKER, "rocker|end|half|top|bottom|upper|lower"),
            parts(Switch.Make.TOGGLE, "toggle|lever"),
            parts(Switch.Make.BREAKER_HANDLE, "handle|bar|tongue|breaker|lever|knob|nose|switch"),
            parts(Switch.Make.MOMENTARY_BUTTON, "button|press|hold|tap|push"),
            parts(Switch.Make.LATCHING_BUTTON, "button|press|key|flag|lever|push"),
            parts(Switch.Make.TOUCH_PANEL, "touch|key|press|screen|line|page|panel|glass|tap"),
            parts(Switch.Make.PANEL, "panel|hold|press|key|screen|dial|window|dot|button"),
            parts(Switch.Make.KEY, "key"),
            parts(Switch.Make.KEYPAD, "pad|keypad|code|digit|figure|key"),
            parts(Switch.Make.PULL, "pull|rod|grip|stem|knob|lift"),
            parts(Switch.Make.LEVER, "lever|slide|tongue"),
            parts(Switch.Make.HANDWHEEL, "wheel|turn|thread|open|shut"),
            parts(Switch.Make.BALL_VALVE, "lever|handle"),
            parts(Switch.Make.SLIDE_VALVE, "pull|rod|handle|knob|blade"),
            parts(Switch.Make.TAP, "tap|knob|cap|lever|handle|trigger|button|turn"),
            parts(Switch.Make.KNOB, "knob|turn|mark|arrow|grip|dial"),
            parts(Switch.Make.PEDAL, "pedal|foot"),
            parts(Switch.Make.CRANK, "crank|lid|turn|handle|grip"),
            parts(Switch.Make.FUSES, "fuse"),
            parts(Switch.Make.OUTLET, "reset|outlet|test|plug")));

    private static final Pattern ANY_PART = Pattern.compile(
            "\\b(?:rocker|toggle|handle|button|screen|key|keypad|rod|lever|wheel|tap|cap|knob|pedal|crank|fuse|outlet)s?\\b");

    static final List<Relation<?, ?>> ALL = List.of(
            note(
                    "made-otherwise",
                    Pairs.own(Switch.SHAPE, Switch.MAKE),
                    UseRelations::toldAsMade,
                    "{about} is said to be {1}, and its working and looks are told by a part that no such one has",
                    "Look how it is made, or name the part that the hand takes: the rocker, the lever, the knob."),
            needed(Switch.SHAPE, Switch.EMERGENCY),
            needed(Compartment.SHAPE, Compartment.EMERGENCY),
            note(
                    "door-that-is-no-way-out",
                    Pairs.own(Door.SHAPE, Door.EMERGENCY),
                    (emergency, door) -> emergency,
                    "{about} is said to be no way out in an emergency",
                    "A door or window that opens from inside mostly is one."),
            note(
                    "door-not-free",
                    Pairs.own(Door.SHAPE, Door.ACCESS),
                    (access, door) -> access == Access.FREE,
                    "{about} is not free for everybody: {1}",
                    "Whoever is inside must get out; if it is so, say under `accept` why."),
            closed(Switch.SHAPE, Switch.ACCESS, Switch.ACCESS_REASON, "use"),
            closed(Compartment.SHAPE, Compartment.ACCESS, Compartment.ACCESS_REASON, "open"),
            warning(
                    "breaker-of-another-circuit",
                    breakers(),
                    (circuit, it) -> !it.facts().has(Switch.FEEDS)
                            || it.facts().all(Switch.FEEDS).contains(circuit.id()),
                    "{about} names {2} as its switch, and that one does not feed it",
                    "Look which breaker or fuse it hangs on; `feeds` of that one names the circuit."),
            warning(
                    "circuit-of-another-breaker",
                    circuits(),
                    (it, circuit) -> circuit.facts()
                            .find(Circuit.SWITCH)
                            .map(it.id()::equals)
                            .orElse(true),
                    "{about} feeds {2}, which names another one as its switch",
                    "Look which breaker or fuse it hangs on."),
            note(
                    "control-of-something-else",
                    controls(),
                    UseRelations::works,
                    "{about} is worked by {2}, which feeds nothing of it and has no word in common with it",
                    "Look which switch works it."));

    private UseRelations() {}

    private static Map.Entry<Switch.Make, Pattern> parts(Switch.Make make, String words) {
        return Map.entry(make, Pattern.compile("\\b(?:" + words + ")"));
    }

    private static <T extends Thing> Relation<?, ?> needed(Shape<T> shape, Key<Boolean> emergency) {
        return note(
                "needed-in-an-emergency",
                Pairs.onCoach(shape, shape.key("id").orElseThrow()),
                (it, coach) -> reached(it, emergency, coach),
                "{about} is one that everybody must be able to reach in an emergency, and does not say so",
                "Say `emergency: yes`, or under `accept` why not.");
    }

    /** With somebody on the phone; what is for staff alone, renters are never sent to. */
    private static <T extends Thing> Relation<?, ?> closed(
            Shape<T> shape, Key<Access> access, Key<String> reason, String use) {
        return note(
                "closed-without-a-reason",
                Pairs.onCoach(shape, access),
                (it, coach) -> coach.unit().draft()
                        || it.facts().get(access) != Access.ON_CALL
                        || it.facts().has(reason),
                "{about} is for renters with somebody on the phone, and nothing tells them why",
                "Say why under `access-reason`, or look who may " + use + " it.");
    }

    private static boolean toldAsMade(Switch.Make make, Switch it) {
        String words = Stream.of(Switch.WORK, Switch.WORK_OFF, Switch.ON_LOOK, Switch.OFF_LOOK)
                .flatMap(key -> it.facts().find(key).stream())
                .collect(Collectors.joining(" "))
                .toLowerCase(Locale.ROOT);
        Pattern parts = PARTS.get(make);
        return parts == null
                || parts.matcher(words).find()
                || !ANY_PART.matcher(words).find();
    }

    private static boolean reached(Thing thing, Key<Boolean> emergency, Coach coach) {
        return coach.unit().draft()
                || thing.facts().find(emergency).orElse(false)
                || thing.roles().stream()
                        .flatMap(role -> coach.fleet().role(role).stream())
                        .noneMatch(role -> role.facts().find(Role.EMERGENCY).orElse(false));
    }

    private static Pairs<Circuit, Switch> breakers() {
        return records -> known(records)
                .flatMap(circuit -> circuit.facts().located(Circuit.SWITCH).stream()
                        .flatMap(id -> records.named(Switch.SHAPE, id.value()).stream()
                                .map(it -> Pairs.Pair.of(circuit, id.at(), it))));
    }

    /** Circuits, if it is known which is which. */
    private static Stream<Circuit> known(Records records) {
        Unit unit = records.coach().unit();
        return unit.idsRead(Circuit.SHAPE.name()) && unit.idsRead(Switch.SHAPE.name())
                ? records.of(Circuit.SHAPE)
                : Stream.of();
    }

    /** Of breakers and fuses that circuits name as theirs, each circuit that they feed. */
    private static Pairs<Switch, Circuit> circuits() {
        return records -> {
            Set<String> named = known(records)
                    .flatMap(circuit -> circuit.facts().find(Circuit.SWITCH).stream())
                    .collect(Collectors.toSet());
            return records.of(Switch.SHAPE)
                    .filter(it -> named.contains(it.id()))
                    .flatMap(it -> it.facts().find(Switch.FEEDS).stream()
                            .flatMap(List::stream)
                            .flatMap(id -> records.named(Circuit.SHAPE, id.value()).stream()
                                    .map(circuit -> Pairs.Pair.of(it, id.at(), circuit))));
        };
    }

    private record Worked(Appliance appliance, Set<String> belongings) {}

    private static Pairs<Worked, Switch> controls() {
        return records -> records.of(Appliance.SHAPE)
                .flatMap(appliance -> appliance.facts().find(Appliance.CONTROLS).stream()
                        .flatMap(List::stream)
                        .flatMap(id -> records.named(Switch.SHAPE, id.value()).stream()
                                .map(it -> new Pairs.Pair<>(
                                        Records.naming(appliance),
                                        new Located<>(new Worked(appliance, belongings(appliance, records)), id.at()),
                                        new Located<>(it, it.at())))));
    }

    /** Itself, its loads and their circuits. */
    private static Set<String> belongings(Appliance appliance, Records records) {
        Set<String> ids = new HashSet<>(Set.of(appliance.id()));
        records.of(Load.SHAPE)
                .filter(load -> load.facts()
                        .find(Load.APPLIANCE)
                        .filter(appliance.id()::equals)
                        .isPresent())
                .forEach(load -> {
                    ids.add(load.id());
                    load.facts().find(Load.CIRCUIT).ifPresent(ids::add);
                });
        return ids;
    }

    private static boolean works(Worked worked, Switch it) {
        return !Collections.disjoint(worked.belongings, it.facts().all(Switch.FEEDS))
                || !Collections.disjoint(words(worked.appliance), names(it));
    }

    /** Words of all that is said of it. */
    private static Set<String> words(Appliance appliance) {
        StringBuilder texts = new StringBuilder(appliance.id());
        appliance.facts().each((key, value) -> texts.append(value.value() instanceof String text ? " " + text : ""));
        return Subjects.of(texts.toString());
    }

    private static Set<String> names(Switch it) {
        Set<String> names = new HashSet<>(Subjects.of(it.id() + " " + it.name() + " " + String.join(" ", it.roles())));
        names.removeAll(Set.of("switch", "control", "breaker", "button", "key", "knob", "valve", "panel"));
        return names;
    }
}
