package bayfolio.survey;

/**
 * Why a fact is looked up.
 *
 * @param of what cannot be told without it, or since when nobody has looked; may be empty
 */
public record Why(Reason reason, String of) {
    /** Each has a message below {@code survey.why}. */
    public enum Reason {
        /** A step wants it. */
        PROCEDURE,
        /** A question of renters has no answer without it. */
        QUESTION,
        /** Whoever uses what the coach has must know it. */
        FEATURE,
        /** No record of its kind is without it. */
        REQUIRED,
        /** It is each coach's own. */
        OWN,
        /** Nobody has looked for long. */
        OLD,
        /** It was taken over from elsewhere. */
        TO_CONFIRM
    }
}
