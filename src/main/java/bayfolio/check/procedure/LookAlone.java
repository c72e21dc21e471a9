package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Step;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Flags a step that is a mere look: nothing is done in it, and nothing hangs on what one sees. Of a list that is ticked
 * off each line may be one.
 */
public final class LookAlone implements Rule {
    /** Looks that are acts: something is looked up, or read out so that one remembers it. */
    private static final Pattern LOOK = Pattern.compile(
            "^\\s*(?:See|Look(?! up)|Watch|Check|Know|Wait|Listen|Feel|Smell|Make sure|Notice|Expect|Read(?!.* aloud))\\b");

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.procedures().stream()
                .filter(procedure -> !procedure.head().facts().find(Head.TICKED).orElse(false))
                .flatMap(Procedure::steps)
                .filter(LookAlone::looks)
                .filter(step -> step.answers().findAny().isEmpty())
                .map(step -> Finding.warning(
                                "look-alone", step.at(), "this step is a look, and nothing comes of what one sees")
                        .mend(
                                "Say it with the act that it follows, as `**Then:** what one sees`, or what to do if it is"
                                        + " otherwise: `- **It is dark:** call us.`"));
    }

    private static boolean looks(Step step) {
        return !step.text().isEmpty()
                && step.text().get(0) instanceof Block.Paragraph paragraph
                && LOOK.matcher(Inline.plain(paragraph.text())).find();
    }
}
