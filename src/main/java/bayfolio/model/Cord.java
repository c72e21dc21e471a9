package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import bayfolio.measure.SquareMillimeters;

/** The coach's own power cord. */
public record Cord(Facts facts) implements Described {
    /** How a cord is kept. */
    public enum Kind {
        DETACHABLE,
        FIXED,
        REEL_HAND,
        REEL_POWERED
    }

    private static final Shape.Draft<Cord> DRAFT = Shape.draft("cord", "The coach's own power cord.");
    public static final Key<Kind> KIND = DRAFT.required("kind", Type.choice(Kind.class), "How it is kept.");
    public static final Key<Meters> LENGTH =
            DRAFT.required("length", Type.measured(Meters.SCALE), "Its length from the coach.");
    public static final Key<SquareMillimeters> CONDUCTOR =
            DRAFT.optional("conductor", Type.measured(SquareMillimeters.SCALE), "Size of one conductor.");
    public static final Key<String> PLUG = DRAFT.optional("plug", Type.TEXT, "The plug at the site end.");
    public static final Key<String> STOP_MARK =
            DRAFT.optional("stop-mark", Type.TEXT, "Where to stop when it is wound in.");
    public static final Shape<Cord> SHAPE = DRAFT.done(Cord::new);
}
