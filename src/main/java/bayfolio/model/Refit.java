package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.time.LocalDate;
import java.util.List;

/** Something that was changed on a coach, noted so that all that hangs on it is looked at again. */
public record Refit(Facts facts) implements Described {
    /** What a refit makes to be measured again. */
    public enum Measures {
        SIZE,
        WEIGHTS
    }

    private static final Shape.Draft<Refit> DRAFT =
            Shape.draft("refit", "Something that was changed on the coach; what hangs on it is to be looked at again.");
    public static final Key<LocalDate> ON = DRAFT.required(
            "on",
            Type.DAY,
            "The day on which it was done.",
            Range.of("model-year - 2 years", "as-of")
                    .because("not after the as-of day, not before the coach was built"));
    public static final Key<String> WHAT =
            DRAFT.required("what", Type.TEXT, "What was done: `Lithium house batteries fitted`.");
    public static final Key<List<Located<String>>> THINGS = DRAFT.required(
            "things",
            Type.list(Note.ANY_THING),
            "What was put in, moved or changed, or stands where something was taken out.");
    public static final Key<List<Located<Measures>>> MEASURES = DRAFT.optional(
            "measures", Type.list(Type.choice(Measures.class)), "What it makes to be measured or weighed again.");
    public static final Shape<Refit> SHAPE = DRAFT.done(Refit::new);
}
