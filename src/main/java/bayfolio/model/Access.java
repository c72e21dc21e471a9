package bayfolio.model;

/**
 * Who may open or work a thing. Beside any of these it may have to be reachable by everybody in an
 * emergency.
 */
public enum Access {
    /** The renter, any time the coach is parked. */
    FREE,
    /** The renter, for a named procedure; then shut again. */
    TASK,
    /** The renter while staff are on the phone. */
    ON_CALL,
    /** Never a renter. */
    STAFF
}
