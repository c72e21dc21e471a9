package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;

/** The largest coach that may be driven on the roads of a country. */
public record SizeLimit(Facts facts) implements Backed {
    private static final Shape.Draft<SizeLimit> DRAFT =
            Shape.draft("size-limit", "The largest coach that may be driven on its roads.");
    public static final Key<Meters> LENGTH = size("length", "Longest.");
    public static final Key<Meters> LENGTH_TOWING = size("length-towing", "Longest when it tows something.");
    public static final Key<Meters> WIDTH = size("width", "Widest, without mirrors.");
    public static final Key<Meters> HEIGHT = size("height", "Highest.");
    private static final Backing BACKING = Backing.declare(DRAFT);
    public static final Shape<SizeLimit> SHAPE = DRAFT.done(SizeLimit::new);

    private static Key<Meters> size(String key, String what) {
        return DRAFT.optional(
                key, Type.measured(Meters.SCALE), what, Range.of("2 m", "20 m").because("limits of laws"));
    }

    @Override
    public Backing backing() {
        return BACKING;
    }
}
