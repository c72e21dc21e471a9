package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.KilometersPerHour;
import bayfolio.measure.Kilopascals;
import bayfolio.measure.Liters;
import bayfolio.measure.LitersPer100Kilometers;

/** Engine and driving. */
public record Engine(Facts facts) implements Described {
    /** What the engine burns. */
    public enum Fuel {
        GASOLINE,
        DIESEL,
        /** It burns nothing. */
        ELECTRIC
    }

    /** What it can burn besides, by a switch. */
    public enum SecondFuel {
        LP_GAS,
        CNG
    }

    /** How it shifts. */
    public enum Gearbox {
        AUTOMATIC,
        MANUAL,
        /** It works its clutch by itself, and has no place to park. */
        AUTOMATED
    }

    private static final Shape.Draft<Engine> DRAFT = Shape.draft("engine", "Engine, fuel and driving.");
    public static final Key<Fuel> FUEL =
            DRAFT.required("fuel", Type.choice(Fuel.class), "What it burns; `electric` where it burns nothing.");
    public static final Key<SecondFuel> SECOND_FUEL = DRAFT.optional(
            "second-fuel", Type.choice(SecondFuel.class), "What it can burn besides, from a tank of its own.");
    public static final Key<Gearbox> GEARBOX = DRAFT.optional(
            "gearbox",
            Type.choice(Gearbox.class),
            "How it shifts: by itself, by hand with a clutch, or by itself without a place to park (`automated`).");
    public static final Key<String> FUEL_LABEL = DRAFT.optional("fuel-label", Type.PLATE, "Words on the fuel flap.");
    public static final Key<LitersPer100Kilometers> CONSUMPTION = DRAFT.optional(
            "consumption",
            Type.measured(LitersPer100Kilometers.SCALE),
            "What it uses on the road.",
            Range.of("6 L/100 km", "70 L/100 km")
                    .usual("bus-style", "20 L/100 km", "48 L/100 km")
                    .usual("bus-style europe", "9 L/100 km", "35 L/100 km")
                    .usual("cab-over", "15 L/100 km", "36 L/100 km")
                    .usual("low-profile", "8 L/100 km", "17 L/100 km")
                    .usual("van", "7.5 L/100 km", "18 L/100 km")
                    .because("5 to 12 mpg; 13 to 30 mpg"));
    public static final Key<Boolean> AIR_BRAKES =
            DRAFT.optional("air-brakes", Type.YES_NO, "Whether it has air brakes.");
    public static final Key<Kilopascals> AIR_PRESSURE = DRAFT.optional(
            "air-pressure",
            Type.measured(Kilopascals.SCALE),
            "Pressure at which the brake lets go.",
            Range.of("380 kPa", "950 kPa")
                    .usual("415 kPa", "830 kPa")
                    .because("60 to 120 psi")
                    .source("49 CFR 571.121"));
    public static final Key<Boolean> EXHAUST_BRAKE =
            DRAFT.optional("exhaust-brake", Type.YES_NO, "Whether it has an exhaust brake.");
    public static final Key<String> PREHEAT_LAMP = DRAFT.optional(
            "preheat-lamp",
            Type.TEXT,
            "The lamp that must go out before a diesel is started: `the yellow coil in the middle of the dash`.");
    public static final Key<Boolean> REAR_CAMERA =
            DRAFT.optional("rear-camera", Type.YES_NO, "Whether it has a rear camera.");
    public static final Key<String> CAMERA_SHOWS =
            DRAFT.optional("camera-shows", Type.LOOK, "What the camera shows, and what not.");
    public static final Key<Liters> EXHAUST_FLUID_FILL = DRAFT.optional(
            "exhaust-fluid-fill",
            Type.measured(Liters.SCALE),
            "How much exhaust fluid a top-up takes.",
            Range.of("0.5 L", "80 L").usual("3 L", "30 L").because("no more than the tank holds"));
    public static final Key<KilometersPerHour> WIND_LIMIT = DRAFT.optional(
            "wind-limit",
            Type.measured(KilometersPerHour.SCALE),
            "The wind above which it should not be driven.",
            Range.of("25 km/h", "120 km/h")
                    .usual("45 km/h", "95 km/h")
                    .because("exposed bridges ban such coaches at gusts of 47 mph (76 km/h)")
                    .source("trade pages"));
    public static final Shape<Engine> SHAPE = DRAFT.done(Engine::new);
}
