package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.time.LocalDate;

/** What fuel costs. A price is an amount, three letters for the currency, and what it is for: a gallon or a liter. */
public record FuelPrices(Facts facts) implements Described {
    private static final Shape.Draft<FuelPrices> DRAFT = Shape.draft("fuel-prices", "What fuel costs near the depot.");
    private static final Type<String> PRICE = new Type.Text(
            "price",
            "^[0-9]{1,5}([.][0-9]{1,3})? [A-Z]{3}/(gal|L)$",
            "a price for a gallon or a liter, such as `3.45 USD/gal` or `1.62 EUR/L`");
    public static final Key<String> GASOLINE = DRAFT.optional("gasoline", PRICE, "The price of gasoline.");
    public static final Key<String> DIESEL = DRAFT.optional("diesel", PRICE, "The price of diesel.");
    public static final Key<String> LP_GAS = DRAFT.optional("lp-gas", PRICE, "The price of LP gas.");
    public static final Key<LocalDate> NOTED_ON = DRAFT.optional(
            "noted-on",
            Type.DAY,
            "When the prices were noted.",
            Range.of("as-of - 20 years", "as-of")
                    .usual("as-of - 365 days", "as-of")
                    .because("a price of last year is none"));
    public static final Shape<FuelPrices> SHAPE = DRAFT.done(FuelPrices::new);
}
