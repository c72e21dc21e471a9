package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** The order in which this coach is set up. */
public record Setup(Facts facts) implements Described {
    /** What the maker of the coach wants first. */
    public enum First {
        LEVEL,
        SLIDES
    }

    private static final Shape.Draft<Setup> DRAFT = Shape.draft("setup", "The order in which this coach is set up.");
    public static final Key<String> LEVEL_AND_SLIDES =
            DRAFT.optional("level-and-slides", Type.TEXT, "Which goes first, level or slide-outs, and why.");
    public static final Key<First> FIRST = DRAFT.optional(
            "first", Type.choice(First.class), "What goes first when setting up; going back, it is last.");
    public static final Key<String> BREAKING_CAMP =
            DRAFT.optional("breaking-camp", Type.TEXT, "The order for going back.");
    public static final Shape<Setup> SHAPE = DRAFT.done(Setup::new);
}
