package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** Leveling jacks. */
public record Jacks(Facts facts) implements Described {
    private static final Shape.Draft<Jacks> DRAFT = Shape.draft("jacks", "Leveling jacks.");
    public static final Key<Integer> COUNT = DRAFT.required(
            "count", Type.whole(2, 8), "How many.", Range.of("2", "8").usual("3", "6"));
    public static final Key<List<Located<String>>> CONTROLS =
            DRAFT.optional("controls", Type.list(Type.reference("switch")), "What works them.");
    public static final Key<List<Located<String>>> AFTER = DRAFT.optional(
            "after", Type.list(Type.ID), "What must be set up before they go down, and stays so until they are up.");
    public static final Key<String> TOLERANCE = DRAFT.optional("tolerance", Type.TEXT, "How level is level enough.");
    public static final Key<String> CONDITIONS =
            DRAFT.optional("conditions", Type.TEXT, "How engine, brake and gear must stand.");
    public static final Key<String> UP_SIGN = DRAFT.optional("up-sign", Type.LOOK, "How to see that all are up.");
    public static final Key<String> OVERRIDE =
            DRAFT.forStaff("override", Type.TEXT, "What staff tell on the phone if they stay down.");
    public static final Shape<Jacks> SHAPE = DRAFT.done(Jacks::new);
}
