package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.error;
import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.model.Appliance;
import bayfolio.model.Bank;
import bayfolio.model.Coach;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Door;
import bayfolio.model.Gauge;
import bayfolio.model.Item;
import bayfolio.model.Side;
import bayfolio.model.Slide;
import bayfolio.model.Spot;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.model.Tray;
import bayfolio.source.Located;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Looks, plates and states that must agree: by them a renter knows one switch from another, and ON from OFF. */
final class LookRelations {
    /** Both looks may be alike where they say that they tell nothing, and where to look instead. */
    private static final Pattern SHOWS_NOTHING =
            Pattern.compile("\\bshows? (?:nothing|no state)\\b|\\bsprings? back\\b|\\blook at\\b");

    private static final Set<String> STATES = Set.of(
            "off", "open", "close", "closed", "shut", "push", "pull", "press", "test", "reset", "start", "stop",
            "auto");

    /** As on the doors of many coaches: L4, R1. */
    private static final Pattern NUMBER = Pattern.compile("\\b[A-Z][0-9]{1,2}\\b");

    /** Things of one bag share its few words; so many are written for one thing. */
    private static final int WORDS_OF_ITS_OWN = 8;

    /** Spots that take one thing, or the things of one use. */
    private static final Set<String> FOR_ONE =
            Subjects.words("hook end edge reel clipped strapped ceiling hangs peg clip");

    private static final Set<String> FILLS = Subjects.words("fill filler port inlet neck cap");

    private static final int SOME_WORDS = 4;

    private static final int FEW_WORDS = 9;

    private static final Set<String> DESCRIBING = Subjects.words("wide narrow both");

    private static final Pattern NOTHING_AT_ALL = Pattern.compile("(?i)\\bthis one shows nothing\\b");

    /** At the beginning, where the words say in which room. */
    private static final Pattern NAMES_A_ROOM = Pattern.compile(
            "^(?:inside,? )?(?:(?:in|on|at|above|below|under|behind|inside|over) )?(?:the )?(?:cab|dash|galley|kitchen|bath|bedroom|hall|lounge"
                    + "|dinette|wardrobe|entry door)\\b(?! of)(?!,? behind the)",
            Pattern.CASE_INSENSITIVE);

    /** Loose things that a text has the reader take, in the singular. */
    private static final Set<String> TOOLS = Set.of(
            "lighter",
            "ladder",
            "spout",
            "funnel",
            "glove",
            "chock",
            "ramp",
            "flashlight",
            "extinguisher",
            "wrench",
            "hose",
            "adapter",
            "crank",
            "triangle",
            "vest",
            "fuse",
            "broom");

    /** Tells the few texts that name one sooner than by all their words. */
    private static final Pattern A_TOOL =
            Pattern.compile("\\b(?:" + String.join("|", TOOLS) + ")", Pattern.CASE_INSENSITIVE);

    private static final int SOME_ITEMS = 10;

    /** What has texts that tell a reader what to do; a bay or an item may name things that belong to it. */
    private static final Set<String> TELLING =
            Set.of("switch", "appliance", "awning", "slide", "bed", "note", "connection", "jacks", "step", "hire");

    private static final Pattern SAYS_ON = Pattern.compile("\\b(?:to|at|on|shows|says) (?:the )?(?:word )?on\\b");
    private static final Pattern SAYS_OFF = Pattern.compile("\\b(?:to|at|on|shows|says) (?:the )?(?:word )?off\\b");

    private static final String IN_ONE_PLACE = "{about} is said to be in the very place of {2}";
    private static final String TELL_APART =
            "Say what a hand or an eye tells them apart by: the left one, the upper one.";

    static final List<Relation<?, ?>> ALL = List.of(
            error(
                    "on-looks-like-off",
                    Pairs.within(Switch.SHAPE, Switch.ON_LOOK, Switch.OFF_LOOK),
                    (on, off) -> !same(on, off)
                            || SHOWS_NOTHING
                                    .matcher(on.toLowerCase(Locale.ROOT))
                                    .find(),
                    "{about} looks the same when it is on and when it is off",
                    "Say what the eye sees in each; where it shows nothing, say that, and what to look at instead."),
            error(
                    "on-says-off",
                    Pairs.within(Switch.SHAPE, Switch.ON_LOOK, Switch.OFF_LOOK),
                    (on, off) -> !(says(SAYS_OFF, on) && !says(SAYS_OFF, off)),
                    "{about} is on when it looks like this: {1}",
                    "Change the two looks about, if they were."),
            error(
                    "off-says-on",
                    Pairs.within(Switch.SHAPE, Switch.OFF_LOOK, Switch.ON_LOOK),
                    (off, on) -> !(says(SAYS_ON, off) && !says(SAYS_ON, on)),
                    "{about} is off when it looks like this: {1}",
                    "Change the two looks about, if they were."),
            error(
                    "look-of-the-twin",
                    twins(),
                    (one, other) -> !look(one, Switch.ON_LOOK).equals(look(other, Switch.OFF_LOOK))
                            || look(one, Switch.ON_LOOK).isEmpty()
                            || same(
                                    look(one, Switch.ON_LOOK).get(),
                                    look(one, Switch.OFF_LOOK).orElse("")),
                    "{about} is on when it looks as its twin {2} looks when it is off",
                    "Look at both again."),
            note(
                    "looks-of-two-things",
                    Pairs.within(Switch.SHAPE, Switch.ON_LOOK, Switch.OFF_LOOK),
                    (on, off) -> ofOneThing(on, off) && describedAlike(on, off),
                    "{about} shows ON and OFF by two different things: the two looks have no word in common",
                    "Tell both by one part, where there is one: the handle is up, the handle is down."),
            warning(
                    "two-plates-alike",
                    alike(Switch.SHAPE, Switch.PLATE),
                    (one, other) -> saysOnlyStates(one.facts().get(Switch.PLATE)) || toldApart(one, other),
                    "{about} has the same plate as {2}",
                    "Copied? If not, say under `where` which is which: the left one, the upper one."),
            warning(
                    "two-labels-alike",
                    alike(Connection.SHAPE, Connection.LABEL),
                    LookRelations::toldApart,
                    "{about} has the same label as {2}",
                    "Copied? If not, say under `where` which is which: the left one, the upper one."),
            warning(
                    "two-doors-labeled-alike",
                    alike(Compartment.SHAPE, Compartment.LABEL),
                    LookRelations::toldApart,
                    "{about} has the same label as {2}",
                    "Copied? A renter who is sent to one of them must see which it is."),
            warning(
                    "label-of-another-number",
                    Pairs.own(Compartment.SHAPE, Compartment.LABEL),
                    (label, bay) -> number(label).isEmpty()
                            || number(bay.name()).isEmpty()
                            || number(label).equals(number(bay.name())),
                    "{about} is numbered otherwise on its label, {1}, than in its name",
                    "Read the label again; the handbook calls a door by its number."),
            lookOfAnother(Switch.ON_LOOK, "on"),
            lookOfAnother(Switch.OFF_LOOK, "off"),
            warning(
                    "two-in-one-place",
                    inOnePlace(Switch.SHAPE, Gauge.SHAPE, Connection.SHAPE),
                    (one, other) -> false,
                    IN_ONE_PLACE,
                    TELL_APART),
            warning(
                    "two-in-one-place",
                    inOnePlace(Tank.SHAPE, Bank.SHAPE, Compartment.SHAPE, Door.SHAPE, Slide.SHAPE, Tray.SHAPE),
                    (one, other) -> false,
                    IN_ONE_PLACE,
                    "Copied? Two of them are never in one place; look again."),
            note("two-in-one-place", inOnePlace(Appliance.SHAPE), (one, other) -> false, IN_ONE_PLACE, TELL_APART),
            note(
                    "two-in-one-place",
                    inOnePlace(Item.SHAPE),
                    (one, other) -> inOneBag(one.spot().flatMap(Spot::where).orElseThrow()),
                    IN_ONE_PLACE,
                    TELL_APART),
            note(
                    "place-told-twice",
                    Pairs.<Thing>alike(
                            whereTold(),
                            it -> it.kind()
                                    + plain(it.spot().flatMap(Spot::where).orElseThrow())),
                    (one, other) ->
                            one.spot().flatMap(Spot::in).equals(other.spot().flatMap(Spot::in)),
                    "{about} is told to be, word for word, where {2} is, and that one is in another bay",
                    "Copied? Say where in its own bay it is."),
            warning(
                    "place-of-another-room",
                    inBays(),
                    (thing, bay) -> !NAMES_A_ROOM
                            .matcher(thing.spot().flatMap(Spot::where).orElseThrow())
                            .find(),
                    "{about} is in {2}, which is reached from outside, and said to be in a room",
                    "Copied, or moved? Say where in the bay it is."),
            note(
                    "place-in-another-bay",
                    namingOtherBays(),
                    (thing, bay) -> false,
                    "{about} is in another bay by its `in`, and by its `where` in {2}",
                    "Copied, or moved? Mend the one that is wrong."),
            note(
                    "thing-that-is-not-on-board",
                    mentionedTools(),
                    // What could not be read may be called so.
                    (tool, coach) -> !coach.unit().facts().whole()
                            || coach.unit()
                                    .things()
                                    .anyMatch(thing -> (thing instanceof Item || !tool.equals("fuse"))
                                            && Subjects.all(thing.id() + " " + thing.name())
                                                    .contains(tool)),
                    "{about} speaks of a {1}, and nothing on the coach is called so",
                    "List it under `items`, with its place; or mend the text."),
            note(
                    "fuel-not-confused-with",
                    Pairs.toEach(Connection.SHAPE, Connection.NOT_TO_CONFUSE, Connection.SHAPE)
                            .where((one, other) -> one.roles().contains("fuel-filler")),
                    (one, other) -> !Collections.disjoint(Subjects.naming(other), FILLS),
                    "{about} takes fuel and is not to be confused with {2}, into which nothing is poured",
                    "Name the filler that stands near it, or looks like it."),
            warning(
                    "look-alike-on-one-side-only",
                    lookAlikes(),
                    (one, other) -> other.facts().all(Connection.NOT_TO_CONFUSE).contains(one.id()),
                    "{about} is not to be confused with {2}, and that one does not say so",
                    "Say it on both: a renter may stand at either."));

    private LookRelations() {}

    /** Things in a bay, each with another bay inside which their `where` says they are: front wall of L5. */
    private static Pairs<Thing, Compartment> namingOtherBays() {
        return records -> records.coach()
                .unit()
                .things()
                .filter(thing -> thing.spot().flatMap(Spot::in).isPresent()
                        && thing.spot().flatMap(Spot::where).isPresent())
                .flatMap(thing -> records.of(Compartment.SHAPE)
                        .filter(bay -> !thing.spot().flatMap(Spot::in).equals(Optional.of(bay.id()))
                                && Labels.said(
                                        thing.spot().flatMap(Spot::where).orElseThrow(),
                                        "inside|wall of|floor of|ceiling of|corner of|in",
                                        bay))
                        .map(bay -> Pairs.Pair.of(
                                thing,
                                thing.facts()
                                        .at(thing.spot().orElseThrow().keys().where()),
                                bay)));
    }

    /** Loose things that texts of a coach send the reader to; each once. */
    private static Pairs<String, Coach> mentionedTools() {
        return records -> {
            Map<String, Pairs.Pair<String, Coach>> first = new LinkedHashMap<>();
            if (records.of(Item.SHAPE).count() < SOME_ITEMS) {
                return Stream.of(); // the list is yet to be made
            }
            FactVisitor.of(records.coach().unit(), (record, key, type, value) -> {
                if (Type.ofWords(type)
                        && TELLING.contains(record.facts().shape().name())
                        && A_TOOL.matcher(value.value().toString()).find()) {
                    Subjects.all(value.value().toString()).stream()
                            .filter(TOOLS::contains)
                            .forEach(tool -> first.putIfAbsent(
                                    tool,
                                    new Pairs.Pair<>(
                                            "a text of " + Records.naming(record),
                                            new Located<>(tool, value.at()),
                                            new Located<>(
                                                    records.coach(),
                                                    records.coach()
                                                            .unit()
                                                            .facts()
                                                            .at()))));
                }
            });
            return first.values().stream();
        };
    }

    private static boolean same(String one, String other) {
        return plain(one).equals(plain(other));
    }

    /** By hand and not by an expression, since all texts of things are asked for it. */
    private static String plain(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (Character.isLetterOrDigit(each)) {
                plain.append(Character.toLowerCase(each));
            } else if (!plain.isEmpty() && plain.charAt(plain.length() - 1) != ' ') {
                plain.append(' ');
            }
        }
        return plain.toString().stripTrailing();
    }

    private static boolean says(Pattern what, String look) {
        return what.matcher(look.toLowerCase(Locale.ROOT)).find();
    }

    /** Both name a part of the coach, or a sign on it, that the eye goes to. */
    private static boolean ofOneThing(String on, String off) {
        return SHOWS_NOTHING.matcher(on.toLowerCase(Locale.ROOT)).find()
                        && SHOWS_NOTHING.matcher(off.toLowerCase(Locale.ROOT)).find()
                || !Collections.disjoint(Subjects.of(on), Subjects.of(off))
                || Subjects.opposed(on, off);
    }

    /** Both tell of the same one by the same adjectives, and neither shows nothing where the other shows something. */
    private static boolean describedAlike(String on, String off) {
        List<String> one = Subjects.all(on);
        List<String> other = Subjects.all(off);
        return NOTHING_AT_ALL.matcher(on).find() == NOTHING_AT_ALL.matcher(off).find()
                && (one.size() > FEW_WORDS
                        || other.size() > FEW_WORDS
                        || DESCRIBING.stream().allMatch(word -> one.contains(word) == other.contains(word)));
    }

    private static <T extends Thing> Pairs<T, T> alike(Shape<T> shape, Key<String> key) {
        return Pairs.alike(shape, key, it -> plain(it.facts().get(key)));
    }

    @SafeVarargs
    private static Pairs<Thing, Thing> inOnePlace(Shape<? extends Thing>... shapes) {
        return records -> Stream.of(shapes)
                .flatMap(shape -> Pairs.<Thing>alike(shape, whereOf(shape), LookRelations::place)
                        .of(records));
    }

    private static List<Optional<String>> place(Thing thing) {
        Spot spot = thing.spot().orElseThrow();
        return List.of(spot.in(), spot.where().map(LookRelations::plain));
    }

    private static Relation<?, ?> lookOfAnother(Key<String> look, String state) {
        return note(
                "look-of-another",
                alike(Switch.SHAPE, look),
                LookRelations::madeForOneLook,
                "{about} is said to look, when it is " + state + ", word for word as {2} does",
                "Copied? If both look so, tell it in words of its own.");
    }

    /** Things of one bag, drawer or box share its few words; on one hook or at one end there is one. */
    private static boolean inOneBag(String where) {
        List<String> words = Subjects.all(where);
        return words.size() < WORDS_OF_ITS_OWN && Collections.disjoint(words, FOR_ONE);
    }

    /** What has words of some length for its place. */
    private static Pairs<Thing, Coach> whereTold() {
        return records -> records.coach()
                .unit()
                .things()
                .filter(thing -> !(thing instanceof Item)
                        && thing.spot()
                                .flatMap(Spot::where)
                                .filter(where -> Subjects.all(where).size() >= SOME_WORDS)
                                .isPresent())
                .map(thing -> new Pairs.Pair<>(
                        Records.naming(thing),
                        new Located<>(
                                thing, thing.facts().at(whereOf(thing.facts().shape()))),
                        new Located<>(records.coach(), thing.at())));
    }

    /** Those in a row look alike, and so do twins and what has one use. */
    private static boolean madeForOneLook(Switch one, Switch other) {
        return one.make() == other.make() && sameRoom(one, other)
                || !Collections.disjoint(one.roles(), other.roles())
                || Subjects.of(one.name()).equals(Subjects.of(other.name()))
                || SHOWS_NOTHING
                        .matcher(other.facts().find(Switch.ON_LOOK).orElse("").toLowerCase(Locale.ROOT))
                        .find();
    }

    /** What lies in a bay that is reached from outside, told at its words. */
    private static Pairs<Thing, Compartment> inBays() {
        return records -> records.coach()
                .unit()
                .things()
                .filter(thing -> thing.spot().flatMap(Spot::where).isPresent())
                .flatMap(thing -> records.coach().around(thing).stream()
                        .filter(bay -> bay.spot()
                                .flatMap(Spot::side)
                                .filter(side -> side != Side.INSIDE)
                                .isPresent())
                        .map(bay -> Pairs.Pair.of(
                                thing, thing.facts().at(whereOf(thing.facts().shape())), bay)));
    }

    /** ON, OFF, OPEN and the like stand on many plates, and tell nobody what the switch is for. */
    private static boolean saysOnlyStates(String plate) {
        return Stream.of(plain(plate).split(" ")).allMatch(word -> word.length() < 3 || STATES.contains(word));
    }

    /**
     * Two of one kind for one use, such as two cylinder valves or the left and the right latch, have one plate; then
     * words tell which is which.
     */
    private static boolean toldApart(Thing one, Thing other) {
        boolean oneUse = !Collections.disjoint(one.roles(), other.roles())
                || Subjects.of(one.name()).equals(Subjects.of(other.name()));
        return oneUse && (!sameRoom(one, other) || tellsApart(one, other));
    }

    private static Key<?> whereOf(Shape<?> shape) {
        return shape.key("where").orElseThrow();
    }

    private static Optional<String> number(String text) {
        Matcher number = NUMBER.matcher(text);
        return number.find() ? Optional.of(number.group()) : Optional.empty();
    }

    private static Optional<String> look(Switch it, Key<String> key) {
        return it.facts().find(key).map(LookRelations::plain);
    }

    private static Pairs<Switch, Switch> twins() {
        return records -> records.of(Switch.SHAPE)
                .flatMap(one -> one.facts().all(Switch.TWINS).stream()
                        .flatMap(id -> records.named(Switch.SHAPE, id).stream())
                        .map(other -> Pairs.Pair.of(one, one.facts().at(Switch.ON_LOOK), other)));
    }

    private static boolean sameRoom(Thing one, Thing other) {
        Optional<Spot> here = one.spot();
        Optional<Spot> there = other.spot();
        return here.flatMap(Spot::in).equals(there.flatMap(Spot::in))
                && here.flatMap(Spot::side).equals(there.flatMap(Spot::side));
    }

    private static boolean tellsApart(Thing one, Thing other) {
        Optional<String> here = one.spot().flatMap(Spot::where).map(LookRelations::plain);
        Optional<String> there = other.spot().flatMap(Spot::where).map(LookRelations::plain);
        return here.isPresent() && there.isPresent() && !here.equals(there);
    }

    private static Pairs<Connection, Connection> lookAlikes() {
        // A fuel filler that looks like a water fill is an error of its own, `unmarked-fuel-fill`.
        return records -> records.of(Connection.SHAPE)
                .filter(one -> !one.roles().contains("fuel-filler"))
                .flatMap(one -> one.facts().find(Connection.NOT_TO_CONFUSE).stream()
                        .flatMap(List::stream)
                        .flatMap(id -> records.named(Connection.SHAPE, id.value()).stream()
                                .filter(other -> !other.roles().contains("fuel-filler"))
                                .map(other -> Pairs.Pair.of(one, id.at(), other))));
    }
}
