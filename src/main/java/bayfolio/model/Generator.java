package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
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
    public static final Key<Watts> POWER = DRAFT.required(
            "power",
            Type.measured(Watts.SCALE),
            "Rated output.",
            Range.of("700 W", "25000 W")
                    .usual("bus-style", "4000 W", "13000 W")
                    .usual("cab-over", "2300 W", "7000 W")
                    .usual("low-profile|van", "1600 W", "4500 W")
                    .source("manuals of generators and consumption charts"));
    public static final Key<Volts> VOLTS =
            DRAFT.required("volts", Type.measured(Volts.SCALE), "Voltage of one leg.", Supply.ONE_LEG);
    public static final Key<Integer> LEGS =
            DRAFT.required("legs", Type.whole(1, 2), "How many legs.", Supply.ONE_OR_TWO);
    public static final Key<Amps> BREAKER = DRAFT.optional(
            "breaker",
            Type.measured(Amps.SCALE),
            "Rating of its own breaker, for one leg.",
            Range.of("5 A", "125 A").usual("12 A", "70 A"));
    public static final Key<Fuel> FUEL = DRAFT.required("fuel", Type.choice(Fuel.class), "What it burns.");
    public static final Key<LitersPerHour> BURN_HALF = DRAFT.optional(
            "burn-half",
            Type.measured(LitersPerHour.SCALE),
            "Fuel use at half load.",
            Range.of("0.2 L/h", "10 L/h")
                    .usual("0.5 L/h", "5 L/h")
                    .because("a kW of rating: gasoline 0.28 to 0.55, diesel 0.15 to 0.30, LP 0.4 to 0.8 L/h")
                    .source("manuals of generators and consumption charts"));
    public static final Key<LitersPerHour> BURN_FULL = DRAFT.optional(
            "burn-full",
            Type.measured(LitersPerHour.SCALE),
            "Fuel use at full load.",
            Range.of("0.4 L/h", "20 L/h")
                    .usual("0.9 L/h", "8 L/h")
                    .because("a kW: gasoline 0.45 to 0.95, diesel 0.28 to 0.48, LP 0.6 to 1.2 L/h")
                    .source("manuals of generators and consumption charts"));
    public static final Key<Share> PICK_UP = DRAFT.optional(
            "pick-up",
            Type.measured(Share.SCALE),
            "Level of the tank at which it stops, so that the coach can still drive.",
            Range.of("2 %", "60 %")
                    .usual("12 %", "35 %")
                    .because("1/8 to 1/4 tank")
                    .source("manuals of generators and consumption charts"));
    public static final Key<Share> ALTITUDE_LOSS = DRAFT.optional(
            "altitude-loss",
            Type.measured(Share.SCALE),
            "The share of its rated output that is lost with each step of altitude.",
            Range.of("0.3 %", "10 %")
                    .usual("2 %", "4 %")
                    .because("3 to 3.5 % a 1,000 ft")
                    .source("manuals of generators and consumption charts"));
    public static final Key<Meters> ALTITUDE_STEP = DRAFT.optional(
            "altitude-step",
            Type.measured(Meters.SCALE),
            "The step of altitude that the loss is for: `1,000 ft`.",
            Range.of("90 m", "1100 m")
                    .usual("300 m", "500 m")
                    .because("1,000 ft, 300 m, 500 m")
                    .source("manuals of generators and consumption charts"));
    public static final Key<Meters> ALTITUDE_FROM = DRAFT.optional(
            "altitude-from",
            Type.measured(Meters.SCALE),
            "The altitude up to which nothing is lost.",
            Range.of("0 m", "3000 m")
                    .usual("0 m", "1600 m")
                    .because("0, 1,000 ft, 1,000 m, 1,500 m")
                    .source("manuals of generators and consumption charts"));
    public static final Key<Seconds> WARM_UP = DRAFT.optional(
            "warm-up",
            Type.measured(Seconds.SCALE),
            "Time to run before loads go on.",
            Range.of("0 min", "30 min").usual("0.5 min", "10 min"));
    public static final Key<Seconds> COOL_DOWN = DRAFT.optional(
            "cool-down",
            Type.measured(Seconds.SCALE),
            "Time to run after loads go off.",
            Range.of("0 min", "30 min").usual("0.5 min", "10 min"));
    public static final Key<Seconds> CRANK = DRAFT.optional(
            "crank",
            Type.measured(Seconds.SCALE),
            "The longest time to hold START.",
            Range.of("1 s", "60 s").usual("5 s", "30 s").because("longer burns the starter"));
    public static final Key<String> EXHAUST_SIDE =
            DRAFT.optional("exhaust-side", Type.TEXT, "Where its exhaust leaves.");
    public static final Key<Boolean> AUTOSTART =
            DRAFT.optional("autostart", Type.YES_NO, "Whether it can start by itself.");
    public static final Key<String> STARTED_BY =
            DRAFT.optional("started-by", Type.reference("bank"), "The batteries that crank it.");
    public static final Shape<Generator> SHAPE = DRAFT.done(Generator::new);
}
