package bayfolio.measure;

/**
 * A text that is not a quantity of the scale asked for. The message is one sentence for whoever
 * wrote the text: it quotes it, and says how to mend it.
 */
public final class NotAQuantityException extends Exception {
    private static final long serialVersionUID = 1L;

    NotAQuantityException(String sentence) {
        super(sentence);
    }
}
