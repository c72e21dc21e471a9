package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** A way in or out: entry door, cab door, emergency exit. */
public record Door(Facts facts) implements Thing {
    private static final Shape.Draft<Door> DRAFT =
            Shape.draft("door", "A way in or out: entry door, cab door, emergency exit.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "door", "What the handbook calls it: `Entry door`.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<Access> ACCESS = DRAFT.required("access", Type.choice(Access.class), "Who may use it.");
    public static final Key<Boolean> EMERGENCY =
            DRAFT.optional("emergency", Type.YES_NO, "Whether it is a way out in an emergency.");
    public static final Key<String> OPENS =
            DRAFT.optional("opens", Type.TEXT, "How it opens, from inside and in the dark.");
    public static final Key<String> GRAB_HANDLE =
            DRAFT.optional("grab-handle", Type.PLACE, "Where the handle is to hold on to as one steps in.");
    public static final Key<String> LOCKS = DRAFT.optional("locks", Type.TEXT, "How it locks, and with which key.");
    public static final Key<String> OPEN_LOOK =
            DRAFT.optional("open-look", Type.LOOK, "How to see that it is open or unlocked.");
    public static final Key<String> SHUT_LOOK =
            DRAFT.optional("shut-look", Type.LOOK, "How to see that it is shut for the road.");
    public static final Key<Meters> DROP = DRAFT.optional(
            "drop",
            Type.measured(Meters.SCALE),
            "From its sill down to the ground.",
            Range.of("0.1 m", "4.42 m")
                    .usual("entry-door", "0.25 m", "1.1 m")
                    .because("an entry has a step above 0.35 m; a roof hatch the coach height"));
    public static final Key<String> NEAR = DRAFT.optional("near", Type.TEXT, "Which seats or beds it serves.");
    public static final Key<String> KEEP_CLEAR =
            DRAFT.optional("keep-clear", Type.TEXT, "What must stay free around it.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Door> SHAPE = DRAFT.done(Door::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }

    public Access access() {
        return facts.get(ACCESS);
    }
}
