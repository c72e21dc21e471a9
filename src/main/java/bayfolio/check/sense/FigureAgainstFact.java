package bayfolio.check.sense;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.Meters;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Quantity;
import bayfolio.measure.Scale;
import bayfolio.measure.Seconds;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.model.Adapter;
import bayfolio.model.Appliance;
import bayfolio.model.Circuit;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Item;
import bayfolio.model.Load;
import bayfolio.model.Size;
import bayfolio.model.Supply;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a figure in a text of the description that is a fact of the same record, of another one or of the coach, and
 * differs from it. Which fact a figure speaks of is told by the words beside it. A switch that is held twice is not
 * judged.
 */
public final class FigureAgainstFact implements Rule {
    /** Half of the last digit of what people round, such as 7 ft for 2.13 m. */
    private static final double ROUNDED = 0.03;

    private static final String LENGTH = "(\\d+(?:\\.\\d+)? ?(?:ft|in|mm|cm|m)\\b(?: \\d+(?:\\.\\d+)? ?in\\b)?)";

    /** Each at the place of its figure. */
    static final List<String> NUMBERS = List.of(
            "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private static final String TIME = "((?:\\d+|" + String.join("|", NUMBERS) + ") (?:s|min)(?:ec|econds?|utes?)?)\\b";

    /** The same of what is held once; with two it is not said which. */
    private static final Pattern HELD = words("^(?!.*\\bhold\\b.*\\bhold\\b).*?\\bhold\\b[^.;]{0,40}?" + TIME);

    /** As written on handles of breakers; other numbers may be their place in the row. */
    private static final Pattern RATING = words("[\\p{L}·-] ?\\b((?:6|10|13|15|16|20|25|30|32|40|50) ?A?)$|^(\\d+ A)$");

    /** Volts and watts, and the liter, which is written large too. */
    private static final Pattern WRITTEN_LARGE = Pattern.compile("\\b[lvw]$");

    private static final Pattern AMPS = words("\\b(\\d+ A)\\b");
    private static final Pattern VOLTS = words("\\b(\\d+ V)\\b");
    private static final String WEIGHT = "\\b(\\d[\\d,]* ?(?:lb|kg))";

    /** How the figures of a text go with the facts. */
    private enum Wanted {
        ONE_EQUAL,
        ALL_EQUAL,
        NONE_ABOVE
    }

    /** A fact, and how a message tells it: {@code `load-limit` is 150 lb}. */
    private record Stated<Q extends Quantity>(Q value, String told) {
        static <Q extends Quantity> Stream<Stated<Q>> of(Described record, Key<Q> key, String whose) {
            return record.facts().located(key).stream()
                    .map(it -> new Stated<>(it.value(), "`" + key.name() + "`" + whose + " is " + it.written()));
        }
    }

    /**
     * Texts, and the figures in them that repeat a fact.
     *
     * @param figure with the figure as its first group, or as another one
     * @param facts one of which is repeated; none where nobody knows
     */
    private record Line<R extends Described, Q extends Quantity>(
            Shape<R> shape,
            Function<R, Stream<Located<String>>> texts,
            Pattern figure,
            Scale<Q> scale,
            Wanted wanted,
            BiFunction<R, Records, Stream<Stated<Q>>> facts) {

        Stream<Finding> check(Records records) {
            return records.of(shape)
                    .flatMap(record -> texts.apply(record).flatMap(words -> {
                        List<String> figures = figures(words.value(), figure);
                        // Most texts have no figure, and are not held against anything.
                        return figures.isEmpty()
                                ? Stream.empty()
                                : differing(
                                                figures,
                                                scale,
                                                wanted,
                                                facts.apply(record, records).toList())
                                        .map(it -> it.finding(words, record));
                    }));
        }
    }

    /** A figure, and a fact that it should be. */
    private record Difference(String figure, Stated<?> stated) {
        Finding finding(Located<String> words, Described record) {
            return Finding.warning(
                            "figure-against-fact",
                            words.at(),
                            "a text of " + Records.naming(record) + " says `" + figure + "`, and " + stated.told())
                    .mend("Measure it or read the plate, and mend the one that is wrong.");
        }
    }

    private static final List<Line<?, ?>> LINES = List.of(
            own(
                    Compartment.SHAPE,
                    Compartment.LABEL,
                    words("\\bmax(?:imum|\\.)?:? " + WEIGHT + "\\b"),
                    Kilograms.SCALE,
                    Compartment.LOAD_LIMIT),
            own(
                    Compartment.SHAPE,
                    Compartment.NEVER_STORE,
                    words("\\b(?:over|above|than) " + WEIGHT + "\\b"),
                    Kilograms.SCALE,
                    Compartment.LOAD_LIMIT),
            own(Switch.SHAPE, Switch.WORK, HELD, Seconds.SCALE, Switch.HOLD),
            own(Switch.SHAPE, Switch.WORK_OFF, HELD, Seconds.SCALE, Switch.HOLD),
            own(
                    Switch.SHAPE,
                    Switch.WRONG_USE,
                    words("\\b(?:held|pressed) (?:for )?longer than " + TIME),
                    Seconds.SCALE,
                    Switch.HOLD),
            own(
                    Item.SHAPE,
                    Item.NOTE,
                    words("(?<![\\d.] ?)" + LENGTH + " (?:long|each)\\b"),
                    Meters.SCALE,
                    Item.LENGTH),
            named(Supply.SHAPE, AMPS, Amps.SCALE, Supply.AMPS),
            named(Supply.SHAPE, VOLTS, Volts.SCALE, Supply.VOLTS),
            named(Circuit.SHAPE, VOLTS, Volts.SCALE, Circuit.VOLTS),
            named(Load.SHAPE, VOLTS, Volts.SCALE, Load.VOLTS),
            new Line<>(
                    Adapter.SHAPE,
                    FigureAgainstFact::name,
                    AMPS,
                    Amps.SCALE,
                    Wanted.ALL_EQUAL,
                    (adapter, records) -> bothEnds(adapter)),
            new Line<>(
                    Item.SHAPE,
                    FigureAgainstFact::name,
                    AMPS,
                    Amps.SCALE,
                    Wanted.ALL_EQUAL,
                    (item, records) ->
                            records.referring(Adapter.SHAPE, Adapter.ITEM, item).flatMap(FigureAgainstFact::bothEnds)),
            new Line<>(
                    Connection.SHAPE,
                    text(Connection.REACH),
                    words("\\breach(?:es)? (?:about )?" + LENGTH),
                    Meters.SCALE,
                    Wanted.ONE_EQUAL,
                    FigureAgainstFact::hoses),
            atRole(Connection.SHAPE, Connection.FITTING, "shore-inlet", AMPS, Amps.SCALE, Supply.AMPS),
            atRole(Connection.SHAPE, Connection.FITTING, "shore-inlet", VOLTS, Volts.SCALE, Supply.VOLTS),
            atRole(Connection.SHAPE, Connection.LABEL, "shore-inlet", AMPS, Amps.SCALE, Supply.AMPS),
            atRole(Connection.SHAPE, Connection.LABEL, "shore-inlet", VOLTS, Volts.SCALE, Supply.VOLTS),
            atRole(Compartment.SHAPE, Compartment.LABEL, "cord-compartment", AMPS, Amps.SCALE, Supply.AMPS),
            atRole(Compartment.SHAPE, Compartment.LABEL, "cord-compartment", VOLTS, Volts.SCALE, Supply.VOLTS),
            atRole(Switch.SHAPE, Switch.PLATE, "coach-main-breaker", RATING, Amps.SCALE, Supply.AMPS),
            new Line<>(
                    Switch.SHAPE,
                    text(Switch.PLATE),
                    RATING,
                    Amps.SCALE,
                    Wanted.ONE_EQUAL,
                    FigureAgainstFact::circuitsBehind),
            new Line<>(
                    Tank.SHAPE,
                    text(Tank.GAUGE_TRUTH),
                    words("\\b(\\d+ (?:gal|L))\\b"),
                    Liters.SCALE,
                    Wanted.NONE_ABOVE,
                    (tank, records) -> Stated.of(tank, Tank.CAPACITY, "")),
            new Line<>(
                    Appliance.SHAPE,
                    text(Appliance.NOTE),
                    words("\\bdraws (?:about )?(\\d[\\d,]* W)\\b"),
                    Watts.SCALE,
                    Wanted.ONE_EQUAL,
                    (appliance, records) -> records.referring(Load.SHAPE, Load.APPLIANCE, appliance)
                            .flatMap(load -> Stated.of(load, Load.WATTS, " of its load"))));

    /** What any text says of the whole coach. */
    private record Whole<Q extends Quantity>(
            Pattern figure, Scale<Q> scale, Function<Records, Stream<Stated<Q>>> facts) {
        Stream<Finding> check(List<Words> texts, Records records) {
            List<Stated<Q>> stated = facts.apply(records).toList();
            return texts.stream()
                    .flatMap(it -> differing(figures(it.words.value(), figure), scale, Wanted.ALL_EQUAL, stated)
                            .map(difference -> difference.finding(it.words, it.record)));
        }
    }

    private record Words(Described record, Located<String> words) {}

    private static final List<Whole<?>> OF_THE_COACH = List.of(
            size("high|tall", Size.HEIGHT),
            size(words("\\b(?:overall|clearance|vehicle|coach) height(?: is|:)? " + LENGTH), Size.HEIGHT),
            size("long", Size.LENGTH),
            size("wide over the mirrors", Size.WIDTH_MIRRORS),
            new Whole<>(
                    words("\\b(\\d+ A) (?:outlet|shore power|hook-up)s?\\b"),
                    Amps.SCALE,
                    records -> records.coach().unit().idsRead(Supply.SHAPE.name())
                            ? Stream.concat(
                                    shore(records, Supply.AMPS),
                                    records.of(Adapter.SHAPE)
                                            .flatMap(it -> Stated.of(it, Adapter.FROM, " of an adapter")))
                            : Stream.of()));

    private static <R extends Described, Q extends Quantity> Line<R, Q> own(
            Shape<R> shape, Key<String> text, Pattern figure, Scale<Q> scale, Key<Q> fact) {
        return new Line<>(shape, text(text), figure, scale, Wanted.ONE_EQUAL, (it, records) -> Stated.of(it, fact, ""));
    }

    /** What the name of a thing says. */
    private static <T extends Thing, Q extends Quantity> Line<T, Q> named(
            Shape<T> shape, Pattern figure, Scale<Q> scale, Key<Q> fact) {
        return new Line<>(
                shape,
                FigureAgainstFact::name,
                figure,
                scale,
                Wanted.ONE_EQUAL,
                (it, records) -> Stated.of(it, fact, ""));
    }

    /** What the holder of a role says of the supply of the site. */
    private static <T extends Thing, Q extends Quantity> Line<T, Q> atRole(
            Shape<T> shape, Key<String> text, String role, Pattern figure, Scale<Q> scale, Key<Q> fact) {
        return new Line<>(
                shape,
                text(text),
                figure,
                scale,
                Wanted.ONE_EQUAL,
                (it, records) -> it.roles().contains(role) ? shore(records, fact) : Stream.of());
    }

    private static Whole<Meters> size(String how, Key<Meters> fact) {
        return size(
                words("\\b(?:coach|motorhome|motor home|vehicle|camper) (?:is|stands|measures) (?:about )?" + LENGTH
                        + " (?:" + how + ")\\b"),
                fact);
    }

    private static Whole<Meters> size(Pattern figure, Key<Meters> fact) {
        return new Whole<>(
                figure,
                Meters.SCALE,
                records -> records.of(Size.SHAPE).flatMap(size -> Stated.of(size, fact, " of `size`")));
    }

    private static <R extends Described> Function<R, Stream<Located<String>>> text(Key<String> key) {
        return record -> record.facts().located(key).stream();
    }

    private static Stream<Located<String>> name(Thing thing) {
        return thing.facts().located(thing.identity().name()).stream();
    }

    private static Pattern words(String pattern) {
        return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
    }

    private static <Q extends Quantity> Stream<Stated<Q>> shore(Records records, Key<Q> fact) {
        return records.of(Supply.SHAPE)
                .filter(it -> it.facts().find(Supply.SOURCE).equals(Optional.of(Supply.Source.SHORE)))
                .flatMap(it -> Stated.of(it, fact, " of the shore power"));
    }

    private static Stream<Stated<Amps>> bothEnds(Adapter adapter) {
        return Stream.concat(
                Stated.of(adapter, Adapter.FROM, " of the adapter"), Stated.of(adapter, Adapter.TO, " of the adapter"));
    }

    /** The handle of a breaker against the circuits behind it. */
    private static Stream<Stated<Amps>> circuitsBehind(Switch handle, Records records) {
        return handle.facts().find(Switch.MAKE).equals(Optional.of(Switch.Make.BREAKER_HANDLE))
                ? records.referring(Circuit.SHAPE, Circuit.SWITCH, handle)
                        .flatMap(it -> Stated.of(it, Circuit.BREAKER, " of its circuit"))
                : Stream.of();
    }

    /** How far what goes onto a connection reaches, all joined or one alone. */
    private static Stream<Stated<Meters>> hoses(Connection connection, Records records) {
        return records.of(Item.SHAPE)
                .filter(item -> item.facts().all(Item.GOES_ON).contains(connection.id())
                        || connection.facts().all(Connection.FITS).contains(item.id()))
                .flatMap(item -> item.facts().located(Item.LENGTH).stream()
                        .flatMap(length -> Stream.of(
                                        item.facts().find(Item.COUNT).orElse(1), 1)
                                .map(count -> new Stated<>(
                                        new Meters(count * length.value().value()),
                                        "item `" + item.id() + "` is " + (count == 1 ? "" : count + " times ")
                                                + length.written()))));
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Records records = new Records(coach.coach());
        List<Words> texts = withDigits(coach.unit());
        return Stream.concat(
                LINES.stream().flatMap(line -> line.check(records)),
                OF_THE_COACH.stream().flatMap(whole -> whole.check(texts, records)));
    }

    private static List<Words> withDigits(Unit unit) {
        List<Words> texts = new ArrayList<>();
        FactVisitor.of(unit, (record, key, type, value) -> {
            if (Type.ofWords(type) && value.value().toString().chars().anyMatch(Character::isDigit)) {
                texts.add(new Words(record, new Located<>(value.value().toString(), value.at())));
            }
        });
        return texts;
    }

    private static List<String> figures(String text, Pattern figure) {
        return figure.matcher(text).results().map(FigureAgainstFact::group).toList();
    }

    private static String group(MatchResult match) {
        return Stream.iterate(1, i -> i <= match.groupCount(), i -> i + 1)
                .map(match::group)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseThrow();
    }

    /** The first figure that is none of what is stated, where that matters and something is. */
    private static <Q extends Quantity> Stream<Difference> differing(
            List<String> figures, Scale<Q> scale, Wanted wanted, List<Stated<Q>> stated) {
        if (stated.isEmpty()) {
            return Stream.empty();
        }
        List<String> wrong = figures.stream()
                .filter(it -> stated.stream().noneMatch(fact -> goes(it, scale, wanted, fact)))
                .toList();
        return wrong.isEmpty() || wanted == Wanted.ONE_EQUAL && wrong.size() < figures.size()
                ? Stream.empty()
                : Stream.of(new Difference(wrong.get(0), stated.get(0)));
    }

    private static boolean goes(String figure, Scale<?> scale, Wanted wanted, Stated<?> stated) {
        try {
            double said = scale.parse(written(figure, scale)).value();
            double fact = stated.value().value();
            return wanted == Wanted.NONE_ABOVE ? said <= fact * (1 + ROUNDED) : Math.abs(fact - said) <= ROUNDED * fact;
        } catch (NotAQuantityException nobodyKnows) {
            return true;
        }
    }

    /** As a figure is written under a key: in digits, with its unit. */
    private static String written(String figure, Scale<?> scale) {
        String small = figure.toLowerCase(Locale.ROOT).replaceFirst(" (s|min)[a-z]+$", " $1");
        String word = small.replaceFirst(" .*", "");
        String digits = NUMBERS.contains(word) ? NUMBERS.indexOf(word) + small.substring(word.length()) : small;
        return scale == Amps.SCALE
                ? digits.replaceFirst(" ?a?$", " A")
                : WRITTEN_LARGE.matcher(digits).replaceFirst(it -> it.group().toUpperCase(Locale.ROOT));
    }
}
