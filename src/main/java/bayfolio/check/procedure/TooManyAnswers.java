package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Form;
import bayfolio.procedure.Procedure;
import java.util.stream.Stream;

/** Flags a step of a procedure that can go wrong in more than two ways: that is a trouble guide. */
public final class TooManyAnswers implements Rule {
    private static final int MOST = 2;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.procedures().stream()
                .filter(procedure -> procedure.form() == Form.PROCEDURE)
                .flatMap(Procedure::steps)
                .filter(step -> step.answers().count() > MOST)
                .map(step -> Finding.warning(
                                "too-many-answers",
                                step.at(),
                                "this step has " + step.answers().count()
                                        + " ways in which it may come out on this coach; the most is " + MOST)
                        .mend("Keep the two likeliest, and refer to a trouble guide for the others."));
    }
}
