package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import java.util.stream.Stream;

/** Flags an item on board whose place is not told. */
public final class ItemInNoPlace implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().items().stream()
                .filter(item -> item.spot()
                        .filter(spot -> spot.in().isPresent()
                                || spot.where().isPresent()
                                || spot.side().isPresent())
                        .isEmpty())
                .map(item -> Finding.warning(
                                "item-in-no-place", item.at(), "nothing tells where item `" + item.id() + "` is kept")
                        .mend("Name its compartment in `in`, or its place in `where`."));
    }
}
