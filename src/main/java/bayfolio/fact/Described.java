package bayfolio.fact;

/** A record made of the facts that a description states. */
public interface Described {
    Facts facts();

    /** Whether renters never hear of it. */
    default boolean forStaff() {
        return false;
    }
}
