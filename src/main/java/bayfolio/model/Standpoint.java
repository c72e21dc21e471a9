package bayfolio.model;

/** Where one stands for something. */
public enum Standpoint {
    INSIDE,
    OUTSIDE,
    DRIVER_SEAT
}
