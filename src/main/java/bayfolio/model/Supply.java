package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Amps;
import bayfolio.measure.Volts;

/** What gives electric power: shore power, generator, inverter. */
public record Supply(Facts facts) implements Thing {
    /** Where the power comes from. */
    public enum Source {
        SHORE,
        GENERATOR,
        INVERTER
    }

    /** The volts of one leg, wherever they are told. */
    static final Range ONE_LEG = Range.of("100 V", "250 V")
            .in("north-america", "100 V", "130 V")
            .in("europe", "210 V", "250 V")
            .usual("north-america", "120 V", "120 V")
            .usual("europe", "230 V", "240 V")
            .because("of one leg")
            .source("NEC article 551");

    /** The legs that a coach can have. */
    static final Range ONE_OR_TWO = Range.of("1", "2")
            .in("europe", "1", "1")
            .usual("north-america", "1", "2")
            .usual("europe", "1", "1")
            .because("two legs only with 50 A or a large generator")
            .source("NEC article 551");

    private static final Shape.Draft<Supply> DRAFT =
            Shape.draft("supply", "What gives electric power: shore power, generator, inverter.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "supply", "What the handbook calls it: `Shore power 50 A`.");
    public static final Key<Source> SOURCE =
            DRAFT.required("source", Type.choice(Source.class), "What kind of supply it is.");
    public static final Key<Volts> VOLTS =
            DRAFT.required("volts", Type.measured(Volts.SCALE), "Its voltage on one leg.", ONE_LEG);
    public static final Key<Amps> AMPS = DRAFT.required(
            "amps",
            Type.measured(Amps.SCALE),
            "What one leg can carry.",
            Range.of("1 A", "110 A")
                    .usual("shore north-america", "15 A", "50 A")
                    .usual("shore europe", "4 A", "32 A")
                    .usual("generator", "8 A", "85 A")
                    .usual("inverter", "1 A", "35 A")
                    .because("15, 20, 30 and 50 A; 6, 10, 16 and 32 A")
                    .source("NEC article 551"));
    public static final Key<Integer> LEGS =
            DRAFT.required("legs", Type.whole(1, 2), "How many legs it has.", ONE_OR_TWO);
    public static final Key<Amps> SURGE = DRAFT.optional(
            "surge",
            Type.measured(Amps.SCALE),
            "What one leg gives for a moment, while a motor starts.",
            Range.of("2 A", "400 A").usual("15 A", "200 A").because("1 to 4 x amps"));
    public static final Key<String> NOTE = DRAFT.optional("note", Type.TEXT, "What a renter must know of it.");
    public static final Shape<Supply> SHAPE = DRAFT.done(Supply::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }

    public Source source() {
        return facts.get(SOURCE);
    }
}
