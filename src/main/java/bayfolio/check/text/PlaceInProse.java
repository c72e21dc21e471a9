package bayfolio.check.text;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Note;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Passage;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags the place of a thing, word for word as its {@code where} says it, typed into a procedure or
 * note: after the thing has moved it is still there.
 */
public final class PlaceInProse implements Rule {
    private static final int FEWEST_WORDS = 3;

    private record Where(Thing thing, String words, Pattern pattern) {}

    @Override
    public Stream<Finding> check(Case coach) {
        List<Where> places =
                coach.coach().things().flatMap(thing -> where(thing).stream()).toList();
        Stream<Finding> procedures = coach.library().of(coach.unit()).stream()
                .flatMap(script -> Passage.of(script).stream())
                .flatMap(passage -> places.stream().flatMap(where -> check(passage, where)));
        Stream<Finding> notes = coach.unit().facts().all(Unit.NOTES).stream()
                .flatMap(note -> note.facts().located(Note.TEXT).stream())
                .flatMap(text -> places.stream().flatMap(where -> check(text, where)));
        return Stream.concat(procedures, notes);
    }

    private static Optional<Where> where(Thing thing) {
        return thing.spot()
                .flatMap(spot -> spot.where())
                .map(where -> where.strip().replaceFirst("[.;,]+$", ""))
                .filter(where -> where.split("\\s+").length >= FEWEST_WORDS)
                .map(where -> new Where(
                        thing,
                        where,
                        Pattern.compile(
                                "(?<!\\w)" + Pattern.quote(where).replaceAll("\\s+", "\\\\E\\\\s+\\\\Q") + "(?!\\w)",
                                Pattern.CASE_INSENSITIVE)));
    }

    private static Stream<Finding> check(Passage passage, Where where) {
        Matcher typed = where.pattern().matcher(passage.own());
        return typed.find() ? Stream.of(finding(passage.at(typed.start(), typed.end()), where)) : Stream.of();
    }

    private static Stream<Finding> check(Located<String> note, Where where) {
        return where.pattern().matcher(note.value()).find() ? Stream.of(finding(note.at(), where)) : Stream.of();
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
