package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Form;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.prose.Target;
import java.util.stream.Stream;

/** Flags a trouble guide whose last way out is nobody's phone. */
public final class GuideWithoutCall implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.procedures().stream()
                .filter(procedure -> procedure.form() == Form.TROUBLE)
                .filter(guide -> !guide.endings().isEmpty() && !calls(guide))
                .map(guide -> Finding.error(
                                "guide-without-call",
                                guide.head().facts().at(),
                                "trouble guide `" + guide.id() + "` ends, and nobody is called")
                        .mend(
                                "Say below `## If nothing helped` whom to call, such as `[](phone:hours)`, and what to have"
                                        + " ready."));
    }

    private static boolean calls(Procedure guide) {
        return guide.endings().stream()
                .flatMap(ending -> ending.text().stream())
                .flatMap(Block::links)
                .map(Inline.Link::target)
                .anyMatch(Target.OfPhone.class::isInstance);
    }
}
