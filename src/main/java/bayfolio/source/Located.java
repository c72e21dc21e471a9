package bayfolio.source;

import java.util.function.Function;

/** A value with the place where it was written. */
public record Located<T>(T value, Place at) {
    public <R> Located<R> map(Function<? super T, ? extends R> change) {
        return new Located<>(change.apply(value), at);
    }
}
