package bayfolio.model;

import bayfolio.fact.Described;

/** A value of a country. What is only remembered never reaches a renter. */
public interface Backed extends Described {
    Backing backing();

    default boolean fromMemory() {
        return facts().find(backing().fromMemory()).orElse(false);
    }

    @Override
    default boolean forStaff() {
        return fromMemory();
    }
}
