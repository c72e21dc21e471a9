package bayfolio.document;

/** What must be so of a booking, that a link is sent with a message. */
public enum SentWhen {
    /** The site has a smaller supply than the coach is built for. */
    SMALLER_SUPPLY,
    /** The tanks are full, or empty, on the second day with so many people. */
    MANY_PEOPLE,
    /** The renter has been on the coach before. */
    REPEAT,
    /** The renter has not. */
    FIRST_TRIP,
    /** It may freeze between pickup and return. */
    FROST,
    /** Somebody is there at the return. */
    STAFFED_RETURN,
    /** Nobody is. */
    AFTER_HOURS_RETURN
}
