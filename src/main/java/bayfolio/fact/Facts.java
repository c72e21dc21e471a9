package bayfolio.fact;

import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
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
    private final Map<Key<?>, Located<?>> values;
    private final boolean whole;
    private final boolean entire;

    public Facts(Shape<?> shape, Place at, Map<Key<?>, Located<?>> values) {
        this.shape = shape;
        this.at = at;
        Map<Key<?>, Located<?>> copy = new IdentityHashMap<>(values);
        this.values = copy;
        this.whole = shape.keys().stream().allMatch(key -> !key.required() || copy.containsKey(key));
        this.entire = whole && copy.values().stream().allMatch(value -> entire(value.value()));
    }

    public Shape<?> shape() {
        return shape;
    }

    /** Where the record begins. */
    public Place at() {
        return at;
    }

    public boolean has(Key<?> key) {
        return values.containsKey(key);
    }

    public <T> Optional<T> find(Key<T> key) {
        return located(key).map(Located::value);
    }

    @SuppressWarnings("unchecked") // the only way in is through readers that decode by the key's own type
    public <T> Optional<Located<T>> located(Key<T> key) {
        @Nullable Located<?> value = values.get(key);
        return Optional.ofNullable((Located<T>) value);
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
        return find(key).orElse(List.of()).stream().map(Located::value).toList();
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
        @Nullable Located<?> value = values.get(key);
        return value == null ? at : value.at();
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
