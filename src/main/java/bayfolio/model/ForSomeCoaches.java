package bayfolio.model;

import java.util.Optional;

/** A value of a country that may hold for coaches of some weight or length only. */
public interface ForSomeCoaches extends Backed {
    ForCoaches forCoaches();

    /** Whether it holds for a coach; empty where that hangs on a weight that is not stated. */
    default Optional<Boolean> holds(Unit unit) {
        return forCoaches().holds(facts(), unit);
    }
}
