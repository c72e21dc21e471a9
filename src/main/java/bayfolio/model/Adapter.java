package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Amps;
import bayfolio.measure.Volts;

/** A lead that fits the coach's cord to another outlet; it adds no power. */
public record Adapter(Facts facts) implements Thing {
    private static final Shape.Draft<Adapter> DRAFT =
            Shape.draft("adapter", "A lead that fits the coach's cord to another outlet; it adds no power.");
    private static final Identity IDENTITY =
            Identity.declare(DRAFT, "adapter", "What the handbook calls it: `50 A to 30 A adapter`.");
    public static final Key<Amps> FROM = DRAFT.required(
            "from",
            Type.measured(Amps.SCALE),
            "The outlet that it plugs into.",
            Range.of("2 A", "63 A")
                    .usual("north-america", "15 A", "50 A")
                    .usual("europe", "3 A", "32 A")
                    .because("of the set 15, 20, 30, 50 or 6, 10, 13, 16, 32")
                    .source("NEC article 551"));
    public static final Key<Amps> TO = DRAFT.required(
            "to",
            Type.measured(Amps.SCALE),
            "The plug of the coach's cord that fits it.",
            Range.of("2 A", "63 A")
                    .usual("north-america", "15 A", "50 A")
                    .usual("europe", "3 A", "32 A")
                    .because("of the set 15, 20, 30, 50 or 6, 10, 13, 16, 32")
                    .source("NEC article 551"));
    public static final Key<Volts> VOLTS =
            DRAFT.optional("volts", Type.measured(Volts.SCALE), "Voltage of the outlet.", Supply.ONE_LEG);
    public static final Key<Boolean> JOINS_LEGS = DRAFT.optional(
            "joins-legs", Type.YES_NO, "Whether it joins both legs of the coach to the one leg of the outlet.");
    public static final Key<String> ONTO = DRAFT.optional(
            "onto", Type.reference("adapter"), "The adapter that it plugs onto, if it does not fit the cord itself.");
    public static final Key<String> ITEM =
            DRAFT.optional("item", Type.reference("item"), "The item on board that it is.");
    public static final Shape<Adapter> SHAPE = DRAFT.done(Adapter::new);

    @Override
    public Identity identity() {
        return IDENTITY;
    }
}
