package bayfolio.procedure;

/** Who may do a procedure. */
public enum Who {
    RENTER,
    /** The renter, only while talking with staff. */
    ON_CALL,
    STAFF,
    /** A gas seller, a recovery firm, a licensed electrician; the renter prepares. */
    ATTENDANT,
    EVERYONE;

    /** Whether renters read it. */
    public boolean forRenters() {
        return this != STAFF;
    }
}
