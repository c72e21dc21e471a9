package bayfolio.prose;

import java.util.Arrays;
import java.util.Optional;

/**
 * The signal words, most severe first.
 *
 * @see <a href="https://webstore.ansi.org/standards/nema/ansiz5352022">ANSI Z535 and ISO 3864
 *     define them</a>
 */
public enum Signal {
    DANGER,
    WARNING,
    CAUTION,
    NOTICE;

    public static Optional<Signal> named(String word) {
        return Arrays.stream(values())
                .filter(signal -> signal.name().equals(word))
                .findFirst();
    }
}
