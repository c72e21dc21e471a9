package bayfolio.reckon;

import bayfolio.measure.Seconds;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;
import bayfolio.model.Appliance;
import java.util.Optional;

/**
 * A device that burns gas.
 *
 * @param input what it takes at full flame, above zero; gross in North America, net in Europe
 * @param mild usual hours of full flame on a mild day
 * @param frost the same on a day of frost
 */
record GasFlame(Appliance appliance, Watts input, Optional<Seconds> mild, Optional<Seconds> frost) {
    private static final double DAY = 86_400;

    /** Absent while its plate is not in the description. */
    static Optional<GasFlame> of(Appliance appliance) {
        Optional<Seconds> mild = appliance.facts().find(Appliance.GAS_HOURS);
        Optional<Seconds> frost =
                appliance.facts().find(Appliance.GAS_HOURS_FROST).or(() -> mild);
        return appliance
                .facts()
                .find(Appliance.GAS_INPUT)
                .filter(input -> input.value() > 0)
                .map(input -> new GasFlame(appliance, input, mild, frost));
    }

    boolean heatsRooms() {
        return switch (appliance.facts().get(Appliance.WHAT)) {
            case FURNACE, HYDRONIC_HEATER, BLOWN_AIR_HEATER -> true;
            default -> false;
        };
    }

    /** What it takes in a day of so many hours; a day has no more than 24. */
    WattHours daily(Seconds hours) {
        return new WattHours(input.value() * Math.min(DAY, hours.value()) / 3600);
    }
}
