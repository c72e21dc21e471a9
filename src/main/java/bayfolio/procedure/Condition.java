package bayfolio.procedure;

import bayfolio.model.Feature;
import java.util.Set;

/** When a procedure applies: {@code black-tank and not macerator}. */
public sealed interface Condition {
    boolean holds(Set<Feature> features);

    record Always() implements Condition {
        @Override
        public boolean holds(Set<Feature> features) {
            return true;
        }
    }

    /** Of a condition that could not be read. */
    record Never() implements Condition {
        @Override
        public boolean holds(Set<Feature> features) {
            return false;
        }
    }

    record Has(Feature feature) implements Condition {
        @Override
        public boolean holds(Set<Feature> features) {
            return features.contains(feature);
        }
    }

    record Not(Condition condition) implements Condition {
        @Override
        public boolean holds(Set<Feature> features) {
            return !condition.holds(features);
        }
    }

    record And(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(Set<Feature> features) {
            return left.holds(features) && right.holds(features);
        }
    }

    record Or(Condition left, Condition right) implements Condition {
        @Override
        public boolean holds(Set<Feature> features) {
            return left.holds(features) || right.holds(features);
        }
    }
}
