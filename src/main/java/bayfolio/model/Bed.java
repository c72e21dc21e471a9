package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Meters;

/** One bed. */
public record Bed(Facts facts) implements Described {
    private static final Shape.Draft<Bed> DRAFT = Shape.draft("bed", "One bed.");
    public static final Key<String> WHERE = DRAFT.required("where", Type.TEXT, "Where it is.");
    public static final Key<Integer> SLEEPS = DRAFT.required("sleeps", Type.whole(1, 4), "How many people.");
    public static final Key<Meters> LENGTH = DRAFT.optional("length", Type.measured(Meters.SCALE), "Its length.");
    public static final Key<Meters> WIDTH = DRAFT.optional("width", Type.measured(Meters.SCALE), "Its width.");
    public static final Key<Kilograms> LOAD_LIMIT =
            DRAFT.optional("load-limit", Type.measured(Kilograms.SCALE), "The most it may carry.");
    public static final Key<String> MADE_UP = DRAFT.optional("made-up", Type.TEXT, "How it is made up.");
    public static final Shape<Bed> SHAPE = DRAFT.done(Bed::new);
}
