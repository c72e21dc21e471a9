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

/** A space behind a door or hatch of its own, with a number on the door. */
public record Compartment(Facts facts) implements Thing {
    private static final Shape.Draft<Compartment> DRAFT =
            Shape.draft("compartment", "A space behind a door or hatch of its own.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "compartment", "Number and name as on the door label: `L3 Service bay`.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT, true);
    public static final Key<Access> ACCESS = DRAFT.required("access", Type.choice(Access.class), "Who may open it.");
    public static final Key<String> ACCESS_REASON =
            DRAFT.optional("access-reason", Type.TEXT, "Why, in one sentence for the renter.");
    public static final Key<Boolean> EMERGENCY =
            DRAFT.optional("emergency", Type.YES_NO, "Whether everybody must be able to reach it in an emergency.");
    public static final Key<List<Located<String>>> INSIDE = DRAFT.optional(
            "inside", Type.list(Type.TEXT), "What is inside that is no switch, connection, tank or item.");
    public static final Key<Side> SECOND_DOOR = DRAFT.optional(
            "second-door", Type.choice(Side.class), "The other side that it opens to, if it goes right through.");
    public static final Key<String> OPENS =
            DRAFT.optional("opens", Type.TEXT, "How it opens: handle, latches, swing or lift, strut.");
    public static final Key<String> LOCKS = DRAFT.optional("locks", Type.TEXT, "How it locks, and with which key.");
    public static final Key<String> STAYS_OPEN = DRAFT.optional("stays-open", Type.TEXT, "What holds it open.");
    public static final Key<String> CLEARANCE = DRAFT.optional(
            "clearance", Type.TEXT, "What it opens into, and what blocks it: a slide-out, the awning, the step.");
    public static final Key<List<Located<String>>> BLOCKED_BY = DRAFT.optional(
            "blocked-by",
            Type.list(Type.reference("slide", "awning", "step")),
            "What keeps it shut while that is out.");
    public static final Key<String> WHEN =
            DRAFT.optional("when", Type.TEXT, "When it may be opened: parked only, not in rain.");
    public static final Key<String> KEEP_CLEAR = DRAFT.optional(
            "keep-clear", Type.TEXT, "What must stay free inside: vents, drain holes, the swing of a tray.");
    public static final Key<String> NEVER_STORE =
            DRAFT.optional("never-store", Type.TEXT, "What must not be stored in it.");
    public static final Key<Kilograms> LOAD_LIMIT = DRAFT.optional(
            "load-limit",
            Type.measured(Kilograms.SCALE),
            "The most that its floor may carry.",
            Range.of("1 kg", "1500 kg")
                    .usual("storage-bay", "15 kg", "300 kg")
                    .usual("cord-compartment|service-bay", "10 kg", "100 kg")
                    .usual("left|right|front|rear", "10 kg", "300 kg")
                    .usual("5 kg", "300 kg")
                    .orNothing());
    public static final Key<String> LIGHT = DRAFT.optional("light", Type.TEXT, "Its light and how that is switched.");
    public static final Key<String> CLIMATE =
            DRAFT.optional("climate", Type.TEXT, "Heated, dry, drained, open to frost.");
    public static final Key<String> DANGER =
            DRAFT.optional("danger", Type.TEXT, "What can hurt: hot exhaust, moving part, live part, gas, acid.");
    public static final Key<String> SHUT_LOOK =
            DRAFT.optional("shut-look", Type.LOOK, "How the shut door looks and how it is proved before driving.");
    public static final Key<String> IF_IT_OPENS =
            DRAFT.optional("if-it-opens", Type.TEXT, "What falls if it opens on the road, and where to strap it.");
    public static final Key<String> LABEL = DRAFT.optional("label", Type.PLATE, "The text on the door, word for word.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Compartment> SHAPE = DRAFT.done(Compartment::new);

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

    public boolean emergency() {
        return facts.find(EMERGENCY).orElse(false);
    }

    /** The keys of its spot, for findings about where it is. */
    public Spot.Keys spotKeys() {
        return SPOT;
    }
}
