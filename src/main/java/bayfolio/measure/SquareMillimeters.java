package bayfolio.measure;

/**
 * The cross-section of the copper in one conductor of a cord, kept in square millimeters.
 *
 * @param value in square millimeters
 * @see "ASTM B258 for the sizes of the American Wire Gauge"
 */
public record SquareMillimeters(double value) implements Quantity {
    /** American Wire Gauge from 36 to 4/0, square millimeters. */
    public static final Scale<SquareMillimeters> SCALE = Scale.of(
            "conductor size",
            "6 AWG",
            SquareMillimeters::new,
            WrittenUnit.of("AWG", WireGauge.NUMERAL, number -> new WireGauge((int) number).squareMillimeters()),
            WrittenUnit.of("mm²", 1),
            WrittenUnit.of("mm²", 1).alsoSpelled("mm2"));

    public SquareMillimeters {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<SquareMillimeters> scale() {
        return SCALE;
    }

    /** The nearest size, {@code 6 AWG}, unless it lies beyond the gauge; {@code 13.3 mm²}. */
    @Override
    public Amount amount(MeasureSystem system) {
        Amount metric = Amount.of(Figure.of(value, Math.abs(value) < 10 ? 2 : 1), Symbol.SQUARE_MILLIMETER);
        return switch (system) {
            case US -> WireGauge.nearest(value).map(WireGauge::amount).orElse(metric);
            case METRIC -> metric;
        };
    }
}
