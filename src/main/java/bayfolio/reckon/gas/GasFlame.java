package bayfolio.reckon.gas;

import bayfolio.measure.Seconds;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;
import bayfolio.model.Appliance;
import bayfolio.model.Load;
import bayfolio.model.Unit;
import java.util.Optional;

/**
 * A device that burns gas.
 *
 * @param input what it takes at full flame, above zero; as on its plate
 * @param mild usual hours of full flame on a mild day
 * @param frost the same on a day of frost
 */
public record GasFlame(Appliance appliance, Watts input, Optional<Seconds> mild, Optional<Seconds> frost) {
    private static final double DAY = 86_400;

    /** Absent while its plate is not in the description. */
    public static Optional<GasFlame> of(Appliance appliance) {
        return appliance
                .facts()
                .find(Appliance.GAS_INPUT)
                .filter(input -> input.value() > 0)
                .map(input -> new GasFlame(appliance, input, mild(appliance), frost(appliance)));
    }

    public static Optional<Seconds> mild(Appliance appliance) {
        return appliance.facts().find(Appliance.GAS_HOURS);
    }

    public static Optional<Seconds> frost(Appliance appliance) {
        return appliance.facts().find(Appliance.GAS_HOURS_FROST).or(() -> mild(appliance));
    }

    public boolean heatsRooms() {
        return heatsRooms(appliance);
    }

    /** The room heater that a load belongs to; what is on all the time, such as its controls, has hours of its own. */
    public static Optional<Appliance> heaterOf(Load load, Unit unit) {
        return load.facts()
                .find(Load.APPLIANCE)
                .filter(id -> !load.facts().find(Load.ALWAYS_ON).orElse(false))
                .flatMap(id -> unit.appliances().stream()
                        .filter(appliance -> appliance.id().equals(id))
                        .filter(GasFlame::heatsRooms)
                        .findFirst());
    }

    private static boolean heatsRooms(Appliance appliance) {
        return appliance.facts().get(Appliance.WHAT).heats();
    }

    /** What it takes in a day of so many hours; a day has no more than 24. */
    public WattHours daily(Seconds hours) {
        return new WattHours(input.value() * Math.min(DAY, hours.value()) / 3600);
    }
}
