package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Seconds;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** Anything operated: switch, breaker, valve, tap, button, panel, keypad, fuse box. */
public record Switch(Facts facts) implements Thing {
    /** How it is made, which decides how its states look and what must be said of it. */
    public enum Make {
        ROTARY_DISCONNECT,
        ROCKER,
        TOGGLE,
        BREAKER_HANDLE,
        MOMENTARY_BUTTON,
        LATCHING_BUTTON,
        TOUCH_PANEL,
        PANEL,
        KEY,
        KEYPAD,
        PULL,
        LEVER,
        HANDWHEEL,
        BALL_VALVE,
        SLIDE_VALVE,
        TAP,
        KNOB,
        PEDAL,
        CRANK,
        FUSES,
        OUTLET
    }

    private static final Shape.Draft<Switch> DRAFT =
            Shape.draft("switch", "Anything operated: switch, breaker, valve, tap, button, panel, fuse box.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "switch", "What the handbook calls it: `House battery switch`.");
    public static final Key<Make> MAKE = DRAFT.required("make", Type.choice(Make.class), "How it is made.");
    private static final Spot.Keys SPOT = Spot.Keys.declare(DRAFT);
    private static final Board.Keys BOARD = Board.Keys.declare(DRAFT);
    public static final Key<Access> ACCESS = DRAFT.required("access", Type.choice(Access.class), "Who may work it.");
    public static final Key<String> ACCESS_REASON =
            DRAFT.optional("access-reason", Type.TEXT, "Why, in one sentence for the renter.");
    public static final Key<Boolean> EMERGENCY =
            DRAFT.optional("emergency", Type.YES_NO, "Whether everybody must be able to reach it in an emergency.");
    public static final Key<String> PLATE =
            DRAFT.optional("plate", Type.PLATE, "The words printed on or beside it, word for word.");
    public static final Key<String> WORK = DRAFT.optional(
            "work", Type.ACT, "How to switch it on or open it, or else how to work it: `Pull it straight out`.");
    public static final Key<String> WORK_OFF =
            DRAFT.optional("work-off", Type.ACT, "How to switch it off or shut it: `Push it in until it bumps`.");
    public static final Key<String> ON_LOOK =
            DRAFT.optional("on-look", Type.LOOK, "What ON (or open) looks like, in words and not by color alone.");
    public static final Key<String> OFF_LOOK =
            DRAFT.optional("off-look", Type.LOOK, "What OFF (or shut) looks like, in words and not by color alone.");
    public static final Key<List<Located<Pose>>> ON_POSE = DRAFT.optional(
            "on-pose",
            Type.list(Type.choice(Pose.class)),
            "How it stands, and how its lamp is, when it is ON or open: drawings show it so. Of a rocker the end that is in.");
    public static final Key<List<Located<Pose>>> OFF_POSE =
            DRAFT.optional("off-pose", Type.list(Type.choice(Pose.class)), "The same when it is OFF or shut.");
    public static final Key<String> LAMP = DRAFT.optional("lamp", Type.TEXT, "What its lamp means.");
    public static final Key<List<Located<String>>> TWINS =
            DRAFT.optional("twins", Type.list(Type.reference("switch")), "Switches elsewhere for the same thing.");
    public static final Key<String> TWIN_RULE =
            DRAFT.optional("twin-rule", Type.TEXT, "How twins act together: either toggles, or one overrides.");
    public static final Key<String> AT_PICKUP =
            DRAFT.optional("at-pickup", Type.STATE, "Its state when the renter takes over.");
    public static final Key<String> STORED =
            DRAFT.optional("stored", Type.STATE, "Its state while the coach stands unused.");
    public static final Key<String> RETURNED =
            DRAFT.optional("returned", Type.STATE, "How the renter leaves it at return.");
    public static final Key<String> DRIVING = DRAFT.optional("driving", Type.STATE, "Its state on the road.");
    public static final Key<List<Located<String>>> FEEDS = DRAFT.optional(
            "feeds",
            Type.list(Type.reference(
                    "circuit",
                    "load",
                    "appliance",
                    "switch",
                    "tank",
                    "bank",
                    "supply",
                    "connection",
                    "step",
                    "slide",
                    "awning",
                    "gauge")),
            "What it feeds, lets through or protects.");
    public static final Key<String> STOPS =
            DRAFT.optional("stops", Type.TEXT, "What stops when it is off, in the renter's words.");
    public static final Key<String> STAYS_ALIVE =
            DRAFT.optional("stays-alive", Type.TEXT, "What stays alive although it is off.");
    public static final Key<String> NEEDS =
            DRAFT.optional("needs", Type.TEXT, "What it needs to act: power, brake, key, another switch.");
    public static final Key<String> WRONG_USE = DRAFT.optional("wrong-use", Type.TEXT, "What wrong use does.");
    public static final Key<Seconds> DELAY = DRAFT.optional(
            "delay",
            Type.measured(Seconds.SCALE),
            "How long until the effect is seen.",
            Range.of("0.1 s", "60 min")
                    .usual(
                            "water-pump-switch|coach-main-breaker|generator-breaker|gfci-outlet|dc-fuse-panel|dc-breaker"
                                    + "|house-battery-switch|chassis-battery-switch|black-dump-valve|gray-dump-valve"
                                    + "|toilet-flush-control|outside-shower-tap|step-switch|main-control-panel"
                                    + "|rcd|entry-keypad|jack-control|water-fill-valve|awning-switch|inverter-control"
                                    + "|gas-cylinder-valve|low-point-drain|roof-fan-control|macerator-switch"
                                    + "|generator-autostart-switch|hydronic-electric-switch|tank-heater-switch"
                                    + "|gray-drain-tap|toilet-blade",
                            "1 s",
                            "8 s")
                    .usual(
                            "thermostat|heater-control|hydronic-burner-switch|fridge-source|water-heater-bypass|frost-valve",
                            "10 s",
                            "4 min")
                    .usual("fresh-drain-valve", "2 s", "60 s")
                    .usual("generator-control|water-heater-gas-switch", "5 s", "60 s")
                    .usual("1 s", "5 min"));
    public static final Key<Seconds> HOLD = DRAFT.optional(
            "hold",
            Type.measured(Seconds.SCALE),
            "How long to hold it.",
            Range.of("0.2 s", "180 s")
                    .usual(
                            "gas-safety-reset|toilet-flush-control|house-battery-switch|step-switch|inverter-control"
                                    + "|heater-control|fridge-control|battery-boost-switch|generator-control",
                            "1 s",
                            "20 s")
                    .usual("slide-switch|awning-switch", "5 s", "60 s")
                    .usual("0.5 s", "60 s")
                    .because("START of a generator"));
    public static final Key<List<Located<String>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.reference("photo")), "Pictures of it.");
    public static final Shape<Switch> SHAPE = DRAFT.done(Switch::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    @Override
    public Optional<Spot> spot() {
        return Optional.of(SPOT.of(facts));
    }

    @Override
    public Optional<Board> board() {
        return BOARD.of(facts);
    }

    public Access access() {
        return facts.get(ACCESS);
    }

    public Make make() {
        return facts.get(MAKE);
    }
}
