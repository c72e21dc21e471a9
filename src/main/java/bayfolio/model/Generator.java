package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Amps;
import bayfolio.measure.LitersPerHour;
import bayfolio.measure.Meters;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;

/** The generator. */
public record Generator(Facts facts) implements Described {
    /** What the generator burns. */
    public enum Fuel {
        GASOLINE,
        DIESEL,
        LP_GAS
    }

    private static final Shape.Draft<Generator> DRAFT = Shape.draft("generator", "The generator.");
    public static final Key<Watts> POWER = DRAFT.required("power", Type.measured(Watts.SCALE), "Rated output.");
    public static final Key<Volts> VOLTS = DRAFT.required("volts", Type.measured(Volts.SCALE), "Voltage of one leg.");
    public static final Key<Integer> LEGS = DRAFT.required("legs", Type.whole(1, 2), "How many legs.");
    public static final Key<Amps> BREAKER =
            DRAFT.optional("breaker", Type.measured(Amps.SCALE), "Rating of its own breaker, for one leg.");
    public static final Key<Fuel> FUEL = DRAFT.required("fuel", Type.choice(Fuel.class), "What it burns.");
    public static final Key<LitersPerHour> BURN_HALF =
            DRAFT.optional("burn-half", Type.measured(LitersPerHour.SCALE), "Fuel use at half load.");
    public static final Key<LitersPerHour> BURN_FULL =
            DRAFT.optional("burn-full", Type.measured(LitersPerHour.SCALE), "Fuel use at full load.");
    public static final Key<Share> PICK_UP = DRAFT.optional(
            "pick-up",
            Type.measured(Share.SCALE),
            "Level of the tank at which it stops, so that the coach can still drive.");
    public static final Key<Share> ALTITUDE_LOSS = DRAFT.optional(
            "altitude-loss",
            Type.measured(Share.SCALE),
            "The share of its rated output that is lost with each step of altitude.");
    public static final Key<Meters> ALTITUDE_STEP = DRAFT.optional(
            "altitude-step", Type.measured(Meters.SCALE), "The step of altitude that the loss is for: `1,000 ft`.");
    public static final Key<Meters> ALTITUDE_FROM =
            DRAFT.optional("altitude-from", Type.measured(Meters.SCALE), "The altitude up to which nothing is lost.");
    public static final Key<Seconds> WARM_UP =
            DRAFT.optional("warm-up", Type.measured(Seconds.SCALE), "Time to run before loads go on.");
    public static final Key<Seconds> COOL_DOWN =
            DRAFT.optional("cool-down", Type.measured(Seconds.SCALE), "Time to run after loads go off.");
    public static final Key<Seconds> CRANK =
            DRAFT.optional("crank", Type.measured(Seconds.SCALE), "The longest time to hold START.");
    public static final Key<String> EXHAUST_SIDE =
            DRAFT.optional("exhaust-side", Type.TEXT, "Where its exhaust leaves.");
    public static final Key<Boolean> AUTOSTART =
            DRAFT.optional("autostart", Type.YES_NO, "Whether it can start by itself.");
    public static final Key<String> STARTED_BY =
            DRAFT.optional("started-by", Type.reference("bank"), "The batteries that crank it.");
    public static final Shape<Generator> SHAPE = DRAFT.done(Generator::new);
}
