package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Watts;

/** Makes AC from the house battery. */
public record Inverter(Facts facts) implements Described {
    private static final Shape.Draft<Inverter> DRAFT = Shape.draft("inverter", "Makes AC from the house battery.");
    public static final Key<Watts> RATING =
            DRAFT.required("rating", Type.measured(Watts.SCALE), "What it gives for as long as the battery lasts.");
    public static final Key<Watts> SURGE =
            DRAFT.optional("surge", Type.measured(Watts.SCALE), "What it gives for a moment.");
    public static final Key<Share> EFFICIENCY =
            DRAFT.optional("efficiency", Type.measured(Share.SCALE), "What comes out of what goes in.");
    public static final Key<Watts> IDLE_DRAW =
            DRAFT.optional("idle-draw", Type.measured(Watts.SCALE), "What it takes with nothing on.");
    public static final Key<Seconds> START =
            DRAFT.optional("start", Type.measured(Seconds.SCALE), "From switching on until the outlets are live.");
    public static final Key<String> OUTLETS = DRAFT.optional("outlets", Type.TEXT, "Which outlets it feeds.");
    public static final Key<String> MARK = DRAFT.optional("mark", Type.TEXT, "How those outlets are marked.");
    public static final Shape<Inverter> SHAPE = DRAFT.done(Inverter::new);
}
