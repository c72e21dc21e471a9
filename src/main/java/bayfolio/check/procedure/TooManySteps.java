package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Step;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Flags more than seven steps in one go, or more than ten on a page, as they are on this coach. A page that is ticked off has
 * what the coach has, one kind after the other, so that there the steps of each file count by themselves.
 */
public final class TooManySteps implements Rule {
    private static final int MOST_OF_A_PART = 7;
    private static final int MOST_OF_A_PAGE = 10;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.procedures().stream()
                .flatMap(procedure -> procedure.pages().stream().flatMap(page -> told(procedure, page)));
    }

    private static Stream<Finding> told(Procedure procedure, List<Procedure.Part> page) {
        boolean ticked = procedure.head().facts().find(Head.TICKED).orElse(false);
        Stream<Finding> parts = page.stream()
                .flatMap(part -> (ticked ? byFile(part.steps()) : Stream.of(part.steps()))
                        .flatMap(steps -> more(
                                ticked ? MOST_OF_A_PAGE : MOST_OF_A_PART,
                                steps,
                                of(part, page) + called(procedure),
                                "Divide it by `###` headings where the reader can rest.")));
        return ticked
                ? parts
                : Stream.concat(
                        parts,
                        more(
                                MOST_OF_A_PAGE,
                                page.stream()
                                        .flatMap(part -> part.steps().stream())
                                        .toList(),
                                "a page of " + called(procedure),
                                "Say where it is safe to stop, with `**Safe to stop:**` and why, and begin the next page with a"
                                        + " `###` heading and its anchor."));
    }

    private static Stream<List<Step>> byFile(List<Step> steps) {
        return steps.stream()
                .collect(Collectors.groupingBy(step -> step.at().file(), LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream();
    }

    private static String of(Procedure.Part part, List<Procedure.Part> page) {
        return part.title().map(it -> "part `" + it + "` of ").orElse(page.size() > 1 ? "the first part of " : "");
    }

    private static String called(Procedure procedure) {
        return procedure.form().called() + " `" + procedure.id() + "`";
    }

    private static Stream<Finding> more(int most, List<Step> steps, String what, String mend) {
        return steps.size() <= most
                ? Stream.of()
                : Stream.of(Finding.warning(
                                "too-many-steps",
                                steps.get(most).at(),
                                what + " has " + steps.size() + " steps on this coach; the most is " + most)
                        .mend(mend));
    }
}
