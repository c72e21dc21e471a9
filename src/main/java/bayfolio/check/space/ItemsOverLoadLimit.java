package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Compartment;
import bayfolio.model.Item;
import bayfolio.model.Region;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a compartment whose own items, as far as their weight is stated, weigh more than its floor may carry. */
public final class ItemsOverLoadLimit implements Rule {
    /** Pounds that add up to the limit may miss it by the last digit once they are kilograms. */
    private static final double ROUNDING_KILOGRAMS = 1e-6;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().compartments().stream().flatMap(compartment -> check(compartment, coach).stream());
    }

    private static Optional<Finding> check(Compartment compartment, CheckedCoach coach) {
        List<Item> items = coach.unit().items().stream()
                .filter(item -> item.spot()
                        .flatMap(Spot::in)
                        .filter(compartment.id()::equals)
                        .isPresent())
                .filter(item -> item.facts().has(Item.WEIGHT))
                .toList();
        Kilograms all = new Kilograms(
                items.stream().mapToDouble(ItemsOverLoadLimit::kilograms).sum());
        Region region = coach.unit().region();
        return compartment
                .facts()
                .find(Compartment.LOAD_LIMIT)
                .filter(limit -> all.value() > limit.value() + ROUNDING_KILOGRAMS)
                .map(limit -> Finding.error(
                                "items-over-load-limit",
                                compartment.facts().at(Compartment.LOAD_LIMIT),
                                "compartment `" + compartment.id() + "` may carry " + limit.in(region.first())
                                        + "; stowed in it are " + all.in(region.first()) + ": "
                                        + String.join(
                                                ", ",
                                                items.stream().map(Thing::id).toList()))
                        .mend("Stow some of it elsewhere, or correct a weight or the limit."));
    }

    private static double kilograms(Item item) {
        return item.facts().get(Item.WEIGHT).value()
                * item.facts().find(Item.COUNT).orElse(1);
    }
}
