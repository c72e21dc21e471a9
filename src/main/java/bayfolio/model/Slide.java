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

/** A slide-out: a part of the wall that moves out to make room. */
public record Slide(Facts facts) implements Thing {
    /** What it runs on. */
    public enum MovedBy {
        RAILS,
        /** Two small motors in the side walls, which must stay in step. */
        IN_WALL,
        OIL
    }

    private static final Shape.Draft<Slide> DRAFT =
            Shape.draft("slide", "A slide-out: a part of the wall that moves out to make room.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "slide", "What the handbook calls it: `Lounge slide-out`.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT, true);
    public static final Key<Meters> DEPTH = DRAFT.required(
            "depth",
            Type.measured(Meters.SCALE),
            "How far it comes out.",
            Range.of("0.15 m", "1.8 m").usual("0.4 m", "1.15 m"));
    public static final Key<MovedBy> MOVED_BY = DRAFT.optional(
            "moved-by",
            Type.choice(MovedBy.class),
            "What moves it: a motor on rails or cables, two motors in its walls, or oil.");
    public static final Key<Integer> ORDER = DRAFT.optional(
            "order",
            Type.whole(1, 9),
            "Its turn when several go out.",
            Range.of("1", "9").usual("1", "6").because("each once, from 1"));
    public static final Key<List<Located<String>>> AFTER = DRAFT.optional(
            "after",
            Type.list(Type.ID),
            "What must be set up before it goes out, and stays so until it is in: `[plug, jacks]`.");
    public static final Key<String> IGNITION =
            DRAFT.optional("ignition", Type.TEXT, "How the ignition must stand while it moves.");
    public static final Key<String> FULL_SIGN =
            DRAFT.optional("full-sign", Type.LOOK, "How to see that it is fully out.");
    public static final Key<String> IN_SIGN = DRAFT.optional("in-sign", Type.LOOK, "How to see that it is fully in.");
    public static final Key<KilometersPerHour> WIND_LIMIT = DRAFT.optional(
            "wind-limit",
            Type.measured(KilometersPerHour.SCALE),
            "The wind above which it must be in.",
            Range.of("15 km/h", "120 km/h").usual("30 km/h", "75 km/h"));
    public static final Key<Boolean> TRAVEL_LOCKS =
            DRAFT.optional("travel-locks", Type.YES_NO, "Whether travel locks hold it on the road.");
    public static final Key<String> CLEAR_INSIDE =
            DRAFT.optional("clear-inside", Type.TEXT, "What must be clear inside before it moves.");
    public static final Key<List<Located<String>>> CONTROLS =
            DRAFT.optional("controls", Type.list(Type.reference("switch")), "Switches that move it.");
    public static final Key<String> OVERRIDE =
            DRAFT.forStaff("override", Type.TEXT, "How it is moved by hand, as staff may tell it on the phone.");
    public static final Key<String> AFTER_OVERRIDE =
            DRAFT.forStaff("after-override", Type.TEXT, "How it is locked for travel after that.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Slide> SHAPE = DRAFT.done(Slide::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }

    /** The keys of its spot, for findings about where it is. */
    public Spot.Keys spotKeys() {
        return SPOT;
    }
}
