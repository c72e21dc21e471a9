package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Meters;
import bayfolio.measure.SquareMillimeters;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** Something carried on board. */
public record Item(Facts facts) implements Thing {
    /** Who it is for. */
    public enum For {
        RENTER,
        STAFF,
        EMERGENCY
    }

    /** Clean things and dirty things never share a bag. */
    public enum Bag {
        CLEAN,
        DIRTY
    }

    private static final Shape.Draft<Item> DRAFT = Shape.draft("item", "Something carried on board.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "item", "What the handbook calls it: `Drinking-water hose`.");
    public static final Key<Integer> COUNT = DRAFT.optional("count", Type.whole(1, 99), "How many.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<Kilograms> WEIGHT = DRAFT.optional(
            "weight", Type.measured(Kilograms.SCALE), "What one of them weighs, full where it is carried full.");
    public static final Key<Meters> LENGTH = DRAFT.optional(
            "length",
            Type.measured(Meters.SCALE),
            "How far one of them reaches, pulled out: a hose, an extension cord.");
    public static final Key<SquareMillimeters> CONDUCTOR = DRAFT.optional(
            "conductor",
            Type.measured(SquareMillimeters.SCALE),
            "Size of one conductor, if it lengthens the power cord.");
    public static final Key<For> FOR = DRAFT.optional("for", Type.choice(For.class), "Who it is for.");
    public static final Key<Bag> BAG =
            DRAFT.optional("bag", Type.choice(Bag.class), "Clean or dirty: which bag it lives in.");
    public static final Key<List<Located<String>>> GOES_ON =
            DRAFT.optional("goes-on", Type.list(Type.reference("connection")), "What it is connected to.");
    public static final Key<String> NOTE = DRAFT.optional("note", Type.TEXT, "What a renter must know of it.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Item> SHAPE = DRAFT.done(Item::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }

    @Override
    public boolean forStaff() {
        return facts.find(FOR).filter(For.STAFF::equals).isPresent();
    }
}
