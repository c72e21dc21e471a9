package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** A site for a coach, with the places of its posts. */
public record Pitch(Facts facts) implements Described {
    private static final Shape.Draft<Pitch> DRAFT =
            Shape.draft("pitch", "A site for a coach, with the places of its posts.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "Its name in addresses.");
    public static final Key<String> NAME =
            DRAFT.required("name", Type.NAME, "What the handbook calls it: `Site 12, Hill Camp`.");
    public static final Key<Region> REGION = DRAFT.optional(
            "region", Type.choice(Region.class), "For the coaches of which region it is; for all where left out.");
    public static final Key<PitchPost> POWER =
            DRAFT.optional("power", Type.nested(PitchPost.SHAPE), "The outlet for the power cord.");
    public static final Key<PitchPost> WATER =
            DRAFT.optional("water", Type.nested(PitchPost.SHAPE), "The faucet for drinking water.");
    public static final Key<PitchPost> SEWER =
            DRAFT.optional("sewer", Type.nested(PitchPost.SHAPE), "The opening for the sewer hose.");
    public static final Shape<Pitch> SHAPE = DRAFT.done(Pitch::new);

    public String name() {
        return facts.get(NAME);
    }
}
