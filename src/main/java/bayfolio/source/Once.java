package bayfolio.source;

import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What was found in something that never changes: found once, it is kept for as long as there is room, so that a program that
 * checks again after an edit need not look at all of it anew. Of each asker the last is kept.
 */
public final class Once {
    // Of ten thousand coaches not everything can be kept in mind: what was asked for last goes last.
    private final Map<Class<?>, SoftReference<Found>> found = new ConcurrentHashMap<>();

    private record Found(Object given, Object result) {}

    /**
     * @param given all that the result depends on besides; it is the same when it is equal
     */
    @SuppressWarnings("unchecked") // one asker finds results of one type
    public <T> T find(Class<?> asker, Object given, Supplier<T> find) {
        SoftReference<Found> kept = found.get(asker);
        Found known = kept == null ? null : kept.get();
        if (known == null || !known.given.equals(given)) {
            known = new Found(given, find.get());
            found.put(asker, new SoftReference<>(known));
        }
        return (T) known.result;
    }
}
