package bayfolio.procedure;

import java.util.Optional;
import java.util.stream.Stream;

/** Labels that every script spells alike, whatever its language: they say what a step's words are. */
public enum StepMark {
    /** The look that follows. */
    THEN("Then"),
    /** How long it takes. */
    TAKES("Takes"),
    /** What a second person does. */
    HELPER("Helper"),
    /** At which sight one goes no further. */
    STOP("Stop if");

    private final String written;

    StepMark(String written) {
        this.written = written;
    }

    public static Optional<StepMark> of(String label) {
        return Stream.of(values()).filter(mark -> mark.written.equals(label)).findFirst();
    }
}
