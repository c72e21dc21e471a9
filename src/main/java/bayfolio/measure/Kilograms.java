package bayfolio.measure;

/**
 * A weight, as scales and rating labels give it, kept in kilograms. What is left of a rating may be
 * negative.
 *
 * @param value in kilograms
 */
public record Kilograms(double value) implements Quantity {
    /** Avoirdupois; exact, NIST SP 811 Appendix B.8. */
    private static final double POUND = 0.45359237;

    /** Pounds, kilograms, metric tons, grams; no short tons, which are written as pounds. */
    public static final Scale<Kilograms> SCALE = Scale.of(
            "weight",
            "44,600 lb",
            Kilograms::new,
            WrittenUnit.of("lb", POUND, "lbs", "pound"),
            WrittenUnit.of("kg", 1, "kgs", "kilogram", "kilo"),
            WrittenUnit.of("t", 1000, "tonne"),
            WrittenUnit.of("g", 0.001, "gram"));

    public Kilograms {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Kilograms> scale() {
        return SCALE;
    }

    /** {@code 44,600 lb}; {@code 20,230 kg}, {@code 250 g}. */
    @Override
    public Amount amount(MeasureSystem system) {
        return switch (system) {
            case US -> Amount.of(Figure.coarse(value / POUND), Symbol.POUND);
            case METRIC -> {
                double grams = Math.abs(Figure.rounded(1000 * value, 0));
                yield 0 < grams && grams < 1000
                        ? Amount.of(Figure.of(1000 * value, 0), Symbol.GRAM)
                        : Amount.of(Figure.coarse(value), Symbol.KILOGRAM);
            }
        };
    }

    /** In pounds avoirdupois. */
    public double pounds() {
        return value / POUND;
    }

    public Kilograms plus(Kilograms other) {
        return new Kilograms(value + other.value);
    }

    public Kilograms minus(Kilograms other) {
        return new Kilograms(value - other.value);
    }

    public boolean exceeds(Kilograms limit) {
        return value > limit.value;
    }
}
