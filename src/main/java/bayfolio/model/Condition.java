package bayfolio.model;

import bayfolio.fact.UnreadException;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * When a procedure applies: {@code black-tank and not macerator}; or what is asked of coaches in the same words.
 *
 * @param <L> what a single word of it stands for: of a procedure a feature
 */
public sealed interface Condition<L> {
    /** @param had whether what a word stands for is there */
    boolean holds(Predicate<L> had);

    /** What must be there, or may be, in the order of the words; nothing that must not be there. */
    default List<L> wanted() {
        return leaves(true).toList();
    }

    /** @param wanted whether those that must be there are meant, or those that must not */
    Stream<L> leaves(boolean wanted);

    record Always<L>() implements Condition<L> {
        @Override
        public boolean holds(Predicate<L> had) {
            return true;
        }

        @Override
        public Stream<L> leaves(boolean wanted) {
            return Stream.of();
        }
    }

    /** One that could not be read: nobody knows where it holds. */
    record Unread<L>() implements Condition<L> {
        @Override
        public boolean holds(Predicate<L> had) {
            throw new UnreadException("a condition could not be read");
        }

        @Override
        public Stream<L> leaves(boolean wanted) {
            return Stream.of();
        }
    }

    record Has<L>(L what) implements Condition<L> {
        @Override
        public boolean holds(Predicate<L> had) {
            return had.test(what);
        }

        @Override
        public Stream<L> leaves(boolean wanted) {
            return wanted ? Stream.of(what) : Stream.of();
        }
    }

    record Not<L>(Condition<L> condition) implements Condition<L> {
        @Override
        public boolean holds(Predicate<L> had) {
            return !condition.holds(had);
        }

        @Override
        public Stream<L> leaves(boolean wanted) {
            return condition.leaves(!wanted);
        }
    }

    record And<L>(Condition<L> left, Condition<L> right) implements Condition<L> {
        @Override
        public boolean holds(Predicate<L> had) {
            return left.holds(had) && right.holds(had);
        }

        @Override
        public Stream<L> leaves(boolean wanted) {
            return Stream.concat(left.leaves(wanted), right.leaves(wanted));
        }
    }

    record Or<L>(Condition<L> left, Condition<L> right) implements Condition<L> {
        @Override
        public boolean holds(Predicate<L> had) {
            return left.holds(had) || right.holds(had);
        }

        @Override
        public Stream<L> leaves(boolean wanted) {
            return Stream.concat(left.leaves(wanted), right.leaves(wanted));
        }
    }
}
