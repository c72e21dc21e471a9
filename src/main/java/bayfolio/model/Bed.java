package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Meters;

/** One bed. */
public record Bed(Facts facts) implements Described {
    private static final Shape.Draft<Bed> DRAFT = Shape.draft("bed", "One bed.");
    public static final Key<String> WHERE = DRAFT.required("where", Type.PLACE, "Where it is.");
    public static final Key<Integer> SLEEPS = DRAFT.required(
            "sleeps",
            Type.whole(1, 4),
            "How many people.",
            Range.of("1", "4").usual("1", "2").because("three or four in one bed are rare"));
    public static final Key<Meters> LENGTH = DRAFT.optional(
            "length",
            Type.measured(Meters.SCALE),
            "Its length.",
            Range.of("1.2 m", "2.7 m").usual("1.7 m", "2.2 m").because("shorter is a child bed: say so"));
    public static final Key<Meters> WIDTH = DRAFT.optional(
            "width",
            Type.measured(Meters.SCALE),
            "Its width.",
            Range.of("0.45 m", "2.7 m")
                    .usual("0.6 m", "2.05 m")
                    .because("0.5 m a sleeper at least; usual 0.53 to 1.0"));
    public static final Key<Kilograms> LOAD_LIMIT = DRAFT.optional(
            "load-limit",
            Type.measured(Kilograms.SCALE),
            "The most it may carry.",
            Range.of("30 kg", "600 kg")
                    .usual("75 kg", "300 kg")
                    .because("usual 75 to 150 a sleeper; 75 kg a person")
                    .source("Regulation (EU) No 1230/2012"));
    public static final Key<String> MADE_UP = DRAFT.optional("made-up", Type.TEXT, "How it is made up.");
    public static final Shape<Bed> SHAPE = DRAFT.done(Bed::new);
}
