package bayfolio.source;

import java.lang.ref.SoftReference;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/**
 * What was found in something that never changes: found once, it is kept for as long as there is room, so that a program that
 * checks again after an edit need not look at all of it anew. Who finds is handed all that a result depends on and has
 * nothing of its own, so nothing can be forgotten. Of each the last results are kept.
 *
 * @param <S> what it is found in
 */
public final class Once<S> {
    /** As many as a fleet has models, by whose facts most texts come out alike. */
    private static final int MOST = 16;

    // Of ten thousand coaches not everything can be kept in mind: what was asked for last goes last.
    private final Map<Object, List<SoftReference<Found>>> found = new ConcurrentHashMap<>();

    private record Found(Object given, Object result) {}

    /**
     * @param given what the result depends on besides; it is the same when it is equal
     * @param find knows its results by itself: each place in the code that finds something has its own
     * @throws IllegalArgumentException when it holds something that was not given
     */
    @SuppressWarnings("unchecked") // who finds has results of one type
    public <G, T> T find(S subject, G given, BiFunction<? super S, ? super G, T> find) {
        List<SoftReference<Found>> known = found.getOrDefault(find, List.of());
        for (SoftReference<Found> each : known) {
            Found one = each.get();
            if (one != null && one.given.equals(given)) {
                return (T) one.result;
            }
        }
        if (find.getClass().getDeclaredFields().length > 0) {
            throw new IllegalArgumentException("what a result depends on is given, not held: " + find);
        }
        T result = find.apply(subject, given);
        found.merge(
                find,
                List.of(new SoftReference<>(new Found(given, result))),
                (before, now) -> Stream.concat(now.stream(), before.stream().filter(each -> each.get() != null))
                        .limit(MOST)
                        .toList());
        return result;
    }
}
