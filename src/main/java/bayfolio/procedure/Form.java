package bayfolio.procedure;

import bayfolio.fact.Type;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a script is: something to do, the way from a symptom to its remedy, or the questions of a part of the trip. */
public enum Form {
    PROCEDURE("procedures", "procedure", List.of("Done when", "If not")),
    TROUBLE("trouble", "trouble guide", List.of("If nothing helped")),
    /** Has no steps; each of its sections is a question, answered by links. */
    STAGE("stages", "stage page", List.of()),
    /** Has no page of its own: its sections stand on pages that are put together of what a coach has. */
    EQUIPMENT("equipment", "equipment file", List.of());

    private final String folder;
    private final String name;
    private final List<String> endings;

    Form(String folder, String name, List<String> endings) {
        this.folder = folder;
        this.name = name;
        this.endings = endings;
    }

    /** Its folder, beside that of the shared ones and in that of a coach. */
    public String folder() {
        return folder;
    }

    /** As findings call it. */
    public String called() {
        return name;
    }

    public boolean hasSteps() {
        return this == PROCEDURE || this == TROUBLE;
    }

    /** The sections that it ends with, each of which it must have. One without steps may have any. */
    public List<String> endings() {
        return endings;
    }

    /** What references to it begin with. */
    public String scheme() {
        return Type.word(this);
    }

    /** The one with steps that references of a scheme lead to. */
    public static Optional<Form> ofSteps(String scheme) {
        return Stream.of(values())
                .filter(form -> form.hasSteps() && form.scheme().equals(scheme))
                .findFirst();
    }
}
