package bayfolio.publish;

/** Nothing was published; the message says in one sentence why, and what to do. */
public final class PublishException extends Exception {
    private static final long serialVersionUID = 1L;

    public PublishException(String sentence) {
        super(sentence);
    }
}
