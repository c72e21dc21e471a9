package bayfolio.template;

import bayfolio.source.Place;
import java.util.List;

/**
 * Something wrong with a template or with what it asks for.
 *
 * @param name the name asked for; empty where the template itself is malformed
 * @param message one sentence without a full stop
 * @param near names that were probably meant
 */
public record TemplateProblem(Kind kind, Place at, String name, String message, List<String> near, String mend) {
    /** What is wrong. */
    public enum Kind {
        /** An unclosed section, a crossed one, a tag that is not allowed. */
        MALFORMED,
        /** There is no such name. */
        UNKNOWN_NAME,
        /** The name exists and has nothing behind it here. */
        NOTHING_THERE,
        /** The name exists, and this text may not ask for it. */
        WITHHELD
    }

    public TemplateProblem {
        near = List.copyOf(near);
    }
}
