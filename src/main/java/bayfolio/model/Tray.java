package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Kilograms;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** A sliding floor in a compartment. */
public record Tray(Facts facts) implements Thing {
    private static final Shape.Draft<Tray> DRAFT = Shape.draft("tray", "A sliding floor in a compartment.");
    private static final Identity IDENTITY = Identity.declare(DRAFT, "tray", "What the handbook calls it.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<String> PULLS_TO =
            DRAFT.required("pulls-to", Type.TEXT, "The side or sides that it pulls out to.");
    public static final Key<String> LATCH = DRAFT.optional("latch", Type.TEXT, "How it is unlatched and latched.");
    public static final Key<String> LOCKED_LOOK =
            DRAFT.optional("locked-look", Type.LOOK, "How to see that it is locked for the road.");
    public static final Key<Kilograms> LOAD_LIMIT = DRAFT.optional(
            "load-limit",
            Type.measured(Kilograms.SCALE),
            "The most that it may carry.",
            Range.of("5 kg", "600 kg").usual("30 kg", "300 kg").orNothing());
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Tray> SHAPE = DRAFT.done(Tray::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }
}
