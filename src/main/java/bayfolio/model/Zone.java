package bayfolio.model;

import java.util.List;
import java.util.function.Predicate;

/**
 * What a thermostat or another control of a room can do: some heat, some only cool. It is told by the appliances that it
 * feeds or that name it under {@code controls}; one of which nothing is told may do either.
 */
public record Zone(Coach coach, Switch control) {
    public boolean heats() {
        return worksOne(Device::heats);
    }

    public boolean cools() {
        return worksOne(Device::coolsRooms);
    }

    private boolean worksOne(Predicate<Device> wanted) {
        List<Device> worked = coach.unit().appliances().stream()
                .filter(this::works)
                .map(appliance -> appliance.facts().get(Appliance.WHAT))
                .filter(what -> what.heats() || what.coolsRooms())
                .toList();
        return worked.isEmpty() || worked.stream().anyMatch(wanted);
    }

    private boolean works(Appliance appliance) {
        return control.facts().all(Switch.FEEDS).contains(appliance.id())
                || appliance.facts().all(Appliance.CONTROLS).contains(control.id());
    }
}
