package bayfolio.template;

import java.util.Collection;
import java.util.Map;

/** What a template may ask for, by name. */
public interface Names {
    /** What stands behind a name; {@link Value.Unknown} where there is no such name. */
    Value find(String name);

    /** All names that {@link #find} knows, for near names. */
    Collection<String> known();

    /** Names from a ready list. */
    static Names of(Map<String, Value> values) {
        return new Names() {
            @Override
            public Value find(String name) {
                return values.getOrDefault(name, new Value.Unknown());
            }

            @Override
            public Collection<String> known() {
                return values.keySet();
            }
        };
    }
}
