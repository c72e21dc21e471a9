package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.Share;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A tank for water, waste, fuel or gas. */
public record Tank(Facts facts) implements Thing {
    /** What is in a tank. */
    public enum Contents {
        FRESH,
        GRAY,
        BLACK,
        CASSETTE,
        GASOLINE,
        DIESEL,
        EXHAUST_FLUID,
        LP_GAS
    }

    private static final Shape.Draft<Tank> DRAFT = Shape.draft("tank", "A tank for water, waste, fuel or gas.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "tank", "What the handbook calls it: `Gray tank`.");
    public static final Key<Contents> CONTENTS =
            DRAFT.required("contents", Type.choice(Contents.class), "What is in it.");
    public static final Key<Liters> CAPACITY =
            DRAFT.required("capacity", Type.measured(Liters.SCALE), "What it holds, measured where it could be.");
    public static final Key<Liters> CAPACITY_PLATE = DRAFT.optional(
            "capacity-plate", Type.measured(Liters.SCALE), "The same capacity as the maker's plate gives it.");
    public static final Key<Share> USABLE =
            DRAFT.optional("usable", Type.measured(Share.SCALE), "The share of it that can be used.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<Integer> COUNT =
            DRAFT.optional("count", Type.whole(1, 9), "How many alike, for gas cylinders and cassettes.");
    public static final Key<Kilograms> EACH =
            DRAFT.optional("each", Type.measured(Kilograms.SCALE), "The gas in one full cylinder.");
    public static final Key<Kilograms> FULL_WEIGHT = DRAFT.optional(
            "full-weight",
            Type.measured(Kilograms.SCALE),
            "What a full one weighs, with contents, where it is carried.");
    public static final Key<String> GAUGE_STEPS =
            DRAFT.optional("gauge-steps", Type.TEXT, "The steps that its gauge shows.");
    public static final Key<String> GAUGE_TRUTH =
            DRAFT.optional("gauge-truth", Type.TEXT, "Where the gauge is known to be wrong.");
    public static final Key<List<Located<String>>> DRAINS =
            DRAFT.optional("drains", Type.list(Type.reference("connection")), "Where it drains.");
    public static final Key<Boolean> HEATED =
            DRAFT.optional("heated", Type.YES_NO, "Whether it is kept from freezing.");
    public static final Key<String> MEASURED_BY =
            DRAFT.forStaff("measured-by", Type.TEXT, "Who measured the capacity.");
    public static final Key<LocalDate> MEASURED_ON = DRAFT.optional("measured-on", Type.DAY, "When it was measured.");
    public static final Shape<Tank> SHAPE = DRAFT.done(Tank::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }

    public Contents contents() {
        return facts.get(CONTENTS);
    }
}
