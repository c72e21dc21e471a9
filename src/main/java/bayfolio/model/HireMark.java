package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import java.time.LocalDate;

/** What an earlier hire left on a coach, so that the next one is not asked for it. */
public record HireMark(Facts facts) implements Described {
    /** As the trade calls it. */
    public enum Kind {
        SCRATCH,
        DENT,
        CHIP,
        CRACK,
        TEAR,
        STAIN,
        BURN,
        MISSING
    }

    private static final Shape.Draft<HireMark> DRAFT =
            Shape.draft("hire-mark", "What an earlier hire left on the coach.");
    public static final Key<Side> SIDE = DRAFT.required(
            "side", Type.choice(Side.class), "The side that it is on, seen facing forward in the driver's seat.");
    public static final Key<Meters> FROM_FRONT = DRAFT.optional(
            "from-front",
            Type.measured(Meters.SCALE),
            "From the foremost point of the coach to its middle; on front and rear, from the left side.",
            Range.of("0 m", "14.2 m"));
    public static final Key<Meters> HEIGHT = DRAFT.optional(
            "height", Type.measured(Meters.SCALE), "From the ground up to its middle.", Range.of("0 m", "4.3 m"));
    public static final Key<String> WHERE =
            DRAFT.optional("where", Type.TEXT, "Where exactly, with a landmark: `below the entry window`.");
    public static final Key<Kind> KIND = DRAFT.required("kind", Type.choice(Kind.class), "What it is.");
    public static final Key<Meters> SIZE = DRAFT.optional(
            "size",
            Type.measured(Meters.SCALE),
            "How long it is, or how wide.",
            Range.of("0.001 m", "5 m").usual("0.002 m", "2 m"));
    public static final Key<LocalDate> SINCE = DRAFT.required(
            "since", Type.DAY, "The day on which it was first seen.", Range.of("model-year - 2 years", "as-of"));
    public static final Key<String> NOTE = DRAFT.optional("note", Type.TEXT, "What else staff must know of it.");
    public static final Shape<HireMark> SHAPE = DRAFT.done(HireMark::new);
}
