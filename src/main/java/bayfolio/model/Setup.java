package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** The order in which this coach is set up at a site, and left again. */
public record Setup(Facts facts) implements Described {
    private static final Shape.Draft<Setup> DRAFT =
            Shape.draft("setup", "The order in which this coach is set up; it is left again from the end.");
    public static final Key<List<Located<String>>> ORDER = DRAFT.optional(
            "order",
            Type.list(Type.ID),
            "What goes before what, where this coach wants another order than most, by the turns of its equipment: "
                    + "`[jacks, plug]` levels the coach before it is plugged in, and all else stays.");
    public static final Key<String> WHY = DRAFT.optional("why", Type.TEXT, "Why this coach wants that order.");
    public static final Shape<Setup> SHAPE = DRAFT.done(Setup::new);
}
