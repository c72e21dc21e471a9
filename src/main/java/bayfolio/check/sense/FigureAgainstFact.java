package bayfolio.check.sense;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.fact.Walkthrough;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Meters;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Quantity;
import bayfolio.measure.Scale;
import bayfolio.measure.Seconds;
import bayfolio.model.Circuit;
import bayfolio.model.Compartment;
import bayfolio.model.Item;
import bayfolio.model.Size;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a figure in a text of the description that is a fact of the same record, or of the coach, and differs from it.
 * Which fact a figure speaks of is told by the words beside it; a text with several agrees if one of them does. A switch
 * that is held twice is not judged.
 */
public final class FigureAgainstFact implements Rule {
    /** Half of the last digit of what people round, such as 7 ft for 2.13 m. */
    private static final double ROUNDED = 0.03;

    private static final String LENGTH = "(\\d+(?:\\.\\d+)? ?(?:ft|in|mm|cm|m)\\b(?: \\d+(?:\\.\\d+)? ?in\\b)?)";

    /** As written on handles of breakers; other numbers may be their place in the row. */
    private static final Pattern RATING = words("\\p{L} ?\\b((?:10|13|15|16|20|25|30|32|40|50) ?A?)$");

    /**
     * A text, and the figure that it repeats.
     *
     * @param figure with the figure as its first group
     */
    private record Line<R extends Described, Q extends Quantity>(
            Shape<R> shape, Key<String> text, Pattern figure, Scale<Q> scale, Key<Q> fact) {
        Stream<Finding> check(Records records) {
            return records.of(shape)
                    .flatMap(record -> record.facts().located(text).stream()
                            .flatMap(words -> record.facts().located(fact).stream()
                                    .flatMap(stated -> differing(words, figure, scale, List.of(stated.value())).stream()
                                            .map(it -> finding(
                                                    words,
                                                    Records.naming(record),
                                                    it,
                                                    "`" + fact.name() + "` is " + stated.written())))));
        }
    }

    private static final List<Line<?, ?>> LINES = List.of(
            new Line<>(
                    Compartment.SHAPE,
                    Compartment.LABEL,
                    words("\\bmax(?:imum|\\.)?:? (\\d[\\d,]* ?(?:lb|kg))\\b"),
                    Kilograms.SCALE,
                    Compartment.LOAD_LIMIT),
            new Line<>(
                    Compartment.SHAPE,
                    Compartment.NEVER_STORE,
                    words("\\b(?:over|above|than) (\\d[\\d,]* ?(?:lb|kg))\\b"),
                    Kilograms.SCALE,
                    Compartment.LOAD_LIMIT),
            new Line<>(
                    Switch.SHAPE,
                    Switch.WORK,
                    words(
                            "^(?!.*\\bhold\\b.*\\bhold\\b).*?\\bhold\\b[^.;]{0,40}?(\\d+ (?:s|min))(?:ec|econds?|utes?)?\\b"),
                    Seconds.SCALE,
                    Switch.HOLD),
            new Line<>(
                    Item.SHAPE,
                    Item.NOTE,
                    words("(?<![\\d.] ?)" + LENGTH + " (?:long|each)\\b"),
                    Meters.SCALE,
                    Item.LENGTH));

    /** What any text says of the whole coach. */
    private record Whole(Pattern figure, Key<Meters> fact) {}

    private static final List<Whole> OF_THE_COACH = List.of(
            new Whole(said("high|tall"), Size.HEIGHT),
            new Whole(words("\\b(?:overall|clearance|vehicle|coach) height(?: is|:)? " + LENGTH), Size.HEIGHT),
            new Whole(said("long"), Size.LENGTH),
            new Whole(said("wide over the mirrors"), Size.WIDTH_MIRRORS));

    private static Pattern said(String how) {
        return words("\\b(?:coach|motorhome|motor home|vehicle|camper) (?:is|stands|measures) (?:about )?" + LENGTH
                + " (?:" + how + ")\\b");
    }

    private static Pattern words(String pattern) {
        return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
    }

    @Override
    public Stream<Finding> check(Case coach) {
        Records records = new Records(coach.coach());
        return Stream.of(
                        LINES.stream().flatMap(line -> line.check(records)),
                        plates(records),
                        coach.unit().facts().find(Unit.SIZE).stream().flatMap(size -> whole(coach.unit(), size)))
                .flatMap(findings -> findings);
    }

    /** The handle of a breaker against the circuits behind it. */
    private static Stream<Finding> plates(Records records) {
        return records.of(Switch.SHAPE)
                .filter(handle -> handle.facts().find(Switch.MAKE).equals(Optional.of(Switch.Make.BREAKER_HANDLE)))
                .flatMap(handle -> handle.facts().located(Switch.PLATE).stream().flatMap(plate -> {
                    List<Located<Amps>> breakers = records.of(Circuit.SHAPE)
                            .filter(it -> it.facts().find(Circuit.SWITCH).equals(Optional.of(handle.id())))
                            .flatMap(it -> it.facts().located(Circuit.BREAKER).stream())
                            .toList();
                    return differing(
                                    plate,
                                    RATING,
                                    Amps.SCALE,
                                    breakers.stream().map(Located::value).toList())
                            .stream()
                            .map(it -> finding(
                                    plate,
                                    Records.naming(handle),
                                    it,
                                    "`breaker` of its circuit is "
                                            + breakers.get(0).written()));
                }));
    }

    private static Stream<Finding> whole(Unit unit, Size size) {
        Stream.Builder<Finding> findings = Stream.builder();
        Walkthrough.of(unit, (record, key, type, value) -> {
            // Most texts have no figure, and are not searched for one.
            if (type == Type.TEXT && value.value().toString().chars().anyMatch(Character::isDigit)) {
                Located<String> words = new Located<>(value.value().toString(), value.at());
                OF_THE_COACH.forEach(whole -> size.facts().located(whole.fact()).stream()
                        .flatMap(stated ->
                                differing(words, whole.figure(), Meters.SCALE, List.of(stated.value())).stream()
                                        .map(it -> finding(
                                                words,
                                                Records.naming(record),
                                                it,
                                                "`" + whole.fact().name() + "` of `size` is " + stated.written())))
                        .forEach(findings));
            }
        });
        return findings.build();
    }

    /** The first figure of a text, where there are some and none is one of those stated. */
    private static <Q extends Quantity> Optional<String> differing(
            Located<String> words, Pattern figure, Scale<Q> scale, List<Q> stated) {
        List<String> figures =
                figure.matcher(words.value()).results().map(it -> it.group(1)).toList();
        return stated.isEmpty() || figures.stream().anyMatch(it -> agrees(it, scale, stated))
                ? Optional.empty()
                : figures.stream().findFirst();
    }

    private static boolean agrees(String figure, Scale<?> scale, List<? extends Quantity> stated) {
        String small = figure.toLowerCase(Locale.ROOT);
        String written = scale == Amps.SCALE ? small.replaceFirst(" ?a?$", " A") : small;
        try {
            double said = scale.parse(written).value();
            return stated.stream().anyMatch(it -> Math.abs(it.value() - said) <= ROUNDED * it.value());
        } catch (NotAQuantityException nobodyKnows) {
            return true;
        }
    }

    private static Finding finding(Located<String> words, String about, String figure, String stated) {
        return Finding.warning(
                        "figure-against-fact",
                        words.at(),
                        "a text of " + about + " says `" + figure + "`, and " + stated)
                .mend("Measure it or read the plate, and mend the one that is wrong.");
    }
}
