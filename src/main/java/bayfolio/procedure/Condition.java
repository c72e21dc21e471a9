package bayfolio.procedure;

import bayfolio.fact.UnreadException;
import bayfolio.model.Feature;
import bayfolio.model.Features;

/** When a procedure applies: {@code black-tank and not macerator}. */
public sealed interface Condition {
    boolean holds(Features features);

    record Always() implements Condition {
        @Override
        public boolean holds(Features features) {
            return true;
        }
    }

    /** One that could not be read: nobody knows where it holds. */
    record Unread() implements Condition {
        @Override
        public boolean holds(Features features) {
            throw new UnreadException("a condition could not be read");
        }
    }

    record Has(Feature feature) implements Condition {
        @Override
        public boolean holds(Features features) {
            return features.contains(feature);
        }
    }

    record Not(Condition condition) implements Condition {
        @Override
        public boolean holds(Features features) {
            return !condition.holds(features);
        }
    }

    record And(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(Features features) {
            return left.holds(features) && right.holds(features);
        }
    }

    record Or(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(Features features) {
            return left.holds(features) || right.holds(features);
        }
    }
}
