package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Adapter;
import bayfolio.model.Item;
import bayfolio.reckon.power.Shore;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags an adapter that is no item on board, or one whose item is not among the supply adapters. */
public final class AdapterWithoutItem implements Rule {
    private static final String ROLE = "supply-adapter";

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Shore.adapters(coach.unit()).stream().flatMap(it -> check(it, coach).stream());
    }

    private static Optional<Finding> check(Adapter adapter, CheckedCoach coach) {
        Optional<String> named = adapter.facts().find(Adapter.ITEM);
        if (named.isEmpty()) {
            return Optional.of(Finding.warning(
                            "adapter-without-item",
                            adapter.at(),
                            "adapter `%s` names no item, so nobody is told where it lies".formatted(adapter.id()))
                    .mend("List it under `items` with the role `supply-adapter`, and name that as `item`."));
        }
        return coach.coach()
                .thing(Item.SHAPE.name(), named.get())
                .filter(item -> !item.roles().contains(ROLE))
                .map(item -> Finding.warning(
                                "adapter-without-item",
                                adapter.facts().at(Adapter.ITEM),
                                "adapter `%s` is item `%s`, which does not hold the role `supply-adapter`"
                                        .formatted(adapter.id(), item.id()))
                        .mend("Give the item the role, or name another item."));
    }
}
