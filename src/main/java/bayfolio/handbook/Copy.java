package bayfolio.handbook;

/** For whom a handbook is made: the renters' copy is public, the staff's holds what they need besides. */
public enum Copy {
    RENTERS,
    STAFF
}
