package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.fact.Key;
import bayfolio.model.Appliance;
import bayfolio.model.Coach;
import bayfolio.model.Note;
import bayfolio.model.Role;
import bayfolio.model.States;
import bayfolio.model.Switch;
import bayfolio.source.Located;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** States of switches that must agree with their use, with their own words and with each other. */
final class StateRelations {
    /** Each state of a switch, and the words by which it begins on any coach, as the list of roles has them. */
    private static final List<Kept> KEPT = List.of(
            new Kept(
                    Switch.AT_PICKUP,
                    Role.AT_PICKUP,
                    "when a renter takes over",
                    "pickup|you (?:get|take)",
                    "at pickup|when you (?:get it|take it over)"),
            new Kept(
                    Switch.STORED,
                    Role.STORED,
                    "while the coach stands unused",
                    "stor",
                    "in storage|for storage|while (?:it is )?stored"),
            new Kept(
                    Switch.RETURNED,
                    Role.RETURNED,
                    "when a renter gives it back",
                    "return| back",
                    "(?:at|on|for the) return|(?:when|before) you (?:give|hand|bring) (?:it|the coach) back"),
            new Kept(
                    Switch.DRIVING,
                    Role.DRIVING,
                    "on the road",
                    "road|driv",
                    "(?:on|for) the road|before (?:every|each|the|a) drive|before (?:you )?driv(?:e|ing)|while (?:you )?driv(?:e|ing)"));

    /** The times of a hire, between which nothing but the renter changes a state. */
    private static final List<Kept> HIRE =
            KEPT.stream().filter(kept -> kept.state() != Switch.STORED).toList();

    private static final String POSITION = "(open|shut|closed|on|off)";

    /** Texts of a switch in which a state is its own; what wrong use does, and what else must be on, is said elsewhere. */
    private static final List<Key<String>> OWN_WORDS = List.of(
            Switch.PLATE,
            Switch.WORK,
            Switch.WORK_OFF,
            Switch.ON_LOOK,
            Switch.OFF_LOOK,
            Switch.LAMP,
            Switch.STOPS,
            Switch.TWIN_RULE,
            Switch.ACCESS_REASON);

    private static final Set<Switch.Make> VALVES = Set.of(
            Switch.Make.BALL_VALVE,
            Switch.Make.SLIDE_VALVE,
            Switch.Make.TAP,
            Switch.Make.HANDWHEEL,
            Switch.Make.PULL,
            Switch.Make.LEVER,
            Switch.Make.CRANK,
            Switch.Make.PEDAL);

    private static final Set<Switch.Make> PROTECTING =
            Set.of(Switch.Make.BREAKER_HANDLE, Switch.Make.FUSES, Switch.Make.ROTARY_DISCONNECT);

    private static final Set<String> ON_OR_OFF = Set.of("on", "off");

    private static final Set<String> OPEN_OR_SHUT = Set.of("open", "shut", "closed");

    /** Words that begin a state of whatever make. */
    private static final Set<String> ANY_MAKE = Set.of("as", "no", "not", "all", "both", "left", "none", "nothing");

    private static final Pattern NEVER = Pattern.compile("(?i)^(?:off(?! by itself)|never|shut|lid (?:shut|down))\\b");

    private static final String OR = " or ";

    private static final Pattern CLAUSE_END = Pattern.compile("[,;.]");

    private static final Pattern UPPER = Pattern.compile("\\b(?:ON|OFF)\\b");

    private static final Pattern ON_CONDITION =
            Pattern.compile("(?i)\\b(?:or|if|unless|when|only|until|except|hours?|matter|like)\\b");

    /** Where the words stand that one can read on it or see of it. */
    private static final List<Key<String>> SEEN = List.of(Switch.PLATE, Switch.ON_LOOK, Switch.OFF_LOOK);

    private static final List<Key<String>> WORKED =
            List.of(Switch.PLATE, Switch.WORK, Switch.WORK_OFF, Switch.ON_LOOK, Switch.OFF_LOOK, Switch.LAMP);

    /** So many others make a row of which one may be the odd one. */
    private static final int ROW = 3;

    /**
     * @param cue is in every text that speaks of that time
     * @param said a pattern with the state as one of its groups
     */
    private record Kept(Key<String> state, Key<List<Located<String>>> byRole, String when, Pattern cue, Pattern said) {
        Kept(Key<String> state, Key<List<Located<String>>> byRole, String when, String cue, String asPeopleSay) {
            this(
                    state,
                    byRole,
                    when,
                    Pattern.compile(cue, Pattern.CASE_INSENSITIVE),
                    Pattern.compile("(?i)(?<!\\b(?:never|not|left|if|when)(?: \\w{1,9})? )\\b" + POSITION
                            + ",?(?: \\w+){0,2}? (?:"
                            + asPeopleSay + ")\\b|\\b(?:" + asPeopleSay
                            + "),? (?:(?:it|keep|leave|must|be|is|stays|always) ){0,3}" + POSITION + "\\b"));
        }
    }

    static final List<Relation<?, ?>> ALL = Stream.<Stream<? extends Relation<?, ?>>>of(
                    KEPT.stream().map(StateRelations::usual),
                    KEPT.stream().map(StateRelations::ofItsOwnWords),
                    KEPT.stream().map(StateRelations::asItsTextsSay),
                    KEPT.stream().map(StateRelations::asItsRow),
                    HIRE.stream().map(kept -> asAtOtherTimes(kept, HIRE)),
                    Stream.of(
                            note(
                                    "on-only-while-stored",
                                    Pairs.own(Switch.SHAPE, Switch.STORED)
                                            .where((words, it) -> it.roles().isEmpty()),
                                    (words, it) -> !States.open(words) || !shutAtAllOtherTimes(it),
                                    "{about} is {1} while the coach stands unused, and off at all other times",
                                    "Look again; if it is so, say under `accept` why."),
                            note(
                                    "drains-stand-otherwise",
                                    Pairs.twoOf(Switch.SHAPE, Switch.STORED)
                                            .where((one, other) -> drains(one) && drains(other)),
                                    (one, other) -> !States.opposed(
                                            one.facts().get(Switch.STORED),
                                            other.facts().get(Switch.STORED)),
                                    "while the coach stands unused {about} is left one way, and {2} the other",
                                    "Tanks and pipes are drained together; look again."),
                            note(
                                    "given-back-otherwise",
                                    Pairs.onCoach(Switch.SHAPE, Switch.RETURNED),
                                    StateRelations::asHandedOver,
                                    "{about} is handed over in one state, and is to be given back in the other",
                                    "Look again; if it is so, a renter will ask why."),
                            warning(
                                    "on-the-road-against-appliance",
                                    controls(),
                                    (it, appliance) -> !States.open(it.facts().get(Switch.DRIVING))
                                            || !NEVER.matcher(appliance.facts().get(Appliance.WHILE_DRIVING))
                                                    .find(),
                                    "{about} is on on the road, and {2}, which it works, is said to be off there",
                                    "Look at both again.")))
            .<Relation<?, ?>>flatMap(it -> it)
            .toList();

    private StateRelations() {}

    private static Relation<?, ?> usual(Kept kept) {
        return warning(
                "state-unusual-for-its-role",
                records -> records.of(Switch.SHAPE).flatMap(it -> usual(it, kept, records.coach())),
                StateRelations::asUsual,
                "{about} is {1} " + kept.when() + ", where such a switch is {2}",
                "Look again; if it is so, say under `accept` why.");
    }

    private static boolean asUsual(String state, String usual) {
        return Stream.of(usual.split(OR)).anyMatch(words -> begins(state, words)) && !turnsOver(state, usual);
    }

    /** Its state, and the words of the first of its roles that has any. */
    private static Stream<Pairs.Pair<String, String>> usual(Switch it, Kept kept, Coach coach) {
        return it.facts().located(kept.state()).stream()
                .flatMap(state -> roles(it, coach)
                        .filter(role -> role.facts().has(kept.byRole()))
                        .limit(1)
                        .map(role -> new Pairs.Pair<>(
                                Records.naming(it),
                                state,
                                new Located<>(
                                        String.join(OR, role.facts().all(kept.byRole())),
                                        role.facts().at(kept.byRole())))));
    }

    private static Relation<?, ?> ofItsOwnWords(Kept kept) {
        return note(
                "state-in-strange-words",
                Pairs.own(Switch.SHAPE, kept.state()),
                (state, it) -> inItsWords(first(state), it, kept),
                "the state of {about} " + kept.when() + " is told in words that nothing else of it has: {1}",
                "Copied? If not, say in `work` or in its looks how that state is reached or seen.");
    }

    private static Relation<?, ?> asItsTextsSay(Kept kept) {
        return warning(
                "state-against-words",
                records -> records.of(Switch.SHAPE)
                        .flatMap(it -> it.facts().located(kept.state()).stream()
                                .flatMap(state -> texts(it, records)
                                        .flatMap(text -> said(text, kept))
                                        .map(said -> new Pairs.Pair<>(Records.naming(it), state, said)))),
                (state, said) -> !States.opposed(state, said),
                "{about} is {1} " + kept.when() + ", and a text says {2} of it",
                "Look again, and mend the one that is wrong.");
    }

    /** Of a row of four or more alike, one that alone is otherwise. */
    private static Relation<?, ?> asItsRow(Kept kept) {
        return note(
                "otherwise-than-its-row",
                records -> records.of(Switch.SHAPE)
                        .filter(it ->
                                it.facts().has(kept.state()) && !it.roles().isEmpty())
                        .flatMap(it -> Stream.of(row(it, kept, records))
                                .filter(row -> row.size() >= ROW)
                                .map(row -> new Pairs.Pair<>(
                                        Records.naming(it),
                                        it.facts().located(kept.state()).orElseThrow(),
                                        new Located<>(row, it.at())))),
                (state, row) -> !row.stream().allMatch(other -> States.opposed(state, other)),
                "{about} is {1} " + kept.when() + ", and all others of its role and place are otherwise",
                "Look again; if it is so, say under `accept` why.");
    }

    /** The states of all others of its roles, in one place with it. */
    private static List<String> row(Switch it, Kept kept, Records records) {
        return records.beside(it)
                .filter(other -> other.roles().equals(it.roles()))
                .flatMap(other -> other.facts().find(kept.state()).stream())
                .toList();
    }

    /**
     * A state at one of the three times of a hire that differs from both others: a tap that is open only at return. What
     * is off or shut only on the road is usual; whoever tells more than one word of it, has thought of it.
     */
    private static Relation<?, ?> asAtOtherTimes(Kept kept, List<Kept> times) {
        return note(
                "otherwise-than-at-other-times",
                records -> records.of(Switch.SHAPE)
                        .filter(it -> usual(it, kept, records.coach())
                                .allMatch(pair -> asUsual(
                                        pair.first().value(), pair.second().value())))
                        .flatMap(it -> Pairs.ownOf(it, kept.state())),
                (state, it) -> {
                    List<String> others = times.stream()
                            .filter(time -> time != kept)
                            .flatMap(time -> it.facts().find(time.state()).stream())
                            .toList();
                    return others.size() < times.size() - 1
                            || !others.stream().allMatch(other -> States.opposed(state, other))
                            || state.strip().indexOf(' ') >= 0
                            || others.stream()
                                    .anyMatch(other -> ON_CONDITION
                                            .matcher(CLAUSE_END.split(other, 2)[0])
                                            .find())
                            || kept.state() == Switch.DRIVING && States.shut(state);
                },
                "{about} is {1} " + kept.when() + ", and the other way before and after",
                "Look again; if it is so, say under `accept` why.");
    }

    private static List<String> atOtherTimes(Switch it, Key<String> state) {
        return KEPT.stream()
                .map(Kept::state)
                .filter(key -> key != state)
                .flatMap(key -> it.facts().find(key).stream())
                .toList();
    }

    private static boolean shutAtAllOtherTimes(Switch it) {
        List<String> others = atOtherTimes(it, Switch.STORED);
        return !others.isEmpty() && others.stream().allMatch(States::shut);
    }

    private static boolean drains(Switch it) {
        return it.holdsOneOf(Set.of("fresh-drain-valve", "low-point-drain"));
    }

    private static Stream<Located<String>> texts(Switch it, Records records) {
        return Stream.concat(
                OWN_WORDS.stream().flatMap(key -> it.facts().located(key).stream()),
                records.of(Note.SHAPE)
                        .filter(note -> note.facts().find(Note.ABOUT).equals(Optional.of(it.id())))
                        .flatMap(note -> note.facts().located(Note.TEXT).stream()));
    }

    private static Stream<Located<String>> said(Located<String> text, Kept kept) {
        // Few texts speak of such a time at all, which is told sooner so than by the pattern.
        return !kept.cue().matcher(text.value()).find()
                ? Stream.of()
                : kept.said()
                        .matcher(text.value())
                        .results()
                        .map(it -> it.group(1) == null ? it.group(2) : it.group(1))
                        .map(state -> new Located<>(state, text.at()));
    }

    /** What is worked by a switch of its own; breakers and battery switches stay on for what else they feed. */
    private static Pairs<Switch, Appliance> controls() {
        return records -> records.of(Appliance.SHAPE)
                .filter(appliance -> appliance.facts().has(Appliance.WHILE_DRIVING))
                .flatMap(appliance -> appliance.facts().all(Appliance.CONTROLS).stream()
                        .flatMap(id -> records.named(Switch.SHAPE, id).stream())
                        .filter(it -> it.facts().has(Switch.DRIVING) && !PROTECTING.contains(it.make()))
                        .map(it -> Pairs.Pair.of(it, it.facts().at(Switch.DRIVING), appliance)));
    }

    /** Where its role says how it is left, that is asked instead. */
    private static boolean asHandedOver(Switch it, Coach coach) {
        String returned = it.facts().get(Switch.RETURNED);
        String pickup = it.facts().find(Switch.AT_PICKUP).orElse(returned);
        return roles(it, coach).anyMatch(role -> role.facts().has(Role.RETURNED))
                || !States.opposed(returned, pickup)
                || States.opposed(returned, it.facts().find(Switch.DRIVING).orElse(returned));
    }

    /** Those of a switch, in the order of the list. */
    private static Stream<Role> roles(Switch it, Coach coach) {
        return coach.roles(it).sorted(Comparator.comparingInt(coach.fleet().roles()::indexOf));
    }

    private static boolean inItsWords(String word, Switch it, Kept kept) {
        Set<String> usual = VALVES.contains(it.make()) ? OPEN_OR_SHUT : ON_OR_OFF;
        if (ANY_MAKE.contains(word)) {
            return true;
        }
        return usual.contains(word)
                ? !alone(it, kept) || words(it, SEEN.stream()).contains(word)
                : words(it, Stream.concat(WORKED.stream(), others(kept))).contains(word);
    }

    /** Whether its other three states are all told in words of their own, without on or off: room in, bed up, 0. */
    private static boolean alone(Switch it, Kept kept) {
        List<String> others = atOtherTimes(it, kept.state());
        return others.size() == KEPT.size() - 1
                && others.stream()
                        .noneMatch(other -> States.open(other)
                                || States.shut(other)
                                || UPPER.matcher(other).find());
    }

    private static Stream<Key<String>> others(Kept kept) {
        return KEPT.stream().map(Kept::state).filter(state -> state != kept.state());
    }

    private static Set<String> words(Switch it, Stream<Key<String>> texts) {
        return texts.flatMap(key -> it.facts().find(key).stream())
                .flatMap(text -> Subjects.all(text).stream())
                .collect(Collectors.toSet());
    }

    /** Whether a state that is always on or open goes on to tell the other: on in hours, off after hours. */
    private static boolean turnsOver(String state, String usual) {
        List<String> words = List.of(usual.split(OR));
        return words.stream().anyMatch(States::open)
                && words.stream().noneMatch(States::shut)
                && Subjects.all(state).stream().skip(1).anyMatch(States::shut);
    }

    private static boolean begins(String state, String words) {
        String plain = state.strip().toLowerCase(Locale.ROOT);
        return plain.equals(words)
                || plain.startsWith(words) && !Character.isLetterOrDigit(plain.charAt(words.length()));
    }

    private static String first(String state) {
        return Subjects.all(state).stream().findFirst().orElse("");
    }
}
