package bayfolio.check.layer;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Difference;
import java.util.stream.Stream;

/** Flags a fact of a coach that its model states alike: it would stay as it is when the model changes. */
public final class SaysWhatTheModelSays implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.difference().stream()
                .flatMap(difference -> difference.overrides().stream())
                .filter(Difference.Override::same)
                .map(it -> Finding.warning(
                                "says-what-the-model-says",
                                it.own().at(),
                                "`" + it.way() + "` says what the model says at "
                                        + it.below().at())
                        .mend("Take it out, so that it follows the model."));
    }
}
