package bayfolio.check.procedure;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Step;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags more than seven steps in one go, or more than ten on a page, as they are on this coach. */
public final class TooManySteps implements Rule {
    private static final int MOST_OF_A_PART = 7;
    private static final int MOST_OF_A_PAGE = 10;

    @Override
    public Stream<Finding> check(Case coach) {
        return coach.procedures().stream()
                .flatMap(procedure -> procedure.pages().stream().flatMap(page -> told(procedure, page)));
    }

    private static Stream<Finding> told(Procedure procedure, List<Procedure.Part> page) {
        List<Step> steps = page.stream().flatMap(part -> part.steps().stream()).toList();
        boolean ticked = procedure.head().facts().find(Head.TICKED).orElse(false);
        return Stream.concat(
                page.stream()
                        .flatMap(part -> finding(
                                part.steps(),
                                ticked ? MOST_OF_A_PAGE : MOST_OF_A_PART,
                                part.title()
                                        .map(it -> "part `" + it + "` of " + called(procedure))
                                        .orElse(
                                                page.size() > 1
                                                        ? "the first part of " + called(procedure)
                                                        : called(procedure)),
                                "Divide it by `###` headings where the reader can rest.")
                                .stream()),
                ticked || steps.size() <= MOST_OF_A_PAGE
                        ? Stream.of()
                        : finding(
                                steps,
                                MOST_OF_A_PAGE,
                                "a page of " + called(procedure),
                                "Say where it is safe to stop, with `**Safe to stop:**` and why, and begin the next page with a"
                                        + " `###` heading and its anchor.")
                                .stream());
    }

    private static String called(Procedure procedure) {
        return procedure.form().called() + " `" + procedure.id() + "`";
    }

    private static Optional<Finding> finding(List<Step> steps, int most, String what, String mend) {
        return steps.size() <= most
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "too-many-steps",
                                steps.get(most).at(),
                                what + " has " + steps.size() + " steps on this coach; the most is " + most)
                        .mend(mend));
    }
}
