package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
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
    /** What a device runs on. */
    public enum Energy {
        GAS,
        AC,
        DC,
        DIESEL,
        GASOLINE,
        BUTANE,
        SPIRIT,
        ENGINE,
        HAND
    }

    private static final Shape.Draft<Appliance> DRAFT =
            Shape.draft("appliance", "A built-in device: heater, water heater, fridge, cooker, air conditioner, fan.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "appliance", "What the handbook calls it: `Front air conditioner`.");
    public static final Key<Device> WHAT = DRAFT.required(
            "what", new Type.Listed<>("devices", Device::bare), "What kind of device, by the files of equipment.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<List<Located<Energy>>> ENERGY =
            DRAFT.optional("energy", Type.list(Type.choice(Energy.class)), "What it runs on.");
    public static final Key<List<Located<String>>> CONTROLS =
            DRAFT.optional("controls", Type.list(Type.reference("switch")), "Switches that work it.");
    public static final Key<Boolean> LID =
            DRAFT.optional("lid", Type.YES_NO, "Whether a lid covers it that must be up while it is used.");
    public static final Key<Liters> CAPACITY = DRAFT.optional(
            "capacity",
            Type.measured(Liters.SCALE),
            "What it holds: water, cold space.",
            Range.of("2 L", "800 L")
                    .in("furnace|hydronic-heater|blown-air-heater|water-heater", "2 L", "110 L")
                    .in("fridge-two-way|fridge-three-way|fridge-residential|fridge-compressor", "15 L", "800 L")
                    .usual("water-heater", "20 L", "65 L")
                    .usual("blown-air-heater", "8 L", "12 L")
                    .usual("hydronic-heater", "8 L", "80 L")
                    .usual("furnace|hydronic-heater|blown-air-heater|water-heater", "2 L", "110 L")
                    .usual("fridge-two-way|fridge-three-way", "60 L", "340 L")
                    .usual("fridge-residential", "250 L", "700 L")
                    .usual("fridge-compressor", "30 L", "250 L")
                    .asOnThePlate()
                    .because("6, 10, 12, 16 gal; 10 L"));
    public static final Key<Seconds> HEAT_UP = DRAFT.optional(
            "heat-up",
            Type.measured(Seconds.SCALE),
            "How long from switching on until it serves.",
            Range.of("0.1 min", "1440 min")
                    .usual("fridge-two-way|fridge-three-way|fridge-residential|fridge-compressor", "120 min", "840 min")
                    .usual("water-heater", "8 min", "60 min")
                    .usual("furnace", "0.5 min", "10 min")
                    .usual("air-conditioner|heat-pump", "1 min", "20 min")
                    .usual("blown-air-heater", "10 min", "60 min")
                    .usual("oven-gas", "5 min", "40 min")
                    .usual("hydronic-heater", "5 min", "60 min")
                    .usual("1 min", "120 min"));
    public static final Key<Watts> GAS_INPUT = DRAFT.optional(
            "gas-input",
            Type.measured(Watts.SCALE),
            "Gas that it burns at full flame, from its plate: BTU/h in North America, kW in Europe.",
            Range.of("100 W", "25000 W")
                    .in("furnace", "1500 W", "22000 W")
                    .in("water-heater", "1500 W", "18000 W")
                    .in("water-heater-tankless", "1500 W", "25000 W")
                    .in("fridge-two-way|fridge-three-way|fridge-residential|fridge-compressor", "100 W", "1200 W")
                    .in("hob-gas", "700 W", "12000 W")
                    .in("oven-gas", "500 W", "6000 W")
                    .in("blown-air-heater", "1000 W", "10000 W")
                    .usual("furnace", "3500 W", "13200 W")
                    .usual("water-heater", "2300 W", "4700 W")
                    .usual("water-heater-tankless", "8000 W", "20000 W")
                    .usual("fridge-two-way|fridge-three-way|fridge-residential|fridge-compressor", "150 W", "650 W")
                    .usual("hob-gas", "1500 W", "7500 W")
                    .usual("oven-gas", "1000 W", "3300 W")
                    .usual("blown-air-heater", "2000 W", "6200 W")
                    .usual("hydronic-heater", "3000 W", "15000 W")
                    .usual("air-heater", "1500 W", "6000 W")
                    .usual("150 W", "15000 W")
                    .because(
                            "furnace 12,000 to 45,000 BTU/h; tankless 30,000 to 60,000 BTU/h; heater 500 g/h = 6 kW; fridge 35 g/h = 450 W; hob 465 g/h = 6 kW"));
    public static final Key<Seconds> GAS_HOURS = DRAFT.optional(
            "gas-hours",
            Type.measured(Seconds.SCALE),
            "Usual hours of full flame on a day of mild weather.",
            Range.of("0 h", "24 h")
                    .usual("furnace", "0.3 h", "8 h")
                    .usual("water-heater", "0.2 h", "4 h")
                    .usual("water-heater-tankless", "0.05 h", "2 h")
                    .usual("fridge-two-way|fridge-three-way|fridge-residential|fridge-compressor", "5 h", "24 h")
                    .usual("hob-gas", "0.1 h", "3 h")
                    .usual("oven-gas", "0.1 h", "2 h")
                    .usual("blown-air-heater|hydronic-heater|air-heater", "0.5 h", "8 h")
                    .usual("0.1 h", "24 h"));
    public static final Key<Seconds> GAS_HOURS_FROST = DRAFT.optional(
            "gas-hours-frost",
            Type.measured(Seconds.SCALE),
            "The same on a day of frost; as in mild weather where left out.",
            Range.of("0 h", "24 h")
                    .usual("furnace|blown-air-heater|hydronic-heater|air-heater", "4 h", "20 h")
                    .usual("water-heater", "0.3 h", "5 h")
                    .usual("fridge-two-way|fridge-three-way|fridge-residential|fridge-compressor", "4 h", "24 h")
                    .usual("0.1 h", "24 h"));
    public static final Key<String> COMES_ON =
            DRAFT.optional("comes-on", Type.TEXT, "What is seen and heard when it starts.");
    public static final Key<String> STOPS_WITH =
            DRAFT.optional("stops-with", Type.TEXT, "What must be done after switching off, such as purge minutes.");
    public static final Key<String> WHILE_DRIVING =
            DRAFT.optional("while-driving", Type.TEXT, "Whether it may run on the road.");
    public static final Key<Celsius> LOWEST_OUTSIDE = DRAFT.optional(
            "lowest-outside",
            Type.measured(Celsius.SCALE),
            "The outside temperature below which it does not serve.",
            Range.of("-50 °C", "25 °C").usual("heat-pump", "-8 °C", "10 °C").usual("-30 °C", "6 °C"));
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
