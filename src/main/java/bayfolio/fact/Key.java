package bayfolio.fact;

import java.util.Optional;

/**
 * A key of a record, declared once.
 *
 * @param name as written in the file, in kebab-case
 * @param meaning one sentence for the writer: what belongs here and how it is found out
 * @param judge what its figure can be; none for keys that take no figure
 * @param index among the keys of its shape, from 0
 */
public record Key<T>(
        String name, Type<T> type, Necessity necessity, String meaning, Optional<Range.Judge> judge, int index) {
    /** Whether a fact must be stated, and who reads it. */
    public enum Necessity {
        REQUIRED,
        OPTIONAL,
        /** May be stated; kept out of everything that renters read. */
        FOR_STAFF
    }

    /** What its figure can be, as declared. */
    public Optional<Range> range() {
        return judge.map(Range.Judge::range);
    }

    /** Whether it takes a day that was: one not after the day as of which the fleet is looked at. */
    public boolean past() {
        return range().stream()
                .flatMap(range -> range.hard().stream())
                .anyMatch(bounds -> bounds.most().equals(Range.AS_OF));
    }

    public boolean required() {
        return necessity == Necessity.REQUIRED;
    }

    public boolean forStaff() {
        return necessity == Necessity.FOR_STAFF;
    }

    // Two shapes may have a key of one name and type; each is a key of its own.
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
