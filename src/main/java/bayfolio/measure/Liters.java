package bayfolio.measure;

/**
 * A volume: what a tank holds, or a dose poured into it, kept in liters. A gallon is the US gallon.
 *
 * @param value in liters
 */
public record Liters(double value) implements Quantity {
    /** 231 cubic inches; exact, NIST SP 811 Appendix B.8. */
    static final double GALLON = 3.785411784;

    // Exact: 4 quarts and 16 cups to the US liquid gallon, NIST Handbook 44 Appendix C.
    private static final double QUART = GALLON / 4;
    private static final double CUP = GALLON / 16;

    /** US gallons and their parts, liters, milliliters. */
    public static final Scale<Liters> SCALE = Scale.of(
            "volume",
            "100 gal",
            Liters::new,
            WrittenUnit.of("gal", GALLON, "gallon"),
            WrittenUnit.of("L", 1, "liter", "litre"),
            WrittenUnit.of("L", 1).alsoSpelled("l"),
            WrittenUnit.of("qt", QUART, "qts", "quart"),
            WrittenUnit.of("mL", 0.001, "milliliter", "millilitre"),
            WrittenUnit.of("cup", CUP),
            WrittenUnit.of("cup", CUP).alsoSpelled("cups"));

    public Liters {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Liters> scale() {
        return SCALE;
    }

    /** {@code 100 gal}, under half a gallon {@code 1.5 qt}, {@code 0.25 cup}; {@code 379 L}. */
    @Override
    public Amount amount(MeasureSystem system) {
        // Rounded far beyond the last digit printed, so that 0.5 gal counts as half a gallon.
        double size = Math.abs(Figure.rounded(value, 6));
        return switch (system) {
            case US ->
                size == 0 || size >= Figure.rounded(GALLON / 2, 6)
                        ? Amount.of(Figure.coarse(value / GALLON), Symbol.GALLON)
                        : size >= Figure.rounded(QUART, 6)
                                ? Amount.of(Figure.coarse(value / QUART), Symbol.QUART)
                                : Amount.of(
                                        Figure.fine(value / CUP),
                                        Figure.rounded(size / CUP, 2) < 1 ? Symbol.PART_OF_CUP : Symbol.CUP);
            case METRIC ->
                size == 0 || size >= 0.9995
                        ? Amount.of(Figure.coarse(value), Symbol.LITER)
                        : Amount.of(Figure.coarse(1000 * value), Symbol.MILLILITER);
        };
    }

    /** In US gallons. */
    public double gallons() {
        return value / GALLON;
    }

    public Liters plus(Liters other) {
        return new Liters(value + other.value);
    }

    public Liters minus(Liters other) {
        return new Liters(value - other.value);
    }

    public boolean exceeds(Liters limit) {
        return value > limit.value;
    }
}
