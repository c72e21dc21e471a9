package bayfolio.procedure;

/** What a trouble guide is about, in the order in which readers look for it. */
public enum Topic {
    POWER,
    WATER,
    HEAT,
    /** Slide-outs, jacks, step, awning, doors and locks. */
    BODY,
    /** Engine, tires and what happens on the move. */
    ROAD
}
