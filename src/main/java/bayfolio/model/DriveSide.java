package bayfolio.model;

/** The side that the driver sits on, seen facing forward. */
public enum DriveSide {
    LEFT,
    RIGHT
}
