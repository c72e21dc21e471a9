package bayfolio.source;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Worked out when somebody first asks for it, once for all who do. */
public final class Lazy<T> implements Supplier<T> {
    private final Supplier<T> work;
    private @Nullable T result;

    public Lazy(Supplier<T> work) {
        this.work = work;
    }

    @Override
    public synchronized T get() {
        T known = result;
        if (known == null) {
            known = work.get();
            result = known;
        }
        return known;
    }
}
