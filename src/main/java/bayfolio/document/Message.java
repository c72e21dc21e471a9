package bayfolio.document;

/** A message that staff send to a renter, in the order in which they are sent; the last three when there is reason to. */
public enum Message {
    OFFER,
    CONFIRMATION,
    WEEK_BEFORE,
    DAY_BEFORE,
    AFTER_HOURS,
    FIRST_EVENING,
    DAY_BEFORE_RETURN,
    /** Where frost or a storm is coming. */
    WEATHER,
    /** The answer to whoever says that something does not work: one guide, never the whole book. */
    FAULT,
    /** Whatever is asked for. */
    ASKED
}
