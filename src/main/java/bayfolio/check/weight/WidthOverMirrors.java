package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.model.Region;
import bayfolio.model.Size;
import java.util.stream.Stream;

/** Flags a width over the mirrors that is smaller than the width without them. */
public final class WidthOverMirrors implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Region region = coach.unit().region();
        Facts size = coach.unit().size().facts();
        return size
                .find(Size.WIDTH)
                .flatMap(width -> size.find(Size.WIDTH_MIRRORS)
                        .filter(mirrors -> mirrors.value() < width.value())
                        .map(mirrors -> Finding.error(
                                        "width-over-mirrors",
                                        size.at(Size.WIDTH_MIRRORS),
                                        "the coach is %s wide over the mirrors and %s without them"
                                                .formatted(mirrors.in(region.first()), width.in(region.first())))
                                .mend("Measure both again.")))
                .stream();
    }
}
