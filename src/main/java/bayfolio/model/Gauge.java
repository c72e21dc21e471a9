package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Something read, not operated: gauge, lamp, meter, alarm. */
public record Gauge(Facts facts) implements Thing {
    /** How it shows what it shows. */
    public enum Display {
        /** One lamp. */
        LAMP,
        /** A lamp for each mark, of which one glows. */
        LAMPS,
        /** All are lit up to the mark: bars, or lamps in a row. */
        BARS,
        NEEDLE,
        /** Figures or words in a window. */
        FIGURES
    }

    private static final Shape.Draft<Gauge> DRAFT =
            Shape.draft("gauge", "Something read, not operated: gauge, lamp, meter, alarm.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "gauge", "What the handbook calls it: `Tank gauge`.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    private static final Board.Keys BOARD = Board.Keys.declare(DRAFT);
    public static final Key<String> SHOWS = DRAFT.required("shows", Type.TEXT, "What it shows.");
    public static final Key<String> NORMAL =
            DRAFT.optional("normal", Type.TEXT, "What it shows or does when all is well.");
    public static final Key<String> MEANS = DRAFT.optional("means", Type.TEXT, "What other readings or sounds mean.");
    public static final Key<String> STEPS =
            DRAFT.optional("steps", Type.TEXT, "The steps it can show: quarters, percent, lamps.");
    public static final Key<Display> DISPLAY = DRAFT.optional(
            "display",
            Type.choice(Display.class),
            "What is seen: one lamp, `lamps` of which one glows, `bars` up to a mark, a needle, figures in a window.");
    public static final Key<List<Located<String>>> MARKS = DRAFT.optional(
            "marks",
            Type.list(Type.PLATE),
            "The marks on it, from empty to full, as they stand there: `[E, 1/3, 2/3, F]`.");
    public static final Key<String> READS = DRAFT.optional(
            "reads",
            Type.PLATE,
            "What it shows when all is well: one of its marks, or what stands in its window or beside its lamp.");
    public static final Key<List<Located<Pose>>> NORMAL_POSE = DRAFT.optional(
            "normal-pose", Type.list(Type.choice(Pose.class)), "How its lamp is when all is well: `[dark]`.");
    public static final Key<String> TRUTH = DRAFT.optional("truth", Type.TEXT, "Where it is known to be wrong.");
    public static final Key<String> ALIVE_WITH_SWITCH_OFF =
            DRAFT.optional("with-battery-off", Type.TEXT, "Whether it works while the house battery switch is off.");
    public static final Key<LocalDate> REPLACE_BY = DRAFT.optional(
            "replace-by",
            Type.DAY,
            "The replace-by date printed on it.",
            Range.of("model-year", "as-of + 11 years")
                    .usual("as-of", "as-of + 3832 days")
                    .because("CO 5 to 10 years, gas 5, smoke 10; past: told")
                    .source("notes of alarm makers"));
    public static final Key<List<Located<String>>> OF = DRAFT.optional(
            "of", Type.list(Type.reference("tank", "bank", "supply", "circuit", "load")), "What it is the gauge of.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Gauge> SHAPE = DRAFT.ofEachCoach(REPLACE_BY).done(Gauge::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }

    @Override
    public Optional<Board> board() {
        return BOARD.of(facts);
    }
}
