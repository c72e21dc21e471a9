package bayfolio.start;

import java.io.Serial;

/** Why something cannot begin, in a sentence for whoever called. */
public final class StartException extends Exception {
    @Serial
    private static final long serialVersionUID = 1;

    StartException(String message) {
        super(message);
    }
}
