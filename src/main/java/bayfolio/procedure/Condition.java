package bayfolio.procedure;

import bayfolio.model.Feature;
import bayfolio.model.Unit;

/** When a procedure applies: {@code black-tank and not macerator}. */
public sealed interface Condition {
    boolean holds(Unit unit);

    record Always() implements Condition {
        @Override
        public boolean holds(Unit unit) {
            return true;
        }
    }

    /** Of a condition that could not be read. */
    record Never() implements Condition {
        @Override
        public boolean holds(Unit unit) {
            return false;
        }
    }

    record Has(Feature feature) implements Condition {
        @Override
        public boolean holds(Unit unit) {
            return feature.of(unit);
        }
    }

    record Not(Condition condition) implements Condition {
        @Override
        public boolean holds(Unit unit) {
            return !condition.holds(unit);
        }
    }

    record And(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(Unit unit) {
            return left.holds(unit) && right.holds(unit);
        }
    }

    record Or(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(Unit unit) {
            return left.holds(unit) || right.holds(unit);
        }
    }
}
