package bayfolio.model;

import bayfolio.model.Appliance.What;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a thermostat or another control of a room can do: some heat, some only cool. It is told by the appliances that it
 * feeds or that name it under {@code controls}; one of which nothing is told may do either.
 */
public record Zone(Coach coach, Switch control) {
    private static final Set<What> HEATERS =
            Set.of(What.FURNACE, What.HYDRONIC_HEATER, What.BLOWN_AIR_HEATER, What.HEAT_PUMP);
    private static final Set<What> COOLERS = Set.of(What.AIR_CONDITIONER, What.HEAT_PUMP);

    public boolean heats() {
        return worksOneOf(HEATERS);
    }

    public boolean cools() {
        return worksOneOf(COOLERS);
    }

    private boolean worksOneOf(Set<What> kinds) {
        List<What> worked = coach.unit().appliances().stream()
                .filter(this::works)
                .map(appliance -> appliance.facts().get(Appliance.WHAT))
                .filter(what -> Stream.of(HEATERS, COOLERS).anyMatch(set -> set.contains(what)))
                .toList();
        return worked.isEmpty() || worked.stream().anyMatch(kinds::contains);
    }

    private boolean works(Appliance appliance) {
        return control.facts().all(Switch.FEEDS).contains(appliance.id())
                || appliance.facts().all(Appliance.CONTROLS).contains(control.id());
    }
}
