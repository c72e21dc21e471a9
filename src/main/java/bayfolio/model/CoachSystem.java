package bayfolio.model;

/** What on a coach belongs together, for its readers: each has one word, one color and one symbol everywhere. */
public enum CoachSystem {
    POWER,
    WATER,
    WASTE,
    GAS,
    HEAT,
    ROAD,
    OUTSIDE,
    INSIDE
}
