package bayfolio.document;

/** Who reads a part of a handbook. A handbook is composed once; a reader's copy is what is left of it. */
public enum Audience {
    EVERYBODY,
    /** Where staff read the same in other words. */
    RENTERS,
    STAFF;

    /** Whether a reader, who is {@link #RENTERS} or {@link #STAFF}, gets to see it. */
    public boolean includes(Audience reader) {
        return this == EVERYBODY || this == reader;
    }

    /** Of what is read by one alone, a part is read by no other. */
    Audience within(Audience whole) {
        return this == EVERYBODY ? whole : this;
    }

    public static Audience staffIf(boolean forStaff) {
        return forStaff ? STAFF : EVERYBODY;
    }
}
