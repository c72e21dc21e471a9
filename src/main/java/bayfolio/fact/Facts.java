package bayfolio.fact;

import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;

/**
 * The facts of one record, as far as they could be read, each with its place. Immutable.
 *
 * <p>A fact that the description leaves out, or that could not be read, is absent; {@link #whole}
 * tells whether everything required is here.
 */
public final class Facts {
    private final Shape<?> shape;
    private final Place at;
    /** By the indexes of their keys. */
    private final @Nullable Located<?>[] values;

    private final boolean whole;
    private final boolean entire;

    private Facts(Shape<?> shape, Place at, @Nullable Located<?>[] values) {
        this.shape = shape;
        this.at = at;
        this.values = values;
        boolean required = true;
        boolean within = true;
        for (int i = 0; i < values.length; i++) {
            @Nullable Located<?> value = values[i];
            required &= value != null || !shape.keys().get(i).required();
            within &= value == null || entire(value.value());
        }
        this.whole = required;
        this.entire = required && within;
    }

    public static Draft draft(Shape<?> shape, Place at) {
        return new Draft(shape, at);
    }

    /** The facts of a record that is being read. */
    public static final class Draft {
        private final Shape<?> shape;
        private final Place at;
        private final @Nullable Located<?>[] values;

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

        public Facts done() {
            return new Facts(shape, at, values.clone());
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
        return shape.declares(key) ? values[key.index()] : null;
    }

    /** What is stated, in the order of the declaration. */
    public void each(BiConsumer<Key<?>, Located<?>> visitor) {
        for (int i = 0; i < values.length; i++) {
            @Nullable Located<?> value = values[i];
            if (value != null) {
                visitor.accept(shape.keys().get(i), value);
            }
        }
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

    /**
     * A required fact.
     *
     * @throws NoSuchElementException naming record and key, when it is absent: ask only records
     *     that are {@link #whole}
     */
    public <T> T get(Key<T> key) {
        return find(key)
                .orElseThrow(() -> new NoSuchElementException(shape.name() + " at " + at + " has no " + key.name()));
    }

    /** Where a fact stands, or where its record begins. */
    public Place at(Key<?> key) {
        @Nullable Located<?> value = value(key);
        return value == null ? at : value.at();
    }

    /** The same as if nothing had been stated for staff: without their keys, and without records that are for them. */
    public Facts forRenters() {
        @Nullable Located<?>[] theirs = new Located<?>[values.length];
        for (int i = 0; i < values.length; i++) {
            @Nullable Located<?> value = values[i];
            Key<?> key = shape.keys().get(i);
            if (value != null && !key.forStaff()) {
                theirs[i] = forRenters(key.type(), value);
            }
        }
        return new Facts(shape, at, theirs);
    }

    private static Located<?> forRenters(Type<?> type, Located<?> value) {
        if (type instanceof Type.Nested<?> nested && value.value() instanceof Described record) {
            return new Located<>(nested.shape().make(record.facts().forRenters()), value.at());
        }
        if (type instanceof Type.ListOf<?> list && value.value() instanceof List<?> all) {
            return new Located<>(
                    all.stream()
                            .map(each -> (Located<?>) each)
                            .filter(each -> !(each.value() instanceof Described record && record.forStaff()))
                            .<Located<?>>map(each -> forRenters(list.element(), each))
                            .toList(),
                    value.at());
        }
        return value;
    }

    public boolean whole() {
        return whole;
    }

    /** Whether it is whole, and so is every record within it. */
    public boolean entire() {
        return entire;
    }

    private static boolean entire(Object value) {
        if (value instanceof Described record) {
            return record.facts().entire();
        }
        return !(value instanceof List<?> list)
                || list.stream().allMatch(each -> !(each instanceof Located<?> located) || entire(located.value()));
    }
}
