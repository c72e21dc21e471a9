package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** The entry step. */
public record Step(Facts facts) implements Thing {
    /** What moves it. */
    public enum Kind {
        ELECTRIC,
        MANUAL,
        FIXED
    }

    private static final Shape.Draft<Step> DRAFT = Shape.draft("step", "The entry step.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "step", "What the handbook calls it: `Entry step`.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<Kind> KIND = DRAFT.required("kind", Type.choice(Kind.class), "What moves it.");
    public static final Key<String> MOVES = DRAFT.optional("moves", Type.TEXT, "When it moves by itself.");
    public static final Key<String> OUT_LOOK =
            DRAFT.optional("out-look", Type.LOOK, "How to see that it is fully out.");
    public static final Key<String> IN_LOOK =
            DRAFT.optional("in-look", Type.LOOK, "How to see that it is in for the road.");
    public static final Key<List<Located<String>>> CONTROLS =
            DRAFT.optional("controls", Type.list(Type.reference("switch")), "Switches that work it.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Step> SHAPE = DRAFT.done(Step::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }
}
