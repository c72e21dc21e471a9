package bayfolio.measure;

/**
 * A part of a whole: how full a tank is, how far a battery may be drawn down.
 *
 * @param value from 0 for nothing to 1 for all
 */
public record Share(double value) implements Quantity {
    /** Percent, from 0 to 100. */
    public static final Scale<Share> SCALE = Scale.of(
            "share", "80 %", Share::new, WrittenUnit.of("%", Numeral.PERCENT, percent -> percent / 100, "percent"));

    public Share {
        Figure.requireFinite(value);
        if (value < 0 || value > 1) {
            throw new IllegalArgumentException("a share lies between 0 and 1, and is not " + value);
        }
    }

    @Override
    public Scale<Share> scale() {
        return SCALE;
    }

    /** {@code 80 %} in either system. */
    @Override
    public Amount amount(MeasureSystem system) {
        return Amount.of(Figure.of(100 * value, 1), Symbol.PERCENT);
    }
}
