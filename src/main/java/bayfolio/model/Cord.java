package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
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
    public static final Key<Meters> LENGTH = DRAFT.required(
            "length",
            Type.measured(Meters.SCALE),
            "Its length from the coach.",
            Range.of("2.5 m", "40 m")
                    .usual("north-america", "7 m", "15.5 m")
                    .usual("europe", "10 m", "27 m")
                    .because("25 ft at least; 25 m +- 2 m")
                    .source("NEC article 551"));
    public static final Key<SquareMillimeters> CONDUCTOR = DRAFT.optional(
            "conductor",
            Type.measured(SquareMillimeters.SCALE),
            "Size of one conductor.",
            Range.of("1.5 mm²", "34 mm²")
                    .in("north-america", "2 mm²", "34 mm²")
                    .in("europe", "1.5 mm²", "10 mm²")
                    .usual("north-america", "3.3 mm²", "21.2 mm²")
                    .usual("europe", "2.5 mm²", "6 mm²")
                    .because("30 A 10 AWG, 50 A 6 AWG, 16 A 2.5 mm²")
                    .source("NEC article 551"));
    public static final Key<String> PLUG = DRAFT.optional("plug", Type.TEXT, "The plug at the site end.");
    public static final Key<String> STOP_MARK =
            DRAFT.optional("stop-mark", Type.TEXT, "Where to stop when it is wound in.");
    public static final Shape<Cord> SHAPE = DRAFT.done(Cord::new);
}
