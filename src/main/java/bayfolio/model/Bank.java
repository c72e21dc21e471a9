package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Celsius;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** Batteries wired as one. */
public record Bank(Facts facts) implements Thing {
    /** What kind of battery. */
    public enum Chemistry {
        FLOODED_LEAD_ACID,
        AGM,
        GEL,
        LITHIUM
    }

    private static final Shape.Draft<Bank> DRAFT = Shape.draft("bank", "Batteries wired as one.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "bank", "What the handbook calls it: `House batteries`.");
    public static final Key<Chemistry> CHEMISTRY =
            DRAFT.required("chemistry", Type.choice(Chemistry.class), "What kind of battery.");
    public static final Key<Volts> VOLTS = DRAFT.required(
            "volts",
            Type.measured(Volts.SCALE),
            "Nominal voltage.",
            Range.of("11 V", "60 V")
                    .usual("12 V", "25.6 V")
                    .because("12 lead; 12.8 lithium of four cells (3.2 V); 24 and 25.6"));
    public static final Key<AmpHours> AMP_HOURS = DRAFT.required(
            "amp-hours",
            Type.measured(AmpHours.SCALE),
            "Capacity of the whole bank.",
            Range.of("20 Ah", "3000 Ah")
                    .usual("house-bank bus-style", "150 Ah", "1300 Ah")
                    .usual("house-bank", "70 Ah", "500 Ah")
                    .usual("house-bank lithium", "70 Ah", "800 Ah")
                    .usual("chassis-bank", "50 Ah", "260 Ah")
                    .because("one 12 V battery 50 to 330 Ah"));
    public static final Key<Integer> COUNT = DRAFT.optional(
            "count",
            Type.whole(1, 24),
            "How many batteries.",
            Range.of("1", "16").usual("1", "8"));
    public static final Key<Amps> FUSE = DRAFT.optional(
            "fuse",
            Type.measured(Amps.SCALE),
            "Rating of the main fuse or breaker that all its current passes; a starter battery mostly has none.",
            Range.of("10 A", "1000 A")
                    .usual("30 A", "600 A")
                    .because("0.4 to 4 x the capacity of the bank in A; a starter bank 100 to 400"));
    public static final Key<Share> USABLE = DRAFT.optional(
            "usable",
            Type.measured(Share.SCALE),
            "The share that may be used.",
            Range.of("10 %", "100 %")
                    .in("flooded-lead-acid|agm|gel", "10 %", "80 %")
                    .in("lithium", "40 %", "100 %")
                    .usual("flooded-lead-acid|agm|gel", "30 %", "60 %")
                    .usual("lithium", "70 %", "95 %")
                    .because("50 % lead, 80 % lithium")
                    .source("manuals of batteries and inverters"));
    public static final Key<Seconds> RATED_OVER = DRAFT.optional(
            "rated-over",
            Type.measured(Seconds.SCALE),
            "The time in which the label lets that capacity come out; `20 h` where left out.",
            Range.of("1 h", "120 h").usual("5 h", "100 h").because("capacities are told for 5, 10, 20 or 100 hours"));
    public static final Key<String> PEUKERT_EXPONENT = DRAFT.optional(
            "peukert-exponent",
            Type.EXPONENT,
            "How much more a strong current takes, from its data sheet or meter; usual for its chemistry where left out.");
    public static final Key<Amps> CHARGE_LIMIT = DRAFT.optional(
            "charge-limit",
            Type.measured(Amps.SCALE),
            "The strongest current that it may be charged with.",
            Range.of("1 A", "600 A")
                    .usual("5 A", "300 A")
                    .because("a tenth to half of the capacity in amps")
                    .source("manuals of batteries"));
    public static final Key<String> GOOD_FIGURE =
            DRAFT.optional("good-figure", Type.LOOK, "What the monitor shows when all is well.");
    public static final Key<String> LOW_FIGURE =
            DRAFT.optional("low-figure", Type.LOOK, "The reading below which it must be charged.");
    public static final Key<Celsius> FROST_LIMIT = DRAFT.optional(
            "frost-limit",
            Type.measured(Celsius.SCALE),
            "The temperature below which it takes no charge.",
            Range.of("-30 °C", "10 °C").usual("-10 °C", "5 °C").because("lithium is not charged below 0"));
    public static final Key<List<Located<String>>> CHARGED_BY =
            DRAFT.optional("charged-by", Type.list(Type.reference("supply", "appliance")), "What charges it.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Shape<Bank> SHAPE = DRAFT.done(Bank::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }
}
