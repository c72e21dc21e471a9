package bayfolio.source;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What was found in something that never changes: found once, it is kept, so that a program that checks again after an edit
 * need not look at all of it anew. Of each asker the last is kept.
 */
public final class Once {
    private final Map<Class<?>, Found> found = new ConcurrentHashMap<>();

    private record Found(Object given, Object result) {}

    /**
     * @param given all that the result depends on besides; it is the same when it is equal
     */
    @SuppressWarnings("unchecked") // one asker finds results of one type
    public <T> T find(Class<?> asker, Object given, Supplier<T> find) {
        Found known = found.get(asker);
        if (known == null || !known.given.equals(given)) {
            known = new Found(given, find.get());
            found.put(asker, known);
        }
        return (T) known.result;
    }
}
