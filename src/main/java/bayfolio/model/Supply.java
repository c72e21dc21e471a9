package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
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

    private static final Shape.Draft<Supply> DRAFT =
            Shape.draft("supply", "What gives electric power: shore power, generator, inverter.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "supply", "What the handbook calls it: `Shore power 50 A`.");
    public static final Key<Source> SOURCE =
            DRAFT.required("source", Type.choice(Source.class), "What kind of supply it is.");
    public static final Key<Volts> VOLTS =
            DRAFT.required("volts", Type.measured(Volts.SCALE), "Its voltage on one leg.");
    public static final Key<Amps> AMPS = DRAFT.required("amps", Type.measured(Amps.SCALE), "What one leg can carry.");
    public static final Key<Integer> LEGS = DRAFT.required("legs", Type.whole(1, 2), "How many legs it has.");
    public static final Key<Amps> SURGE = DRAFT.optional(
            "surge", Type.measured(Amps.SCALE), "What one leg gives for a moment, while a motor starts.");
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
