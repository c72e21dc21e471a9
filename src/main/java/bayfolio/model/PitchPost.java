package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;

/** Where an outlet, a faucet or a sewer opening is on a site, seen from the road. */
public record PitchPost(Facts facts) implements Described {
    /** A side of the site, for somebody who stands on the road and looks at it. */
    public enum Seen {
        LEFT,
        RIGHT
    }

    private static final Shape.Draft<PitchPost> DRAFT =
            Shape.draft("pitch-post", "Where an outlet, a faucet or a sewer opening is on a site.");
    public static final Key<Meters> ALONG = DRAFT.required(
            "along",
            Type.measured(Meters.SCALE),
            "How far in, from the end of the coach that is nearer to the road.",
            Range.of("0 m", "45 m").usual("0 m", "20 m"));
    public static final Key<Seen> SIDE =
            DRAFT.required("side", Type.choice(Seen.class), "On which side, seen from the road.");
    public static final Key<Meters> ACROSS = DRAFT.required(
            "across",
            Type.measured(Meters.SCALE),
            "How far to that side of the middle line of the coach.",
            Range.of("0.3 m", "20 m").usual("0.8 m", "6 m"));
    public static final Key<Meters> HEIGHT = DRAFT.required(
            "height",
            Type.measured(Meters.SCALE),
            "How high above the ground; nothing for a sewer opening.",
            Range.of("0 m", "2.2 m")
                    .usual("0 m", "1.5 m")
                    .because("outlet 0.5 to 1.5 m; sewer 0")
                    .source("IEC 60364-7-708 and EN 60309-2"));
    public static final Shape<PitchPost> SHAPE = DRAFT.done(PitchPost::new);
}
