package bayfolio.fact;

/**
 * Somebody asked for a fact that is written and could not be read, or that must be stated and is not. That it is so has
 * been told; what it would say nobody knows, so who asks ends the judgement in which it was asked for. Such a judgement is
 * no fault and is thrown away in silence.
 */
public final class UnreadException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UnreadException(String message) {
        // Thrown at every question about the fact; nobody looks at the stack.
        super(message, null, false, false);
    }

    /** Carries a judgement on up to where it asks for what could not be read. */
    public static void upTo(Runnable judgement) {
        try {
            judgement.run();
        } catch (UnreadException nobodyKnows) {
            // The rest depends on it.
        }
    }
}
