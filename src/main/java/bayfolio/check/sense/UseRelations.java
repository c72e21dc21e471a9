package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.note;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.model.Access;
import bayfolio.model.Appliance;
import bayfolio.model.Coach;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Door;
import bayfolio.model.Item;
import bayfolio.model.Role;
import bayfolio.model.Side;
import bayfolio.model.Spot;
import bayfolio.model.Step;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How things are made and who may use them: facts of one thing that must agree with its words. */
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

    /** Makes that are called by one word, which nobody gives to another. */
    private static final Map<Switch.Make, Pattern> NAMES = new EnumMap<>(Map.ofEntries(
            parts(Switch.Make.ROCKER, "rockers?\\b"),
            parts(Switch.Make.TOGGLE, "toggles?\\b"),
            parts(Switch.Make.KNOB, "knobs?\\b"),
            parts(Switch.Make.TAP, "(?:tap|knob|lever|handle)s?\\b"),
            parts(Switch.Make.HANDWHEEL, "(?:hand)?wheels?\\b"),
            parts(Switch.Make.CRANK, "cranks?\\b"),
            parts(Switch.Make.PEDAL, "pedals?\\b"),
            parts(Switch.Make.KEYPAD, "keypad|digits?\\b")));

    private static final Pattern TOUCHED = Pattern.compile("(?:^|[.;,] |then )touch ");

    private static final Pattern STAYS_NOT = Pattern.compile("this one shows nothing|springs back|shows no state");

    /** Words in the name of each kind of device. */
    private static final List<String> SOLAR_PANEL = List.of("solar", "panel");

    private static final Pattern LID = Pattern.compile("(?i)\\b(?:lid|cover)\\b");

    /** Of these nobody speaks without saying the word. */
    private static final Set<Switch.Make> NAMED_AT_ONCE =
            EnumSet.of(Switch.Make.PEDAL, Switch.Make.CRANK, Switch.Make.KEYPAD, Switch.Make.FUSES);

    /** What is pressed or pushed, and never turned. */
    private static final Set<Switch.Make> PRESSED = EnumSet.of(
            Switch.Make.ROCKER,
            Switch.Make.TOGGLE,
            Switch.Make.BREAKER_HANDLE,
            Switch.Make.MOMENTARY_BUTTON,
            Switch.Make.LATCHING_BUTTON,
            Switch.Make.SLIDE_VALVE);

    private static final Set<String> OF_THE_ROOM = Set.of("water-pump-switch", "branch-breaker", "gfci-outlet");

    private static final Pattern TURNED = Pattern.compile("\\b(?:quarter|half) turn\\b");

    private static final Pattern CALL = Pattern.compile("(?i)\\bcall\\b");

    private static final Pattern NOTHING = Pattern.compile("(?i)^(?:anything at all|everything|nothing at all)");

    /** What guests take along, and what everybody needs when something happens; common practice, no source. */
    private static final Set<String> OF_GUESTS = Subjects.words(
            "chair table mat broom flashlight torch ladder kettle bedding level lighter cover strap tie net brush ring bucket can"
                    + " hose spray funnel spout level cloth watering post heater");

    private static final Set<String> OF_THE_ENGINE = Subjects.words("oil coolant washer brake engine");

    private static final Set<String> MACHINES =
            Subjects.words("heater furnace radiator vent charger inverter burner condenser regulator");

    private static final Set<String> OF_STAFF = Subjects.words("crank block filter cartridge fuse");

    private static final Set<String> OF_EMERGENCIES =
            Subjects.words("extinguisher blanket triangle vest aid towing emergency flashlight torch");

    /** So many others make a row of which one may be the odd one. */
    private static final int ROW = 3;

    /** From so many on people call a thing by its plural. */
    private static final int MANY = 8;

    private static final Pattern PLURAL = Pattern.compile("(?i)[a-z]s\\b|\\b(?:bedding|cutlery|crockery|linen)\\b");

    private static final Pattern ANY_PART = Pattern.compile(
            "\\b(?:rocker|toggle|handle|button|screen|key|keypad|rod|lever|wheel|tap|cap|knob|pedal|crank|fuse|outlet)s?\\b");

    static final List<Relation<?, ?>> ALL = List.of(
            note(
                    "made-otherwise",
                    Pairs.own(Switch.SHAPE, Switch.MAKE),
                    UseRelations::toldAsMade,
                    "{about} is said to be {1}, and its working and looks are told by a part that no such one has",
                    "Look how it is made, or name the part that the hand takes: the rocker, the lever, the knob."),
            note(
                    "made-unusually-for-its-role",
                    usual(Switch.SHAPE, Switch.MAKE, Role.MADE_AS).given(Records::described),
                    (make, usual) -> among(usual, make),
                    "{about} is said to be {1}, and such switches are made otherwise",
                    "Look how it is made; if it is so, say under `accept` how."),
            access(Switch.SHAPE, Switch.ACCESS),
            access(Compartment.SHAPE, Compartment.ACCESS),
            access(Connection.SHAPE, Connection.ACCESS),
            note(
                    "used-by-somebody-else",
                    usual(Item.SHAPE, Item.FOR, Role.USED_BY).given(Records::described),
                    (user, usual) -> user == usual,
                    "{about} is said to be for {1}, where such things are for {2}",
                    "Say who it is for; if it is so, say under `accept` why."),
            note(
                    "for-others-by-its-name",
                    Pairs.own(Item.SHAPE, Item.FOR)
                            .where((user, item) -> item.roles().isEmpty())
                            .given(Records::described),
                    UseRelations::forWhomItsNameSays,
                    "{about} is said to be for {1}, and such things are for others, by its name",
                    "Say who it is for; if it is so, say under `accept` why."),
            note(
                    "connection-on-call",
                    Pairs.own(Connection.SHAPE, Connection.ACCESS),
                    (access, connection) -> access != Access.ON_CALL
                            || !Collections.disjoint(Subjects.naming(connection), OF_THE_ENGINE),
                    "{about} is said to be {1}: what is plugged, filled or drained is for renters, or for staff",
                    "Say `free`, `task` or `staff`; if it is so, say under `accept` why."),
            note(
                    "service-door-for-everybody",
                    Pairs.own(Compartment.SHAPE, Compartment.ACCESS)
                            .where((access, bay) -> bay.roles().isEmpty()),
                    (access, bay) -> access != Access.FREE || Collections.disjoint(Subjects.of(bay.name()), MACHINES),
                    "{about} is {1}, and named after a machine that nobody but staff opens a door for",
                    "Say who opens it; if it is so, say under `accept` why."),
            note(
                    "for-tasks-in-the-room",
                    Pairs.own(Switch.SHAPE, Switch.ACCESS)
                            .where((access, it) ->
                                    access == Access.TASK && (it.roles().isEmpty() || it.holdsOneOf(OF_THE_ROOM)))
                            .given(Records::described),
                    (access, it) -> !inTheRoom(it),
                    "{about} is in the room where everybody lives, and only for tasks, of which its role does not tell",
                    "Say `free`, or give it the role by which a procedure sends people to it."),
            note(
                    "access-otherwise-than-its-row",
                    records -> records.of(Switch.SHAPE).flatMap(it -> row(it, records)),
                    (access, row) -> row.size() < ROW || row.contains(access),
                    "{about} is {1}, and all others of its make in its bay are for others",
                    "Look who may use it; if it is so, say under `accept` why."),
            note(
                    "pressed-toggle",
                    Pairs.own(Switch.SHAPE, Switch.MAKE).where((make, it) -> make == Switch.Make.TOGGLE),
                    (make, it) -> !it.facts().find(Switch.WORK).orElse("").startsWith("Press "),
                    "{about} is said to be {1}, which is flipped, and its working begins with a press",
                    "Look how it is made: an end of a rocker is pressed, and a button."),
            note(
                    "label-against-access",
                    Pairs.own(Compartment.SHAPE, Compartment.ACCESS)
                            .where((access, bay) -> access == Access.FREE || access == Access.TASK),
                    (access, bay) -> !CALL.matcher(
                                    bay.facts().find(Compartment.LABEL).orElse(""))
                            .find(),
                    "the access of {about} is {1}, and its label wants a call before it is opened",
                    "Read the label on the door, and mend the one that is wrong."),
            note(
                    "storage-for-nothing",
                    Pairs.own(Compartment.SHAPE, Compartment.NEVER_STORE)
                            .where((never, bay) -> bay.roles().contains("storage-bay")),
                    (never, bay) -> !NOTHING.matcher(never).find(),
                    "{about} is a storage bay, and nothing at all may be stored in it",
                    "Mend its role, or what must not be stored there."),
            note(
                    "what-against-name",
                    Pairs.own(Appliance.SHAPE, Appliance.WHAT),
                    (what, appliance) -> what.called().isEmpty()
                            || what.called()
                                    .get()
                                    .matcher(appliance.id() + " " + appliance.name() + " "
                                            + appliance
                                                    .facts()
                                                    .find(Appliance.NOTE)
                                                    .orElse(""))
                                    .find(),
                    "{about} is said to be {1}, and its name says something else",
                    "Look what it is, or call it so."),
            note(
                    "on-the-roof-by-its-kind",
                    Pairs.onCoach(Appliance.SHAPE, Appliance.SHAPE.key("side").orElseThrow())
                            .where((appliance, coach) ->
                                    appliance.facts().get(Appliance.WHAT).onTheRoof()
                                            || Subjects.all(appliance.name()).containsAll(SOLAR_PANEL)),
                    (appliance, coach) -> appliance
                            .spot()
                            .flatMap(Spot::side)
                            .filter(side -> side == Side.ROOF || side == Side.INSIDE)
                            .isPresent(),
                    "{about} is of a kind that is on the roof, and said to be elsewhere",
                    "Look where it is; if it is so, say under `accept` where."),
            note(
                    "lid-or-not",
                    Pairs.own(Appliance.SHAPE, Appliance.LID).where((lid, appliance) -> !lid),
                    (lid, appliance) -> Stream.of(Appliance.NOTE, Appliance.STOPS_WITH, Appliance.COMES_ON)
                            .flatMap(key -> appliance.facts().find(key).stream())
                            .noneMatch(text -> LID.matcher(text).find()),
                    "{about} is said to have no lid, and a text of it speaks of one",
                    "Mend the answer, or the text."),
            note(
                    "controls-of-a-manual-step",
                    Pairs.own(Step.SHAPE, Step.KIND).where((kind, step) -> kind == Step.Kind.MANUAL),
                    (kind, step) -> step.facts().all(Step.CONTROLS).isEmpty(),
                    "{about} is said to be moved by hand, and has switches",
                    "Mend `kind`, or leave the switches out."),
            note(
                    "many-of-one-thing",
                    Pairs.own(Item.SHAPE, Item.COUNT).where((count, item) -> count >= MANY),
                    (count, item) -> PLURAL.matcher(item.name()).find(),
                    "{about} is there {1} times, and its name is that of one thing",
                    "Count again; if there are so many, call it so."),
            note(
                    "bay-needed-in-an-emergency",
                    baysOfEmergencies().given(Records::described),
                    (bay, it) -> bay.facts().find(Compartment.EMERGENCY).orElse(false),
                    "{2}, which is needed in an emergency, is in {about}, which is not said to be",
                    "Say `emergency: yes` of the bay, too."),
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
            closed(Compartment.SHAPE, Compartment.ACCESS, Compartment.ACCESS_REASON, "open"));

    private UseRelations() {}

    /**
     * A fact, and what it is on any coach by the first of its roles that says so; not to be asked while the coach is
     * still being described.
     */
    private static <T extends Thing, A, B> Pairs<A, B> usual(Shape<T> shape, Key<A> fact, Key<B> ofRole) {
        return records -> records.of(shape)
                .flatMap(it -> it.facts().located(fact).stream()
                        .flatMap(value -> records.coach()
                                .roles(it)
                                .flatMap(role -> role.facts().located(ofRole).stream())
                                .limit(1)
                                .map(usual -> new Pairs.Pair<>(Records.naming(it), value, usual))));
    }

    /** In the open there, in no bay. */
    private static boolean inTheRoom(Switch it) {
        return it.spot()
                .filter(spot -> spot.in().isEmpty() && spot.side().orElse(Side.INSIDE) == Side.INSIDE)
                .isPresent();
    }

    /** The access of a switch, and that of all others of its make in its bay. */
    private static Stream<Pairs.Pair<Access, List<Access>>> row(Switch it, Records records) {
        return it.spot().flatMap(Spot::in).stream()
                .map(bay -> new Pairs.Pair<>(
                        Records.naming(it),
                        it.facts().located(Switch.ACCESS).orElseThrow(),
                        new Located<>(
                                records.beside(it)
                                        .filter(other -> other.make() == it.make())
                                        .map(Switch::access)
                                        .toList(),
                                it.at())));
    }

    private static <A> boolean among(List<Located<A>> usual, A value) {
        return usual.stream().map(Located::value).anyMatch(value::equals);
    }

    /** What is said to be for staff, and renters are sent to it, procedures tell. */
    private static <T extends Thing> Relation<?, ?> access(Shape<T> shape, Key<Access> key) {
        return note(
                "access-unusual-for-its-role",
                usual(shape, key, Role.ACCESS).given(Records::described),
                (access, usual) -> access == Access.STAFF || among(usual, access),
                "the access of {about} is {1}, which is another one on other coaches",
                "Look who may use it; if it is so, say under `accept` why.");
    }

    private static boolean forWhomItsNameSays(Item.For user, Item item) {
        Set<String> words = Subjects.naming(item);
        return switch (user) {
            case STAFF -> Collections.disjoint(words, OF_GUESTS);
            case EMERGENCY -> Collections.disjoint(words, OF_STAFF);
            default -> Collections.disjoint(words, OF_EMERGENCIES);
        };
    }

    private static Pairs<Compartment, Switch> baysOfEmergencies() {
        return records -> records.of(Switch.SHAPE)
                .filter(it -> it.facts().find(Switch.EMERGENCY).orElse(false))
                .flatMap(it -> records.coach().around(it).stream().map(bay -> Pairs.Pair.of(bay, bay.at(), it)));
    }

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
        if (make != Switch.Make.TOUCH_PANEL && TOUCHED.matcher(words).find()
                || make == Switch.Make.LATCHING_BUTTON
                        && STAYS_NOT.matcher(words).find()
                || namedAsAnother(make, words)) {
            return false;
        }
        return parts == null
                || parts.matcher(words).find()
                        && !(PRESSED.contains(make) && TURNED.matcher(words).find())
                || !ANY_PART.matcher(words).find() && (words.isEmpty() || !NAMED_AT_ONCE.contains(make));
    }

    /** Whether the words name the part of some other make, and not of this one. A tap may have the part of any. */
    private static boolean namedAsAnother(Switch.Make make, String words) {
        Pattern own = NAMES.get(make);
        return own != null
                && !own.matcher(words).find()
                && NAMES.entrySet().stream()
                        .anyMatch(other -> other.getKey() != Switch.Make.TAP
                                && other.getValue().matcher(words).find());
    }

    private static boolean reached(Thing thing, Key<Boolean> emergency, Coach coach) {
        return coach.unit().draft()
                || thing.facts().find(emergency).orElse(false)
                || coach.roles(thing)
                        .noneMatch(role -> role.facts().find(Role.EMERGENCY).orElse(false));
    }
}
