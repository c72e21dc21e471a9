package bayfolio.check.text;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Note;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Library;
import bayfolio.procedure.SourceBlock;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags the place of a thing, word for word as its {@code where} says it, typed into a procedure or
 * note: after the thing has moved it is still there.
 */
public final class PlaceInProse implements Rule {
    private static final int FEWEST_WORDS = 3;
    private static final Pattern STOPS_AT_END = Pattern.compile("[.;,]+$");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    /**
     * @param flat the words in small letters on one line: most texts do not hold them, which is told sooner so than by
     *     the pattern
     * @param run of its first three words, as {@link Library#runs} has them
     * @param at where it is stated
     */
    private record Where(Thing thing, String words, String flat, int run, Place at) {
        /** Made when asked for, as most places are typed nowhere. */
        Pattern pattern() {
            return Pattern.compile(
                    "(?<!\\w)" + BLANKS.matcher(Pattern.quote(words)).replaceAll("\\\\E\\\\s+\\\\Q") + "(?!\\w)",
                    Pattern.CASE_INSENSITIVE);
        }
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Where> places =
                coach.coach().things().flatMap(thing -> where(thing).stream()).toList();
        Stream<Finding> procedures = places.stream().flatMap(where -> check(where, coach));
        Stream<Finding> notes = coach.unit().facts().all(Unit.NOTES).stream()
                .flatMap(note -> note.facts().located(Note.TEXT).stream())
                .flatMap(text -> check(text, places));
        return Stream.concat(procedures, notes);
    }

    /**
     * A text of the coach's own is told where it stands. Shared ones may mean something else by the same words; then the
     * coach says its place in others, so that is told, once for all of them.
     */
    private static Stream<Finding> check(Where where, CheckedCoach coach) {
        List<Place> shared = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Library.Typed typed : coach.library().holding(where.run())) {
            if (coach.library().applies(typed.script(), coach.unit())) {
                typed(typed.passage(), where).ifPresent(at -> {
                    if (typed.script().whose().shared()) {
                        shared.add(at);
                    } else {
                        findings.add(finding(at, where));
                    }
                });
            }
        }
        if (!shared.isEmpty()) {
            findings.add(shared(shared, where));
        }
        return findings.stream();
    }

    private static Optional<Where> where(Thing thing) {
        Optional<Spot> spot = thing.spot();
        return spot.flatMap(Spot::where)
                .map(where -> STOPS_AT_END.matcher(where.strip()).replaceFirst(""))
                .filter(where -> BLANKS.splitAsStream(where).limit(FEWEST_WORDS).count() == FEWEST_WORDS)
                .map(where -> new Where(
                        thing,
                        where,
                        flat(where),
                        Library.runs(where).findFirst().orElse(0),
                        thing.facts().at(spot.orElseThrow().keys().where())));
    }

    private static String flat(String text) {
        return BLANKS.matcher(text).replaceAll(" ").toLowerCase(Locale.ROOT);
    }

    private static Optional<Place> typed(SourceBlock passage, Where where) {
        return where.pattern()
                .matcher(passage.own())
                .results()
                .findFirst()
                .map(typed -> passage.at(typed.start(), typed.end()));
    }

    private static Finding shared(List<Place> typed, Where where) {
        return Finding.warning(
                        "place-in-prose",
                        where.at(),
                        "`" + where.words() + "` is where " + where.thing().kind() + " `"
                                + where.thing().id() + "` is, and is typed in shared procedures at "
                                + typed.stream().map(Place::toString).collect(Collectors.joining(", ")))
                .mend("Refer to the thing there; or say its place here in other words, if they mean another.");
    }

    private static Stream<Finding> check(Located<String> note, List<Where> places) {
        String flat = flat(note.value());
        return places.stream()
                .filter(where -> flat.contains(where.flat()))
                .filter(where -> where.pattern().matcher(note.value()).find())
                .map(where -> finding(note.at(), where));
    }

    private static Finding finding(Place at, Where where) {
        return Finding.warning(
                        "place-in-prose",
                        at,
                        "`" + where.words() + "` is typed here; it is where "
                                + where.thing().kind() + " `" + where.thing().id() + "` is")
                .mend("Refer to the thing instead; the handbook then says where it is.");
    }
}
