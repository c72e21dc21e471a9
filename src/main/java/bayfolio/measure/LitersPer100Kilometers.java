package bayfolio.measure;

/**
 * The fuel a coach burns on the road, kept in liters for a hundred kilometers. Never zero: miles to
 * the gallon are its reciprocal.
 *
 * @param value in liters for 100 km, above zero
 */
public record LitersPer100Kilometers(double value) implements Quantity {
    /** Miles to the US gallon times liters for 100 km; exact, of the two factors. */
    private static final double MILES_PER_GALLON = 100 * Liters.GALLON / KilometersPerHour.MILE;

    /** Miles to the US gallon, liters for 100 km; from 1 to 999 of either. */
    public static final Scale<LitersPer100Kilometers> SCALE = Scale.of(
            "fuel consumption",
            "8 mpg",
            LitersPer100Kilometers::new,
            WrittenUnit.of("mpg", Numeral.FROM_ONE, miles -> MILES_PER_GALLON / miles),
            WrittenUnit.of("L/100 km", Numeral.FROM_ONE, liters -> liters, "L/100km"),
            WrittenUnit.of("L/100 km", Numeral.FROM_ONE, liters -> liters).alsoSpelled("l/100 km"));

    public LitersPer100Kilometers {
        Figure.requireFinite(value);
        if (value <= 0) {
            throw new IllegalArgumentException("no coach burns " + value + " liters for 100 km");
        }
    }

    @Override
    public Scale<LitersPer100Kilometers> scale() {
        return SCALE;
    }

    /** {@code 8 mpg}; {@code 29.4 L/100 km}. */
    @Override
    public Amount amount(MeasureSystem system) {
        return switch (system) {
            case US -> Amount.of(Figure.fine(MILES_PER_GALLON / value), Symbol.MILE_PER_GALLON);
            case METRIC -> Amount.of(Figure.fine(value), Symbol.LITER_PER_100_KILOMETERS);
        };
    }
}
