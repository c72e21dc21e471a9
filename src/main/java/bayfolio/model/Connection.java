package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/**
 * Where something is connected, filled or drained: shore inlet, fresh fill, sewer outlet, fuel
 * filler, hitch.
 */
public record Connection(Facts facts) implements Thing {
    /** How a hitch holds what is towed, and what holds it if the hitch comes loose. */
    public enum Coupling {
        PIN_AND_CHAINS,
        BALL_AND_CABLE
    }

    private static final Shape.Draft<Connection> DRAFT =
            Shape.draft("connection", "Where something is connected, filled or drained.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "connection", "What the handbook calls it: `City water inlet`.");
    public static final Key<String> WHAT = DRAFT.required("what", Type.TEXT, "What goes in or out here.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    public static final Key<Access> ACCESS = DRAFT.required("access", Type.choice(Access.class), "Who may use it.");
    public static final Key<String> FITTING =
            DRAFT.optional("fitting", Type.TEXT, "Thread, plug or bayonet, with its size.");
    public static final Key<Coupling> COUPLING = DRAFT.optional(
            "coupling",
            Type.choice(Coupling.class),
            "How a tow hitch holds: by a pin, with two chains, or by a ball, with a breakaway cable. Where it is not"
                    + " stated, `ball-and-cable` in `europe` and `pin-and-chains` elsewhere.");
    public static final Key<String> CAP =
            DRAFT.optional("cap", Type.TEXT, "Its cap or lid: color, words, how it opens.");
    public static final Key<String> LABEL =
            DRAFT.optional("label", Type.PLATE, "The words on the cap or beside it, word for word.");
    public static final Key<List<Located<String>>> NOT_TO_CONFUSE = DRAFT.optional(
            "not-to-confuse-with",
            Type.list(Type.reference("connection")),
            "Connections nearby that it must not be mixed up with.");
    public static final Key<String> CONFUSION =
            DRAFT.optional("if-confused", Type.TEXT, "What happens if it is mixed up.");
    public static final Key<List<Located<String>>> FITS =
            DRAFT.optional("fits", Type.list(Type.reference("item")), "Items on board that fit it.");
    public static final Key<String> TANK =
            DRAFT.optional("tank", Type.reference("tank"), "The tank that it fills or empties.");
    public static final Key<String> REACH =
            DRAFT.optional("reach", Type.TEXT, "How far our own hose or cord reaches from here.");
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Connection> SHAPE = DRAFT.done(Connection::new);

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
