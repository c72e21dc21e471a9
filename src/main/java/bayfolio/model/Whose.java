package bayfolio.model;

import java.util.Optional;

/** For which coaches something was written, by the folder that it lies in. */
public sealed interface Whose {
    /** What lies in {@code units/shared}. */
    Whose ALL = new All();

    boolean has(Unit unit);

    /** Whether it is for coaches that have nothing but roles in common. */
    default boolean shared() {
        return equals(ALL);
    }

    record All() implements Whose {
        @Override
        public boolean has(Unit unit) {
            return true;
        }
    }

    record OfAModel(String model) implements Whose {
        @Override
        public boolean has(Unit unit) {
            return unit.model().equals(Optional.of(model));
        }
    }

    record OfACoach(String unit) implements Whose {
        @Override
        public boolean has(Unit other) {
            return other.facts().find(Unit.ID).equals(Optional.of(unit));
        }
    }
}
