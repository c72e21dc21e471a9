package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
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
    public static final Key<Liters> CAPACITY = DRAFT.required(
            "capacity",
            Type.measured(Liters.SCALE),
            "What it holds, measured where it could be.",
            Range.of("2 L", "800 L")
                    .in("fresh", "20 L", "800 L")
                    .in("gray", "10 L", "700 L")
                    .in("black", "10 L", "500 L")
                    .in("cassette", "5 L", "30 L")
                    .in("gasoline", "2 L", "600 L")
                    .in("gasoline fuel", "40 L", "600 L")
                    .in("diesel", "40 L", "800 L")
                    .in("exhaust-fluid", "4 L", "120 L")
                    .in("lp-gas", "2 L", "350 L")
                    .usual("fresh bus-style", "140 L", "480 L")
                    .usual("fresh bus-style europe", "80 L", "480 L")
                    .usual("fresh cab-over", "75 L", "320 L")
                    .usual("fresh low-profile", "60 L", "200 L")
                    .usual("fresh van", "30 L", "190 L")
                    .usual("gray bus-style", "100 L", "340 L")
                    .usual("gray bus-style europe", "70 L", "340 L")
                    .usual("gray cab-over", "60 L", "260 L")
                    .usual("gray low-profile", "50 L", "180 L")
                    .usual("gray van", "20 L", "150 L")
                    .usual("black bus-style", "80 L", "260 L")
                    .usual("black cab-over", "50 L", "200 L")
                    .usual("black low-profile", "20 L", "110 L")
                    .usual("black van", "15 L", "90 L")
                    .usual("cassette", "15 L", "21 L")
                    .usual("gasoline fuel bus-style", "180 L", "400 L")
                    .usual("gasoline fuel cab-over", "90 L", "310 L")
                    .usual("gasoline fuel low-profile", "60 L", "125 L")
                    .usual("gasoline fuel van", "60 L", "130 L")
                    .usual("diesel bus-style", "240 L", "600 L")
                    .usual("diesel bus-style europe", "60 L", "400 L")
                    .usual("diesel cab-over", "90 L", "310 L")
                    .usual("diesel low-profile|van", "60 L", "130 L")
                    .usual("lp-gas", "4 L", "200 L")
                    .usual("exhaust-fluid bus-style", "25 L", "80 L")
                    .usual("exhaust-fluid bus-style europe", "9 L", "50 L")
                    .usual("exhaust-fluid cab-over", "9 L", "40 L")
                    .usual("exhaust-fluid low-profile|van", "9 L", "30 L")
                    .because("25 to 105 gal; fixed tank 10 to 50 gal of water; cylinder: one, by the gas in it"));
    public static final Key<Liters> CAPACITY_PLATE = DRAFT.optional(
            "capacity-plate",
            Type.measured(Liters.SCALE),
            "The same capacity as the maker's plate gives it.",
            Range.of("2 L", "800 L").usual("4 L", "600 L").asOnThePlate().because("within 2 % of the capacity"));
    public static final Key<Share> USABLE = DRAFT.optional(
            "usable",
            Type.measured(Share.SCALE),
            "The share of it that can be used.",
            Range.of("40 %", "100 %")
                    .in("fresh|gray|exhaust-fluid", "50 %", "100 %")
                    .in("black|cassette", "50 %", "100 %")
                    .in("gasoline|diesel", "60 %", "100 %")
                    .in("lp-gas", "40 %", "100 %")
                    .usual("fresh|gray|exhaust-fluid", "85 %", "100 %")
                    .usual("black|cassette", "75 %", "95 %")
                    .usual("gasoline|diesel", "85 %", "98 %")
                    .usual("lp-gas", "75 %", "100 %")
                    .because("80 % fill limit; cylinder figures already count the gas alone; 29 CFR 1910.110")
                    .source("29 CFR 1910.110"));
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<Integer> COUNT = DRAFT.optional(
            "count",
            Type.whole(1, 9),
            "How many alike, for gas cylinders and cassettes.",
            Range.of("1", "6").usual("1", "2"));
    public static final Key<Kilograms> EACH = DRAFT.optional(
            "each",
            Type.measured(Kilograms.SCALE),
            "The gas in one full cylinder.",
            Range.of("0.4 kg", "50 kg")
                    .usual("north-america", "4.5 kg", "18.2 kg")
                    .usual("europe", "2.7 kg", "15 kg")
                    .because("10, 20, 30, 40 lb; 2.75, 5, 6, 11, 13 kg; 20 lb")
                    .source("29 CFR 1910.110"));
    public static final Key<Kilograms> FULL_WEIGHT = DRAFT.optional(
            "full-weight",
            Type.measured(Kilograms.SCALE),
            "What a full one weighs, with contents, where it is carried.",
            Range.of("1 kg", "110 kg")
                    .usual("5 kg", "45 kg")
                    .because("cylinder 1.7 to 2.5 x gas (alloy, steel); cassette liters + 3 to 6 kg"));
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
    public static final Key<LocalDate> MEASURED_ON = DRAFT.optional(
            "measured-on",
            Type.DAY,
            "When it was measured.",
            Range.of("model-year - 2 years", "as-of")
                    .usual("as-of - 3 years", "as-of")
                    .because(
                            "not after the as-of day, not before the coach was built; older than 3 years or than a refit: ask"));
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
