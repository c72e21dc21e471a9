package bayfolio.source;

import java.util.function.Function;

/**
 * A value with the place where it was written.
 *
 * @param written its text there, where that tells more than the value: the unit and the digits of a measure; else empty
 */
public record Located<T>(T value, Place at, String written) {
    public Located(T value, Place at) {
        this(value, at, "");
    }

    public <R> Located<R> map(Function<? super T, ? extends R> change) {
        return new Located<>(change.apply(value), at, written);
    }
}
