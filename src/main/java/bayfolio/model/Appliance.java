package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Celsius;
import bayfolio.measure.Liters;
import bayfolio.measure.Seconds;
import bayfolio.measure.Watts;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** A built-in device: heater, water heater, fridge, cooker, air conditioner, fan. */
public record Appliance(Facts facts) implements Thing {
    /** What kind of device. */
    public enum What {
        FURNACE,
        HYDRONIC_HEATER,
        BLOWN_AIR_HEATER,
        WATER_HEATER,
        AIR_CONDITIONER,
        HEAT_PUMP,
        FRIDGE_TWO_WAY,
        FRIDGE_THREE_WAY,
        FRIDGE_RESIDENTIAL,
        FRIDGE_COMPRESSOR,
        HOB_GAS,
        HOB_INDUCTION,
        OVEN_GAS,
        MICROWAVE,
        TANK_HEATER,
        MACERATOR,
        TANK_FLUSH,
        ROOF_FAN,
        CHARGER,
        WATER_FILTER,
        OUTSIDE_SHOWER,
        TOILET,
        ANTENNA,
        DROP_DOWN_BED,
        OTHER
    }

    /** What a device runs on. */
    public enum Energy {
        GAS,
        AC,
        DC,
        DIESEL,
        ENGINE,
        HAND
    }

    private static final Shape.Draft<Appliance> DRAFT =
            Shape.draft("appliance", "A built-in device: heater, water heater, fridge, cooker, air conditioner, fan.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "appliance", "What the handbook calls it: `Front air conditioner`.");
    public static final Key<What> WHAT = DRAFT.required("what", Type.choice(What.class), "What kind of device.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<List<Located<Energy>>> ENERGY =
            DRAFT.optional("energy", Type.list(Type.choice(Energy.class)), "What it runs on.");
    public static final Key<List<Located<String>>> CONTROLS =
            DRAFT.optional("controls", Type.list(Type.reference("switch")), "Switches that work it.");
    public static final Key<Boolean> LID =
            DRAFT.optional("lid", Type.YES_NO, "Whether a lid covers it that must be up while it is used.");
    public static final Key<Liters> CAPACITY =
            DRAFT.optional("capacity", Type.measured(Liters.SCALE), "What it holds: water, cold space.");
    public static final Key<Seconds> HEAT_UP =
            DRAFT.optional("heat-up", Type.measured(Seconds.SCALE), "How long from switching on until it serves.");
    public static final Key<Watts> GAS_INPUT = DRAFT.optional(
            "gas-input",
            Type.measured(Watts.SCALE),
            "Gas that it burns at full flame, from its plate: BTU/h in North America, kW in Europe.");
    public static final Key<Seconds> GAS_HOURS = DRAFT.optional(
            "gas-hours", Type.measured(Seconds.SCALE), "Usual hours of full flame on a day of mild weather.");
    public static final Key<Seconds> GAS_HOURS_FROST = DRAFT.optional(
            "gas-hours-frost",
            Type.measured(Seconds.SCALE),
            "The same on a day of frost; as in mild weather where left out.");
    public static final Key<String> COMES_ON =
            DRAFT.optional("comes-on", Type.TEXT, "What is seen and heard when it starts.");
    public static final Key<String> STOPS_WITH =
            DRAFT.optional("stops-with", Type.TEXT, "What must be done after switching off, such as purge minutes.");
    public static final Key<String> WHILE_DRIVING =
            DRAFT.optional("while-driving", Type.TEXT, "Whether it may run on the road.");
    public static final Key<Celsius> LOWEST_OUTSIDE = DRAFT.optional(
            "lowest-outside", Type.measured(Celsius.SCALE), "The outside temperature below which it does not serve.");
    public static final Key<String> FROST =
            DRAFT.optional("frost", Type.TEXT, "Its frost valve: when it opens, when it can be shut again.");
    public static final Key<String> NOTE = DRAFT.optional("note", Type.TEXT, "What a renter must know of it.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Appliance> SHAPE = DRAFT.done(Appliance::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }
}
