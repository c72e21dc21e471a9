package bayfolio.read;

/** A file that cannot be edited as it was asked for; nothing is changed. The message says in one sentence why. */
public final class RewriteException extends Exception {
    private static final long serialVersionUID = 1L;

    RewriteException(String sentence) {
        super(sentence);
    }
}
