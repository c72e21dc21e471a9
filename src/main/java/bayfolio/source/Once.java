package bayfolio.source;

import java.lang.ref.SoftReference;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What was found in something that never changes: found once, it is kept for as long as there is room, so that a program that
 * checks again after an edit need not look at all of it anew. Of each asker the last few are kept.
 */
public final class Once {
    /** As many as one asker asks for by turns: what a coach has, what of that is out of bounds, what is left for renters. */
    private static final int MOST = 4;

    // Of ten thousand coaches not everything can be kept in mind: what was asked for last goes last.
    private final Map<Class<?>, List<SoftReference<Found>>> found = new ConcurrentHashMap<>();

    private record Found(Object given, Object result) {}

    /**
     * @param given all that the result depends on besides; it is the same when it is equal
     */
    @SuppressWarnings("unchecked") // one asker finds results of one type for one thing given
    public <T> T find(Class<?> asker, Object given, Supplier<T> find) {
        for (SoftReference<Found> each : found.getOrDefault(asker, List.of())) {
            Found known = each.get();
            if (known != null && known.given.equals(given)) {
                return (T) known.result;
            }
        }
        T result = find.get();
        List<SoftReference<Found>> last = List.of(new SoftReference<>(new Found(given, result)));
        found.merge(
                asker,
                last,
                (before, now) ->
                        Stream.concat(now.stream(), before.stream()).limit(MOST).toList());
        return result;
    }
}
