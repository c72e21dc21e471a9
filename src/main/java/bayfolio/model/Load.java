package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Amps;
import bayfolio.measure.Seconds;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;

/** What draws power. */
public record Load(Facts facts) implements Thing {
    private static final Shape.Draft<Load> DRAFT = Shape.draft("load", "What draws power.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "load", "What the handbook calls it: `Microwave`.");
    public static final Key<String> CIRCUIT =
            DRAFT.required("circuit", Type.reference("circuit"), "The circuit that it hangs on.");
    public static final Key<Watts> WATTS = DRAFT.optional(
            "watts",
            Type.measured(Watts.SCALE),
            "What it draws while it runs.",
            Range.of("0.1 W", "6000 W")
                    .usual("ac north-america", "1 W", "2400 W")
                    .usual("ac europe", "1 W", "3680 W")
                    .usual("dc", "0.2 W", "2400 W")
                    .because("watts are volts times amps")
                    .source("manuals and lists of appliances"));
    public static final Key<Volts> VOLTS =
            DRAFT.optional("volts", Type.measured(Volts.SCALE), "Its voltage.", Circuit.WIRED);
    public static final Key<Amps> AMPS = DRAFT.optional(
            "amps",
            Type.measured(Amps.SCALE),
            "The current it draws while it runs.",
            Range.of("0.01 A", "450 A")
                    .usual("ac north-america", "0.05 A", "20 A")
                    .usual("ac europe", "0.05 A", "16 A")
                    .usual("dc", "0.02 A", "170 A")
                    .source("manuals and lists of appliances"));
    public static final Key<Boolean> CONTINUOUS =
            DRAFT.optional("continuous", Type.YES_NO, "Whether it may run three hours or longer.");
    public static final Key<Boolean> ALWAYS_ON =
            DRAFT.optional("always-on", Type.YES_NO, "Whether it runs without anybody switching it on.");
    public static final Key<Boolean> USUAL =
            DRAFT.optional("usual", Type.YES_NO, "Whether it is usually on while people live in the coach.");
    public static final Key<Amps> START_AMPS = DRAFT.optional(
            "start-amps",
            Type.measured(Amps.SCALE),
            "The current in the first moment.",
            Range.of("0.02 A", "900 A")
                    .usual("ac", "1 A", "90 A")
                    .usual("dc", "1 A", "400 A")
                    .because("1 to 8 x running; roof air conditioner locked rotor 60 to 80 A, 20 to 30 with soft start")
                    .source("manuals and lists of appliances"));
    public static final Key<Boolean> ON_INVERTER =
            DRAFT.optional("on-inverter", Type.YES_NO, "Whether it is meant to run from the inverter.");
    public static final Key<Seconds> A_NIGHT = DRAFT.optional(
            "a-night",
            Type.measured(Seconds.SCALE),
            "How long it runs in a usual night without hook-up, all runs together; 12 h where it is always on. "
                    + "What belongs to a gas heater runs for the `gas-hours` of that.",
            Range.of("0.005 h", "24 h").usual("0.03 h", "12 h"));
    public static final Key<Seconds> A_NIGHT_FROST = DRAFT.optional(
            "a-night-frost",
            Type.measured(Seconds.SCALE),
            "The same in a night of frost; as in a usual night where left out. A gas heater has its hours in `gas-hours`.",
            Range.of("0.005 h", "24 h").usual("0.03 h", "24 h"));
    public static final Key<String> APPLIANCE =
            DRAFT.optional("appliance", Type.reference("appliance"), "The appliance that it is the load of.");
    public static final Key<String> SOURCE =
            DRAFT.optional("source", Type.TEXT, "Where the figure comes from: plate, meter, manual.");
    public static final Shape<Load> SHAPE = DRAFT.done(Load::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }
}
