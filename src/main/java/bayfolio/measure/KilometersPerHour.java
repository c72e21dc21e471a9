package bayfolio.measure;

/**
 * A speed, of the coach on the road or of the wind at its awning, kept in kilometers an hour.
 *
 * @param value in kilometers an hour
 */
public record KilometersPerHour(double value) implements Quantity {
    /** Kilometers; exact, NIST SP 811 Appendix B.8. */
    static final double MILE = 1.609344;

    /** Miles an hour, kilometers an hour. */
    public static final Scale<KilometersPerHour> SCALE = Scale.of(
            "speed",
            "65 mph",
            KilometersPerHour::new,
            WrittenUnit.of("mph", MILE, "mi/h"),
            WrittenUnit.of("km/h", 1, "kph", "kmh"));

    public KilometersPerHour {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<KilometersPerHour> scale() {
        return SCALE;
    }

    /** {@code 65 mph}; {@code 105 km/h}. */
    @Override
    public Amount amount(MeasureSystem system) {
        return switch (system) {
            case US -> Amount.of(Figure.coarse(value / MILE), Symbol.MILE_PER_HOUR);
            case METRIC -> Amount.of(Figure.coarse(value), Symbol.KILOMETER_PER_HOUR);
        };
    }
}
