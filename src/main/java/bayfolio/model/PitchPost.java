package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
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
            "along", Type.measured(Meters.SCALE), "How far in, from the end of the coach that is nearer to the road.");
    public static final Key<Seen> SIDE =
            DRAFT.required("side", Type.choice(Seen.class), "On which side, seen from the road.");
    public static final Key<Meters> ACROSS = DRAFT.required(
            "across", Type.measured(Meters.SCALE), "How far to that side of the middle line of the coach.");
    public static final Key<Meters> HEIGHT = DRAFT.required(
            "height", Type.measured(Meters.SCALE), "How high above the ground; nothing for a sewer opening.");
    public static final Shape<PitchPost> SHAPE = DRAFT.done(PitchPost::new);
}
