package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
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

    /** What is not counted with the other things of its place. */
    public enum CountedWith {
        PAPERS,
        KEYS,
        /** What is used up, and topped up before each hire. */
        SUPPLIES
    }

    /** Clean things and dirty things never share a bag. */
    public enum Bag {
        CLEAN,
        DIRTY
    }

    private static final Shape.Draft<Item> DRAFT = Shape.draft("item", "Something carried on board.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "item", "What the handbook calls it: `Drinking-water hose`.");
    public static final Key<Integer> COUNT = DRAFT.optional(
            "count",
            Type.whole(1, 99),
            "How many.",
            Range.of("1", "99")
                    .usual("disposable-gloves", "1", "99")
                    .usual(
                            "wheel-chock|leveling-ramp|jack-pad|drinking-hose|sewer-hose|supply-adapter|fire-extinguisher",
                            "1",
                            "8")
                    .usual("1", "24")
                    .because("more only of what is used up"));
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<Kilograms> WEIGHT = DRAFT.optional(
            "weight",
            Type.measured(Kilograms.SCALE),
            "What one of them weighs, full where it is carried full.",
            Range.of("0.02 kg", "150 kg")
                    .usual("0.1 kg", "25 kg")
                    .because("23 kg is the ideal lift")
                    .source("trade pages"));
    public static final Key<Meters> LENGTH = DRAFT.optional(
            "length",
            Type.measured(Meters.SCALE),
            "How far one of them reaches, pulled out: a hose, an extension cord.",
            Range.of("0.2 m", "60 m").usual("1.5 m", "30 m"));
    public static final Key<SquareMillimeters> CONDUCTOR = DRAFT.optional(
            "conductor",
            Type.measured(SquareMillimeters.SCALE),
            "Size of one conductor, if it lengthens the power cord.",
            Range.of("0.7 mm²", "34 mm²")
                    .usual("1.5 mm²", "21.2 mm²")
                    .because("as the cord")
                    .source("NEC article 551"));
    public static final Key<For> FOR = DRAFT.optional("for", Type.choice(For.class), "Who it is for.");
    public static final Key<Bag> BAG =
            DRAFT.optional("bag", Type.choice(Bag.class), "Clean or dirty: which bag it lives in.");
    public static final Key<CountedWith> COUNTED_WITH = DRAFT.optional(
            "counted-with",
            Type.choice(CountedWith.class),
            "What it is counted with on the inventory sheet, if not with its place; keys, gloves and toilet fluid are known"
                    + " by their roles.");
    public static final Key<String> REPLACEMENT_PRICE = DRAFT.forStaff(
            "replacement-price",
            new Type.Text("price", "^[0-9]{1,6}([.][0-9]{2})? [A-Z]{3}$", "an amount and a currency, such as `35 USD`"),
            "What one of them costs if it does not come back.");
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
