package bayfolio.survey;

/** A file of which nothing can be taken. The message says in one sentence why. */
public final class TakeException extends Exception {
    private static final long serialVersionUID = 1L;

    TakeException(String sentence) {
        super(sentence);
    }
}
