package bayfolio.model;

/** A side of the coach, seen facing forward in the driver's seat. */
public enum Side {
    LEFT,
    RIGHT,
    FRONT,
    REAR,
    ROOF,
    UNDERFLOOR,
    INSIDE
}
