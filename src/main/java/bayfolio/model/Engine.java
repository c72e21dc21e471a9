package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
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
        DIESEL
    }

    private static final Shape.Draft<Engine> DRAFT = Shape.draft("engine", "Engine, fuel and driving.");
    public static final Key<Fuel> FUEL = DRAFT.required("fuel", Type.choice(Fuel.class), "What it burns.");
    public static final Key<String> FUEL_LABEL = DRAFT.optional("fuel-label", Type.TEXT, "Words on the fuel flap.");
    public static final Key<LitersPer100Kilometers> CONSUMPTION =
            DRAFT.optional("consumption", Type.measured(LitersPer100Kilometers.SCALE), "What it uses on the road.");
    public static final Key<Boolean> AIR_BRAKES =
            DRAFT.optional("air-brakes", Type.YES_NO, "Whether it has air brakes.");
    public static final Key<Kilopascals> AIR_PRESSURE =
            DRAFT.optional("air-pressure", Type.measured(Kilopascals.SCALE), "Pressure at which the brake lets go.");
    public static final Key<Boolean> EXHAUST_BRAKE =
            DRAFT.optional("exhaust-brake", Type.YES_NO, "Whether it has an exhaust brake.");
    public static final Key<String> PREHEAT_LAMP = DRAFT.optional(
            "preheat-lamp",
            Type.TEXT,
            "The lamp that must go out before a diesel is started: `the yellow coil in the middle of the dash`.");
    public static final Key<Boolean> REAR_CAMERA =
            DRAFT.optional("rear-camera", Type.YES_NO, "Whether it has a rear camera.");
    public static final Key<String> CAMERA_SHOWS =
            DRAFT.optional("camera-shows", Type.TEXT, "What the camera shows, and what not.");
    public static final Key<Liters> EXHAUST_FLUID_FILL =
            DRAFT.optional("exhaust-fluid-fill", Type.measured(Liters.SCALE), "How much exhaust fluid a top-up takes.");
    public static final Key<KilometersPerHour> WIND_LIMIT = DRAFT.optional(
            "wind-limit", Type.measured(KilometersPerHour.SCALE), "The wind above which it should not be driven.");
    public static final Shape<Engine> SHAPE = DRAFT.done(Engine::new);
}
