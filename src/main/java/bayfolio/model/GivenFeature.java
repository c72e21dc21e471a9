package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** A further word for conditions that a kind of equipment gives. */
public record GivenFeature(Facts facts) implements Described {
    private static final Shape.Draft<GivenFeature> DRAFT =
            Shape.draft("feature", "A word for conditions, and when a coach has it.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "The word, in American spelling.");
    public static final Key<String> THERE_WHEN =
            DRAFT.optional("there-when", Type.TEXT, "When a coach has it; as the kind itself where left out.");
    public static final Shape<GivenFeature> SHAPE = DRAFT.done(GivenFeature::new);
}
