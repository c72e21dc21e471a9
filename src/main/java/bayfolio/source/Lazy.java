package bayfolio.source;

import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Worked out when somebody first asks for it, once for all who do. */
public final class Lazy<T> implements Supplier<T> {
    /** Let go when it is done, with all that it holds. */
    private @Nullable Supplier<T> work;

    private @Nullable T result;

    public Lazy(Supplier<T> work) {
        this.work = work;
    }

    @Override
    public synchronized T get() {
        T known = result;
        if (known == null) {
            known = Objects.requireNonNull(work).get();
            result = known;
            work = null;
        }
        return known;
    }
}
