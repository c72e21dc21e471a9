package bayfolio.check.procedure;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import java.util.stream.Stream;

/**
 * Flags more than ten steps in one go: in a procedure, or in each of the parts that it is divided
 * into.
 */
public final class TooManySteps implements Rule {
    private static final int MOST = 10;

    @Override
    public Stream<Finding> check(Case coach) {
        return coach.procedures().stream()
                .flatMap(
                        procedure -> procedure.parts().stream()
                                .filter(part -> part.steps().size() > MOST)
                                .map(
                                        part -> Finding.warning(
                                                        "too-many-steps",
                                                        part.steps().get(MOST).at(),
                                                        part.title()
                                                                        .map(it -> "part `" + it + "` of ")
                                                                        .orElse("")
                                                                + "procedure `"
                                                                + procedure.id()
                                                                + "` has "
                                                                + part.steps().size()
                                                                + " steps on this coach; the most is "
                                                                + MOST)
                                                .mend(
                                                        "Divide it by `###` headings where the reader can rest, or make two procedures of it.")));
    }
}
