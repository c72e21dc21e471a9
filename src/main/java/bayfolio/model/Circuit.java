package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Amps;
import bayfolio.measure.Volts;
import java.util.Optional;

/** One line of wiring with its own breaker or fuse. */
public record Circuit(Facts facts) implements Thing {
    /** Alternating or direct current. */
    public enum Current {
        AC,
        DC
    }

    /** Volts of a circuit and of what hangs on one. */
    static final Range WIRED = Range.of("10 V", "260 V")
            .usual("ac north-america", "120 V", "240 V")
            .usual("ac europe", "230 V", "240 V")
            .usual("dc", "12 V", "28 V");

    private static final Shape.Draft<Circuit> DRAFT =
            Shape.draft("circuit", "One line of wiring with its own breaker or fuse.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "circuit", "What the handbook calls it: `Front air conditioner`.");
    public static final Key<Current> CURRENT = DRAFT.required("current", Type.choice(Current.class), "AC or DC.");
    public static final Key<Volts> VOLTS = DRAFT.required(
            "volts",
            Type.measured(Volts.SCALE),
            "Its voltage.",
            WIRED.because("12, 24, 48 direct; 120, 240, 230").source("NEC article 551"));
    public static final Key<Amps> BREAKER = DRAFT.required(
            "breaker",
            Type.measured(Amps.SCALE),
            "Rating of its breaker or fuse.",
            Range.of("0.5 A", "600 A")
                    .usual("ac north-america", "10 A", "50 A")
                    .usual("ac europe", "4 A", "16 A")
                    .usual("dc", "1 A", "400 A")
                    .because("10, 15, 20, 30, 50; 6, 10, 13, 16")
                    .source("NEC article 551"));
    public static final Key<Integer> LEG = DRAFT.optional(
            "leg",
            Type.whole(1, 2),
            "The leg that it hangs on.",
            Range.of("1", "2").usual("1", "2").because("as many as the shore supply has"));
    public static final Key<String> FED_THROUGH = DRAFT.optional(
            "fed-through",
            Type.reference("circuit"),
            "The circuit whose breaker its power passes on the way from the supply: the feed of an inverter or of a sub-panel.");
    public static final Key<Boolean> BY_INVERTER =
            DRAFT.optional("by-inverter", Type.YES_NO, "Whether the inverter feeds it.");
    public static final Key<String> BANK = DRAFT.optional(
            "bank", Type.reference("bank"), "The batteries that feed it, where these are not the house bank.");
    public static final Key<Boolean> PAST_BATTERY_SWITCH = DRAFT.optional(
            "past-battery-switch", Type.YES_NO, "Whether it stays live while the house battery switch is off.");
    public static final Key<String> SWITCH = DRAFT.optional(
            "switch", Type.reference("switch"), "The breaker handle or fuse box that it is switched by.");
    public static final Key<String> SERVES = DRAFT.optional("serves", Type.TEXT, "What hangs on it, in words.");
    public static final Shape<Circuit> SHAPE = DRAFT.done(Circuit::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    public boolean carries(Current current) {
        return facts.find(CURRENT).equals(Optional.of(current));
    }
}
