package bayfolio.procedure;

import bayfolio.finding.Finding;
import bayfolio.model.Feature;
import bayfolio.model.Unit;
import bayfolio.source.SourceFile;
import bayfolio.template.Template;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * A procedure or trouble guide as written, before it is filled in for a coach.
 *
 * @param body the Markdown below the head, with line breaks as {@code \n}
 * @param template the body, compiled once for all coaches
 * @param firstLine the line of the file that the body begins on
 * @param passages of the body, in their order, those in sections that a coach leaves out too
 * @param unit the coach whose folder it is in; empty for a shared one
 */
public record Script(
        Form form,
        Head head,
        Condition when,
        SourceFile file,
        String body,
        int firstLine,
        Template template,
        List<Passage> passages,
        Optional<String> unit) {
    /** A malformed body is told here, once, and not again for each coach. */
    public static Script of(
            Form form,
            Head head,
            Condition when,
            SourceFile file,
            String body,
            int firstLine,
            Optional<String> unit,
            Consumer<Finding> findings) {
        Template template = Template.compile(
                file,
                body,
                firstLine,
                Template.Escape.MARKDOWN,
                complaint -> findings.accept(Filling.finding(complaint)));
        return new Script(form, head, when, file, body, firstLine, template, Passage.of(file, body, firstLine), unit);
    }

    public String id() {
        return head.id();
    }

    /** A script with an unread condition applies to nobody; the finding about it says why. */
    public boolean appliesTo(Unit coach) {
        return appliesTo(coach, Feature.all(coach));
    }

    boolean appliesTo(Unit coach, Set<Feature> features) {
        return unit.map(coach.id()::equals).orElse(true) && when.holds(features);
    }
}
