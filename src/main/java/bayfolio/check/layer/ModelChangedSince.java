package bayfolio.check.layer;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Difference;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags what a coach says otherwise than its model while nobody has said since the model changed that it is still so: the model's
 * valve is new, this coach still has the old one.
 */
public final class ModelChangedSince implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.difference().stream()
                .flatMap(difference -> difference.overrides().stream())
                .filter(it -> !it.same())
                .flatMap(it -> check(it, coach.unit().id()).stream());
    }

    private static Optional<Finding> check(Difference.Override it, String unit) {
        String confirm = "run `bayfolio confirm " + unit + "`";
        if (it.said().isEmpty()) {
            return Optional.of(Finding.warning(
                            "override-not-confirmed",
                            it.own().at(),
                            "nothing keeps what the model said when `" + it.way() + "` was written")
                    .mend("To be told when the model changes, " + confirm + "."));
        }
        return it.said().get().value().equals(it.digest())
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "model-changed-since",
                                it.own().at(),
                                "the model has changed since `" + it.way() + "` was written; it says now `"
                                        + brief(it.below().value()) + "`, at "
                                        + it.below().at())
                        .mend("If what stands here is still true, " + confirm + "; if not, take it out."));
    }

    /** Enough of it to know it by. */
    private static String brief(String value) {
        return value.length() > 60 ? value.substring(0, 57) + "..." : value;
    }
}
