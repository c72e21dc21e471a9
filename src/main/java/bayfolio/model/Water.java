package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Liters;
import bayfolio.source.Located;
import java.util.List;

/** How the water system is worked. */
public record Water(Facts facts) implements Described {
    /** How the black valve stands while the tank is flushed. */
    public enum FlushValve {
        OPEN,
        SHUT
    }

    private static final Shape.Draft<Water> DRAFT = Shape.draft("water", "How the water system is worked.");
    public static final Key<String> TANK_FILL_POSITION =
            DRAFT.optional("tank-fill-position", Type.TEXT, "Valve position for filling the tank from the tap.");
    public static final Key<String> CITY_POSITION =
            DRAFT.optional("city-position", Type.TEXT, "Valve position for living on the tap.");
    public static final Key<String> PUMP_POSITION =
            DRAFT.optional("pump-position", Type.TEXT, "Valve position for living from the tank.");
    public static final Key<String> FILL_LABEL =
            DRAFT.optional("fill-label", Type.PLATE, "Words at the fresh-water fill.");
    public static final Key<String> FULL_SIGN =
            DRAFT.optional("full-sign", Type.LOOK, "How to see that the fresh tank is full.");
    public static final Key<String> START_LEVEL =
            DRAFT.optional("start-level", Type.FIGURE, "How full the fresh tank is at pickup.");
    public static final Key<FlushValve> FLUSH_VALVE = DRAFT.optional(
            "flush-valve",
            Type.choice(FlushValve.class),
            "How the black valve stands while the tank is flushed: with a valve that is shut, the tank is flushed by the clock.");
    public static final Key<String> FLUSH_NOTE =
            DRAFT.optional("flush-note", Type.TEXT, "What else is minded while it is flushed.");
    public static final Key<Boolean> GRAVITY_CAP =
            DRAFT.optional("gravity-cap", Type.YES_NO, "Whether a plain gravity cap is there as the second way.");
    public static final Key<String> FLUID_DOSE =
            DRAFT.optional("fluid-dose", Type.TEXT, "How much toilet fluid goes in.");
    public static final Key<Liters> SHOWER_PER_MINUTE = DRAFT.optional(
            "shower-per-minute",
            Type.measured(Liters.SCALE),
            "What the shower lets through in a minute, measured with a jug.",
            Range.of("1 L", "15 L")
                    .usual("3 L", "9.5 L")
                    .because("2.5 gal/min by law; 42 USC 6295(j)")
                    .source("42 U.S.C. 6295(j)"));
    public static final Key<Liters> TOILET_PER_FLUSH = DRAFT.optional(
            "toilet-per-flush",
            Type.measured(Liters.SCALE),
            "What the toilet takes for a usual flush.",
            Range.of("0.1 L", "8 L")
                    .usual("0.2 L", "3 L")
                    .because("pint to three quarts; household 1.6 gal")
                    .source("EPA pages on water use"));
    public static final Key<List<Located<String>>> DRAINS =
            DRAFT.optional("drains", Type.list(Type.TEXT), "Every drain of the pipes and where it is.");
    public static final Shape<Water> SHAPE = DRAFT.done(Water::new);
}
