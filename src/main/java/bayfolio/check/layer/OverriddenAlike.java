package bayfolio.check.layer;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Difference;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import bayfolio.source.Steps;
import java.util.List;
import java.util.stream.Stream;

/** Flags a fact of a model of which nearly all of its coaches say the same other thing: that belongs in the model. */
public final class OverriddenAlike implements FleetRule {
    /** Fourteen of fifteen, nine of ten, all of fewer. */
    private static final double NEARLY_ALL = 0.9;

    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Sisters.of(fleet).stream().flatMap(OverriddenAlike::check);
    }

    private record Same(Steps way, String value) {}

    private static Stream<Finding> check(Sisters sisters) {
        return sisters.alike(
                difference -> difference.overrides().stream().filter(it -> !it.same()),
                it -> new Same(it.way(), it.own().value()),
                (same, all) -> all.size() >= 2 && all.size() >= NEARLY_ALL * sisters.size()
                        ? Stream.of(told(same, all, sisters))
                        : Stream.empty());
    }

    private static Finding told(Same same, List<Difference.Override> all, Sisters sisters) {
        return Finding.warning(
                        "overridden-alike",
                        all.get(0).below().at(),
                        all.size() + " of " + sisters.size() + " coaches of this model say the same other thing of `"
                                + same.way + "`, first at " + all.get(0).own().at())
                .mend("Write here what they say and take it out there; a coach for which it is not so says so itself.")
                .on(sisters.ids());
    }
}
