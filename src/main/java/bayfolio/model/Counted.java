package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/**
 * How many things of each kind somebody counted on the coach. What was lost from the description, or
 * came into it by mistake, cannot be seen from the description alone; a count on paper can tell.
 */
public record Counted(Facts facts) implements Described {
    private static final Shape.Draft<Counted> DRAFT =
            Shape.draft("counted", "How many of each were counted on the coach, by hand and not from this file.");

    private static final Range COUNT = Range.of("0", "300").because("no coach has more of a kind");

    // Each is named as the list of the coach that describes what is counted.
    static {
        of("compartments", "Spaces with a door of their own.");
        of("trays", "Sliding floors in compartments.");
        of("doors", "Ways in and out.");
        of("steps", "Entry steps.");
        of("switches", "Switches, breakers, valves, taps, buttons and panels.");
        of("gauges", "Gauges, lamps and alarms.");
        of("connections", "Inlets, outlets, fills and drains.");
        of("tanks", "Tanks.");
        of("adapters", "Adapters for other outlets.");
        of("circuits", "Lines with a breaker or fuse of their own.");
        of("loads", "What draws power.");
        of("banks", "Banks of batteries.");
        of("appliances", "Built-in devices.");
        of("slides", "Slide-outs.");
        of("awnings", "Awnings.");
        of("items", "Lines of the list of what is carried on board.");
    }

    public static final Shape<Counted> SHAPE = DRAFT.done(Counted::new);

    private static void of(String list, String what) {
        DRAFT.optional(list, Type.whole(0, 300), what, COUNT);
    }
}
