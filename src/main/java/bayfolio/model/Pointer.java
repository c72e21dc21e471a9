package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Share;
import java.util.Optional;

/** A numbered mark on a picture, beside what it names. */
public record Pointer(Facts facts) implements Described {
    private static final Range WITHIN = Range.of("0 %", "100 %").usual("2 %", "98 %");
    private static final Shape.Draft<Pointer> DRAFT =
            Shape.draft("pointer", "A numbered mark on a picture, beside what it names.");
    public static final Key<Share> ACROSS = DRAFT.required(
            "across", Type.measured(Share.SCALE), "How far from the left edge, in percent of the width.", WITHIN);
    public static final Key<Share> DOWN = DRAFT.required(
            "down", Type.measured(Share.SCALE), "How far from the upper edge, in percent of the height.", WITHIN);
    static final Type.Reference THINGS = Type.reference(
            "compartment",
            "tray",
            "door",
            "step",
            "switch",
            "gauge",
            "connection",
            "tank",
            "appliance",
            "slide",
            "awning",
            "item");
    public static final Key<String> THING = DRAFT.required("thing", THINGS, "What is seen there.");
    public static final Shape<Pointer> SHAPE = DRAFT.done(Pointer::new);

    /** What is seen there, if that is on the coach. */
    public Optional<Thing> on(Coach coach) {
        return coach.referred(THINGS, facts.get(THING));
    }
}
