package bayfolio.reckon;

import java.util.function.Function;

/**
 * A row of a table of figures.
 *
 * @param id its table and its name there: {@code batteries/agm.usable}
 * @param told the name, in the catalog below {@code source}, of what readers are told of its source
 */
public record Published<T>(String id, T value, Status status, String told) {
    /** How well a figure is known. */
    public enum Status {
        /** Seen in its source. */
        PUBLISHED,
        /** Seen where somebody quotes its source. */
        REPORTED,
        /** Common practice, no source. */
        PRACTICE,
        /** Chosen by us. */
        OWN,
        /** From memory, and to be checked. */
        MEMORY
    }

    /** Whether nobody outside can be named for it: readers are told that it is taken for planning, staff are told why. */
    public boolean unverified() {
        return status == Status.OWN || status == Status.MEMORY;
    }

    public <R> Published<R> map(Function<T, R> change) {
        return new Published<>(id, change.apply(value), status, told);
    }
}
