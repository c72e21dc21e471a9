package bayfolio.explain;

/** Of which case a page is, so that what its readers vary begins with that. */
public enum Begin {
    /** As the coach usually is. */
    USUAL,
    /** On an outlet smaller than its own. */
    SMALLER_OUTLET,
    FROST
}
