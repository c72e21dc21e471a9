package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.KilometersPerHour;
import bayfolio.measure.Meters;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** A cloth roof at the side. */
public record Awning(Facts facts) implements Thing {
    /** What moves it. */
    public enum Kind {
        ELECTRIC,
        MANUAL
    }

    /** How one by hand comes out. */
    public enum ByHand {
        CRANK,
        STRAP
    }

    private static final Shape.Draft<Awning> DRAFT = Shape.draft("awning", "A cloth roof at the side.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "awning", "What the handbook calls it: `Patio awning`.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<Kind> KIND = DRAFT.required("kind", Type.choice(Kind.class), "What moves it.");
    public static final Key<ByHand> BY_HAND = DRAFT.optional(
            "by-hand",
            Type.choice(ByHand.class),
            "How one by hand comes out: wound by a crank, or pulled by a strap against a spring. Where it is not stated,"
                    + " by a crank.");
    public static final Key<Boolean> TRAVEL_LOCKS =
            DRAFT.optional("travel-locks", Type.YES_NO, "Whether locks or straps hold it on the road.");
    public static final Key<Meters> REACH = DRAFT.optional(
            "reach",
            Type.measured(Meters.SCALE),
            "How far it comes out.",
            Range.of("0.7 m", "4.5 m").usual("1.5 m", "3.1 m").because("2 to 10 ft"));
    public static final Key<KilometersPerHour> WIND_LIMIT = DRAFT.optional(
            "wind-limit",
            Type.measured(KilometersPerHour.SCALE),
            "The wind above which it must be in.",
            Range.of("8 km/h", "60 km/h")
                    .usual("15 km/h", "40 km/h")
                    .because("pages: 10 to 25 mph, no standard")
                    .source("trade pages"));
    public static final Key<String> IN_SIGN =
            DRAFT.optional("in-sign", Type.LOOK, "How to see that it is in and latched.");
    public static final Key<List<Located<String>>> CONTROLS = DRAFT.optional(
            "controls", Type.list(Type.reference("switch", "item")), "What moves it: a switch, a crank.");
    public static final Key<String> OVERRIDE =
            DRAFT.forStaff("override", Type.TEXT, "How it is brought in by hand, as staff may tell it on the phone.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Awning> SHAPE = DRAFT.done(Awning::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }
}
