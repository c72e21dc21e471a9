package bayfolio.measure;

/**
 * A temperature, kept in degrees Celsius; the one quantity that is written with a minus.
 *
 * @param value in degrees Celsius
 */
public record Celsius(double value) implements Quantity {
    /** Degrees Fahrenheit and Celsius. */
    public static final Scale<Celsius> SCALE = Scale.of(
            "temperature",
            "20 °F",
            Celsius::new,
            fahrenheit("°F"),
            celsius("°C"),
            fahrenheit("°F").alsoSpelled("F"),
            celsius("°C").alsoSpelled("C"));

    public Celsius {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Celsius> scale() {
        return SCALE;
    }

    /** {@code 45 °F}; {@code 7 °C}. */
    @Override
    public Amount amount(MeasureSystem system) {
        return switch (system) {
            case US -> Amount.of(Figure.of(value * 9 / 5 + 32, 0), Symbol.FAHRENHEIT);
            case METRIC -> Amount.of(Figure.of(value, 0), Symbol.CELSIUS);
        };
    }

    private static WrittenUnit fahrenheit(String spelling) {
        // t/°C = (t/°F - 32) / 1.8, NIST SP 811 Appendix B.8
        return WrittenUnit.of(spelling, Numeral.SIGNED, degrees -> (degrees - 32) * 5 / 9, "fahrenheit");
    }

    private static WrittenUnit celsius(String spelling) {
        return WrittenUnit.of(spelling, Numeral.SIGNED, degrees -> degrees, "celsius");
    }
}
