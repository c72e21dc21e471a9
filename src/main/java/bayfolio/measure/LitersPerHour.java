package bayfolio.measure;

/**
 * A flow, as of the fuel a generator burns, kept in liters an hour.
 *
 * @param value in liters an hour
 */
public record LitersPerHour(double value) implements Quantity {
    /** US gallons an hour, liters an hour. */
    public static final Scale<LitersPerHour> SCALE = Scale.of(
            "flow",
            "0.5 gal/h",
            LitersPerHour::new,
            WrittenUnit.of("gal/h", Liters.GALLON),
            WrittenUnit.of("L/h", 1),
            WrittenUnit.of("L/h", 1).alsoSpelled("l/h"));

    public LitersPerHour {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<LitersPerHour> scale() {
        return SCALE;
    }

    /** In US gallons an hour. */
    public double gallons() {
        return value / Liters.GALLON;
    }

    /** {@code 0.5 gal/h}; {@code 1.9 L/h}. */
    @Override
    public Amount amount(MeasureSystem system) {
        return switch (system) {
            case US -> Amount.of(Figure.fine(value / Liters.GALLON), Symbol.GALLON_PER_HOUR);
            case METRIC -> Amount.of(Figure.fine(value), Symbol.LITER_PER_HOUR);
        };
    }
}
