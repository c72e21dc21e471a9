package bayfolio.procedure;

/** What a reader notices first, in the order in which it frightens. */
public enum Symptom {
    /** No light, nothing on 12 V. */
    DARK,
    OUTLETS,
    COLD,
    WATER,
    BEEPS,
    SMELL,
    TOILET,
    /** Slide-out, jacks, step, awning, door or lock. */
    STUCK,
    /** Fridge or air conditioner. */
    WARM,
    /** Engine and tires. */
    ROAD
}
