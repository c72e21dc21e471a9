package bayfolio.prose;

import java.util.stream.Stream;

/** What the words under a label of a step are. All but facts are spelt alike in every script, whatever its language. */
public enum StepLabel {
    /** What the coach has to say of it, under a label of the writer's own. */
    FACT(""),
    /** The look that follows. */
    THEN("Then"),
    /** How long it takes. */
    TAKES("Takes"),
    /** What a second person does. */
    HELPER("Helper"),
    /** At which sight one goes no further. */
    STOP("Stop if");

    private final String written;

    StepLabel(String written) {
        this.written = written;
    }

    public static StepLabel of(String label) {
        return Stream.of(values())
                .filter(it -> it.written.equals(label))
                .findFirst()
                .orElse(FACT);
    }
}
