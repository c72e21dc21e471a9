package bayfolio.template;

import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/** What a template may ask for, by name. */
public interface Names {
    /** What stands behind a name; {@link Value.Unknown} where there is no such name. */
    Value find(String name);

    /** All names that {@link #find} knows, for near names. */
    Collection<String> known();

    /** Names from a ready list. */
    static Names of(Map<String, Value> values) {
        return of(values.keySet(), name -> Objects.requireNonNull(values.get(name)));
    }

    /**
     * Names whose values are made when they are asked for.
     *
     * @param value gets none but known names
     */
    static Names of(Collection<String> known, Function<String, Value> value) {
        return new Names() {
            @Override
            public Value find(String name) {
                return known.contains(name) ? value.apply(name) : new Value.Unknown();
            }

            @Override
            public Collection<String> known() {
                return known;
            }
        };
    }
}
