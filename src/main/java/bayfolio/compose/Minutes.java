package bayfolio.compose;

import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import java.util.List;

/**
 * How long a procedure takes who does it for the first time. Where nobody has said it, three quarters of a minute a step
 * are taken: common practice, no source, and for planning only.
 */
final class Minutes {
    private static final double A_STEP = 0.75;

    /** Nobody plans more finely. */
    private static final List<Integer> SAID =
            List.of(1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60, 75, 90, 120);

    private Minutes() {}

    static int of(Procedure procedure) {
        return procedure.head().facts().find(Head.MINUTES).orElseGet(() -> {
            double reckoned = procedure.steps().count() * A_STEP;
            return SAID.stream().filter(each -> each >= reckoned).findFirst().orElse(120);
        });
    }
}
