package bayfolio.fact;

import bayfolio.measure.Amount;
import bayfolio.measure.Quantity;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The facts of one record, as far as they could be read, each with its place. Immutable.
 *
 * <p>A fact that the description leaves out is absent. One that is written and could not be read is neither there nor absent,
 * and so is one that is required and left out: whoever asks for it gets an {@link UnreadException}, but by {@link #ifRead}
 * and {@link #each}.
 */
public final class Facts {
    private final Shape<?> shape;
    private final Place at;
    /** By the indexes of their keys. */
    private final @Nullable Located<?>[] values;

    /** By the indexes of their keys. */
    private final BitSet unread;

    /** Those of the unread ones that somebody has still to look up on the coach. */
    private final BitSet toConfirm;

    /** Is told of each fact that is asked for. */
    private final Watch watch;

    /** Whoever wants to know which facts something hangs on. */
    public interface Watch {
        void asked(Facts record, Key<?> key);
    }

    private Facts(Shape<?> shape, Place at, @Nullable Located<?>[] values, BitSet unread, BitSet toConfirm) {
        this(shape, at, values, unread, toConfirm, (record, key) -> {});
    }

    private Facts(
            Shape<?> shape, Place at, @Nullable Located<?>[] values, BitSet unread, BitSet toConfirm, Watch watch) {
        this.watch = watch;
        this.toConfirm = toConfirm;
        this.shape = shape;
        this.at = at;
        this.values = values;
        this.unread = unread;
        for (int i = 0; i < values.length; i++) {
            if (values[i] == null && shape.keys().get(i).required()) {
                unread.set(i);
            }
        }
    }

    /** Of a record that could not be read at all. */
    public static Facts unread(Shape<?> shape, Place at) {
        Draft draft = draft(shape, at);
        shape.keys().forEach(draft::unread);
        return draft.done();
    }

    public static Draft draft(Shape<?> shape, Place at) {
        return new Draft(shape, at);
    }

    /** The facts of a record that is being read. */
    public static final class Draft {
        private final Shape<?> shape;
        private final Place at;
        private final @Nullable Located<?>[] values;
        private final BitSet unread = new BitSet();
        private final BitSet toConfirm = new BitSet();

        private Draft(Shape<?> shape, Place at) {
            this.shape = shape;
            this.at = at;
            this.values = new Located<?>[shape.keys().size()];
        }

        /**
         * @throws IllegalArgumentException for a key of another shape
         */
        public <T> Draft put(Key<T> key, Located<T> value) {
            if (!shape.declares(key)) {
                throw new IllegalArgumentException("a " + shape.name() + " has no such key " + key.name());
            }
            values[key.index()] = value;
            return this;
        }

        /** It is written, and could not be read or not all of it. */
        public Draft unread(Key<?> key) {
            unread.set(key.index());
            return this;
        }

        /** Somebody has still to look it up on the coach: it counts as unread, whatever is written. */
        public Draft toConfirm(Key<?> key) {
            toConfirm.set(key.index());
            return unread(key);
        }

        public Facts done() {
            return new Facts(shape, at, values.clone(), (BitSet) unread.clone(), (BitSet) toConfirm.clone());
        }
    }

    public Shape<?> shape() {
        return shape;
    }

    /** Where the record begins. */
    public Place at() {
        return at;
    }

    public boolean has(Key<?> key) {
        return value(key) != null;
    }

    private @Nullable Located<?> value(Key<?> key) {
        if (!read(key)) {
            throw new UnreadException(key.name() + " of the " + shape.name() + " at " + at + " could not be read");
        }
        if (!shape.declares(key)) {
            return null;
        }
        watch.asked(this, key);
        return values[key.index()];
    }

    /** Whether it is known what this fact is, or that it is left out. */
    public boolean read(Key<?> key) {
        return !shape.declares(key) || !unread.get(key.index());
    }

    /** Whether somebody has still to look it up on the coach. */
    public boolean toConfirm(Key<?> key) {
        return shape.declares(key) && toConfirm.get(key.index());
    }

    /** A fact as far as it could be read: of a list, those of its elements that could. */
    @SuppressWarnings("unchecked") // the only way in is through readers that decode by the key's own type
    public <T> Optional<Located<T>> ifRead(Key<T> key) {
        return Optional.ofNullable(shape.declares(key) ? (Located<T>) values[key.index()] : null);
    }

    /** What is stated and could be read, in the order of the declaration. */
    public void each(BiConsumer<Key<?>, Located<?>> visitor) {
        for (int i = 0; i < values.length; i++) {
            @Nullable Located<?> value = values[i];
            if (value != null) {
                visitor.accept(shape.keys().get(i), value);
            }
        }
    }

    /** A quantity as the writer put it, and then in the other system: {@code 92 gal (348 L)}. */
    public <Q extends Quantity> Optional<Amount> written(Key<Q> key) {
        return located(key).map(fact -> fact.value().asWritten(fact.written()));
    }

    public <T> Optional<T> find(Key<T> key) {
        return located(key).map(Located::value);
    }

    @SuppressWarnings("unchecked") // the only way in is through readers that decode by the key's own type
    public <T> Optional<Located<T>> located(Key<T> key) {
        return Optional.ofNullable((Located<T>) value(key));
    }

    /**
     * A fact by the name of its key, for keys that records of several shapes have; empty where its
     * type is another.
     */
    public <T> Optional<T> find(String keyName, Class<T> type) {
        return shape.key(keyName).flatMap(this::find).filter(type::isInstance).map(type::cast);
    }

    /** A list that is left out is an empty list. */
    public <T> List<T> all(Key<List<Located<T>>> key) {
        Optional<List<Located<T>>> list = find(key);
        if (list.isEmpty() || list.get().isEmpty()) {
            return List.of();
        }
        List<T> all = new ArrayList<>(list.get().size());
        list.get().forEach(each -> all.add(each.value()));
        return Collections.unmodifiableList(all);
    }

    /** A required fact. */
    public <T> T get(Key<T> key) {
        return find(key).orElseThrow();
    }

    /** The same with another value for one fact. */
    public <T> Facts with(Key<T> key, Located<T> value) {
        @Nullable Located<?>[] other = values.clone();
        other[key.index()] = value;
        return new Facts(shape, at, other, (BitSet) unread.clone(), toConfirm, watch);
    }

    /** The same as if a fact had been left out. */
    public Facts without(Key<?> key) {
        @Nullable Located<?>[] other = values.clone();
        other[key.index()] = null;
        return new Facts(shape, at, other, (BitSet) unread.clone(), toConfirm, watch);
    }

    /** The same with each fact that is stated as somebody makes it of what it was. */
    public Facts changed(BiFunction<Key<?>, Located<?>, Located<?>> change) {
        @Nullable Located<?>[] other = values.clone();
        for (int i = 0; i < other.length; i++) {
            @Nullable Located<?> value = other[i];
            other[i] = value == null ? null : change.apply(shape.keys().get(i), value);
        }
        return new Facts(shape, at, other, (BitSet) unread.clone(), toConfirm, watch);
    }

    /** Where a fact stands, or where its record begins. */
    public Place at(Key<?> key) {
        return ifRead(key).map(Located::at).orElse(at);
    }

    /** The same as if nothing had been stated for staff: without their keys, and without records that are for them. */
    public Facts forRenters() {
        @Nullable Located<?>[] theirs = new Located<?>[values.length];
        BitSet theirUnread = new BitSet();
        for (int i = 0; i < values.length; i++) {
            @Nullable Located<?> value = values[i];
            Key<?> key = shape.keys().get(i);
            if (!key.forStaff()) {
                theirs[i] = value == null ? null : forRenters(key.type(), value);
                theirUnread.set(i, unread.get(i));
            }
        }
        return new Facts(shape, at, theirs, theirUnread, toConfirm);
    }

    private static @Nullable Located<?> forRenters(Type<?> type, Located<?> value) {
        return value.value() instanceof Described inner && inner.forStaff()
                ? null
                : rebuilt(type, value, Facts::forRenters, record -> !record.forStaff());
    }

    /** The same as if what could not be read had been left out, in records within it too. */
    public Facts asRead() {
        @Nullable Located<?>[] same = new Located<?>[values.length];
        for (int i = 0; i < values.length; i++) {
            @Nullable Located<?> value = values[i];
            same[i] = value == null ? null : rebuilt(shape.keys().get(i).type(), value, Facts::asRead, record -> true);
        }
        return new Facts(shape, at, same, new BitSet(), new BitSet());
    }

    /** The same, all records in it too, with somebody who is told of each fact that is asked for. */
    public Facts watched(Watch by) {
        @Nullable Located<?>[] same = new Located<?>[values.length];
        for (int i = 0; i < values.length; i++) {
            @Nullable Located<?> value = values[i];
            same[i] = value == null
                    ? null
                    : rebuilt(shape.keys().get(i).type(), value, facts -> facts.watched(by), record -> true);
        }
        return new Facts(shape, at, same, (BitSet) unread.clone(), toConfirm, by);
    }

    /** A value with its records made anew, those that are wanted. */
    private static Located<?> rebuilt(
            Type<?> type, Located<?> value, UnaryOperator<Facts> change, Predicate<Described> wanted) {
        if (type instanceof Type.Nested<?> nested && value.value() instanceof Described record) {
            return new Located<>(nested.shape().make(change.apply(record.facts())), value.at(), value.written());
        }
        if (type instanceof Type.ListOf<?> list && value.value() instanceof List<?> all) {
            return new Located<>(
                    all.stream()
                            .map(each -> (Located<?>) each)
                            .filter(each -> !(each.value() instanceof Described record) || wanted.test(record))
                            .<Located<?>>map(each -> rebuilt(list.element(), each, change, wanted))
                            .toList(),
                    value.at(),
                    value.written());
        }
        return value;
    }

    /** Whether everything that is written or must be here could be read, in records within it too. */
    public boolean whole() {
        return unread.isEmpty() && Stream.of(values).allMatch(value -> value == null || whole(value.value()));
    }

    private static boolean whole(Object value) {
        if (value instanceof Described record) {
            return record.facts().whole();
        }
        return !(value instanceof List<?> list)
                || list.stream().allMatch(each -> !(each instanceof Located<?> located) || whole(located.value()));
    }
}
