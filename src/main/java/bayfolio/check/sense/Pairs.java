package bayfolio.check.sense;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.model.Coach;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Where the facts are that a {@link Relation} holds against each other. */
interface Pairs<A, B> {
    Stream<Pair<A, B>> of(Records records);

    /**
     * Two facts to be held against each other.
     *
     * @param about what states the first, for the message: {@code tank `gray`}
     */
    record Pair<A, B>(String about, Located<A> first, Located<B> second) {
        /** Two records, told at a place of the first. */
        static <R extends Described, S extends Described> Pair<R, S> of(R record, Place at, S other) {
            return new Pair<>(
                    Records.naming(record),
                    new Located<>(record, at),
                    new Located<>(other, other.facts().at()));
        }
    }

    /** Two facts of one record. */
    static <R extends Described, A, B> Pairs<A, B> within(Shape<R> shape, Key<A> first, Key<B> second) {
        return records -> records.of(shape).flatMap(record -> pair(record, first, record, second));
    }

    /** A fact of each record of one kind against one of each record of another. */
    static <R extends Described, S extends Described, A, B> Pairs<A, B> across(
            Shape<R> shape, Key<A> first, Shape<S> other, Key<B> second) {
        return records -> records.of(shape)
                .flatMap(record -> records.of(other).flatMap(against -> pair(record, first, against, second)));
    }

    /** A fact of a record against one of the thing that the record refers to. */
    static <R extends Described, T extends Thing, A, B> Pairs<A, B> referred(
            Shape<R> shape, Key<A> first, Key<String> reference, Shape<T> referred, Key<B> second) {
        return records -> records.of(shape)
                .flatMap(record -> record.facts().find(reference).stream()
                        .flatMap(id -> records.named(referred, id).stream())
                        .flatMap(thing -> pair(record, first, thing, second)));
    }

    /** As {@link #referred}, where several are referred to. */
    static <R extends Described, T extends Thing, A, B> Pairs<A, B> eachReferred(
            Shape<R> shape, Key<A> first, Key<List<Located<String>>> references, Shape<T> referred, Key<B> second) {
        return records -> records.of(shape)
                .flatMap(record -> record.facts().all(references).stream()
                        .flatMap(id -> records.named(referred, id).stream())
                        .flatMap(thing -> pair(record, first, thing, second)));
    }

    /** A fact of each record of one kind, and the record itself, for what hangs on several of its facts. */
    static <R extends Described, A> Pairs<A, R> own(Shape<R> shape, Key<A> fact) {
        return records -> records.of(shape).flatMap(record -> ownOf(record, fact));
    }

    /** As {@link #own}, of one record. */
    static <R extends Described, A> Stream<Pair<A, R>> ownOf(R record, Key<A> fact) {
        return record.facts().located(fact).stream()
                .map(value -> new Pair<>(
                        Records.naming(record),
                        value,
                        new Located<>(record, record.facts().at())));
    }

    /** Each record of one kind that states a fact, and the coach; told at that fact. */
    static <R extends Described> Pairs<R, Coach> onCoach(Shape<R> shape, Key<?> fact) {
        return records -> records.of(shape)
                .filter(record -> record.facts().has(fact))
                .map(record -> new Pair<>(
                        Records.naming(record),
                        new Located<>(record, record.facts().at(fact)),
                        new Located<>(
                                records.coach(), records.coach().unit().facts().at())));
    }

    /** Each record of one kind with the thing that it refers to; told at the reference. */
    static <R extends Described, T extends Thing> Pairs<R, T> toOne(
            Shape<R> shape, Key<String> reference, Shape<T> referred) {
        return records -> records.of(shape)
                .flatMap(record ->
                        to(record, record.facts().located(reference).stream(), id -> records.named(referred, id)));
    }

    /** As {@link #toOne}, of whatever kind it is. */
    static <R extends Described> Pairs<R, Thing> toOne(Shape<R> shape, Key<String> reference) {
        return records -> records.of(shape)
                .flatMap(record -> to(record, record.facts().located(reference).stream(), records::named));
    }

    /** As {@link #toOne}, where several are referred to. */
    static <R extends Described, T extends Thing> Pairs<R, T> toEach(
            Shape<R> shape, Key<List<Located<String>>> references, Shape<T> referred) {
        return records -> records.of(shape)
                .flatMap(record -> to(record, all(record, references), id -> records.named(referred, id)));
    }

    /** As {@link #toEach}, of whatever kind they are. */
    static <R extends Described> Pairs<R, Thing> toEach(Shape<R> shape, Key<List<Located<String>>> references) {
        return records -> records.of(shape).flatMap(record -> to(record, all(record, references), records::named));
    }

    private static Stream<Located<String>> all(Described record, Key<List<Located<String>>> references) {
        return record.facts().find(references).stream().flatMap(List::stream);
    }

    private static <R extends Described, T extends Thing> Stream<Pair<R, T>> to(
            R record, Stream<Located<String>> references, Function<String, Optional<T>> named) {
        return references.flatMap(id -> named.apply(id.value()).stream().map(thing -> Pair.of(record, id.at(), thing)));
    }

    /** Each record of one kind with each of another; told at a fact of the first. */
    static <R extends Described, S extends Described> Pairs<R, S> records(
            Shape<R> shape, Key<?> fact, Shape<S> other, Key<?> against) {
        return records -> records.of(shape)
                .filter(record -> record.facts().has(fact))
                .flatMap(record -> records.of(other)
                        .filter(it -> it.facts().has(against))
                        .map(it -> Pair.of(record, record.facts().at(fact), it)));
    }

    /** Each thing of one kind with each later one of the kind, told at a fact of the later. */
    static <T extends Thing> Pairs<T, T> twoOf(Shape<T> shape, Key<?> fact) {
        return alike(onCoach(shape, fact), it -> shape);
    }

    /**
     * Of the things of one kind that state a fact, each with each earlier one that is alike, told at that fact.
     *
     * @param saying what is equal of two that are alike
     */
    static <T extends Thing> Pairs<T, T> alike(Shape<? extends T> shape, Key<?> fact, Function<? super T, ?> saying) {
        return alike(onCoach(shape, fact), saying);
    }

    /** Of some things, each with each earlier one that is alike, told where the first of their pairs is. */
    static <T extends Thing> Pairs<T, T> alike(Pairs<? extends T, ?> some, Function<? super T, ?> saying) {
        return records -> {
            Map<Object, List<Located<? extends T>>> said = new LinkedHashMap<>();
            some.of(records)
                    .map(Pair::first)
                    .forEach(it -> said.computeIfAbsent(saying.apply(it.value()), same -> new ArrayList<>())
                            .add(it));
            return said.values().stream()
                    .flatMap(same -> IntStream.range(0, same.size())
                            .boxed()
                            .flatMap(i -> same.subList(0, i).stream()
                                    .map(earlier -> Pair.of(
                                            same.get(i).value(), same.get(i).at(), earlier.value()))));
        };
    }

    /** Only those of which the first is so. */
    default Pairs<A, B> where(BiPredicate<? super A, ? super B> so) {
        return records -> of(records)
                .filter(pair -> so.test(pair.first().value(), pair.second().value()));
    }

    /** The same, with something else of the first, for what hangs on more than the two. */
    default <C> Pairs<C, B> with(BiFunction<? super A, Records, C> made) {
        return records -> of(records)
                .map(pair ->
                        new Pair<>(pair.about(), pair.first().map(first -> made.apply(first, records)), pair.second()));
    }

    /** None, unless it is so of the coach. */
    default Pairs<A, B> given(Predicate<Records> so) {
        return records -> so.test(records) ? of(records) : Stream.of();
    }

    /** What two records state; nothing where either does not. */
    static <A, B> Stream<Pair<A, B>> pair(Described record, Key<A> first, Described against, Key<B> second) {
        Optional<Located<A>> one = record.facts().located(first);
        Optional<Located<B>> other = against.facts().located(second);
        return one.isPresent() && other.isPresent()
                ? Stream.of(new Pair<>(Records.naming(record), one.get(), other.get()))
                : Stream.of();
    }
}
