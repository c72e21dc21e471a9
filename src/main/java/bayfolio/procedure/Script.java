package bayfolio.procedure;

import bayfolio.source.SourceFile;
import java.util.Optional;

/**
 * A procedure as written, before it is filled in for a coach.
 *
 * @param body the Markdown below the head, with line breaks as {@code \n}
 * @param firstLine the line of the file that the body begins on
 * @param unit the coach whose folder it is in; empty for a shared one
 */
public record Script(Head head, Condition when, SourceFile file, String body, int firstLine, Optional<String> unit) {
    public String id() {
        return head.id();
    }

    /** A script with an unread condition applies to nobody; the finding about it says why. */
    public boolean appliesTo(bayfolio.model.Unit coach) {
        return unit.map(coach.id()::equals).orElse(true) && when.holds(coach);
    }
}
