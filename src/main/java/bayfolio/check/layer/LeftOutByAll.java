package bayfolio.check.layer;

import bayfolio.check.FleetRule;
import bayfolio.finding.Finding;
import bayfolio.model.Difference;
import bayfolio.model.Fleet;
import bayfolio.procedure.Library;
import java.util.stream.Stream;

/** Flags something of a model that each of its coaches leaves out. */
public final class LeftOutByAll implements FleetRule {
    @Override
    public Stream<Finding> check(Fleet fleet, Library library) {
        return Sisters.of(fleet).stream().flatMap(LeftOutByAll::check);
    }

    private static Stream<Finding> check(Sisters sisters) {
        return sisters.alike(
                difference -> difference.leftOut().stream(),
                Difference.LeftOut::way,
                (way, all) -> all.size() == sisters.size()
                        ? Stream.of(Finding.warning(
                                        "left-out-by-all",
                                        all.get(0).below().at(),
                                        sisters.size() == 1
                                                ? "the one coach of this model leaves `" + way + "` out"
                                                : "all " + sisters.size() + " coaches of this model leave `" + way
                                                        + "` out")
                                .mend("Take it out here, and out of the lists of the coaches.")
                                .on(sisters.ids()))
                        : Stream.empty());
    }
}
