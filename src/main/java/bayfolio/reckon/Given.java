package bayfolio.reckon;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import java.util.function.Function;

/** A figure that a question begins with, and where it came from. */
public record Given<T>(T value, Origin origin) {
    /** A fact that is there. */
    public static <T> Given<T> stated(Facts facts, Key<T> key) {
        return new Given<>(facts.get(key), new Origin.Stated(facts, key));
    }

    public static <T> Given<T> usual(Published<T> figure) {
        return new Given<>(figure.value(), new Origin.Usual(figure));
    }

    /** As stated, or else as is usual. */
    public static <T> Given<T> of(Facts facts, Key<T> key, Published<T> usual) {
        return facts.has(key) ? stated(facts, key) : usual(usual);
    }

    public <R> Given<R> map(Function<T, R> change) {
        return new Given<>(change.apply(value), origin);
    }

    public boolean isStated() {
        return origin instanceof Origin.Stated;
    }
}
