package bayfolio.measure;

/**
 * A pressure above that of the air: of a tire, a water inlet or an LP-gas line, kept in
 * kilopascals.
 *
 * @param value in kilopascals
 */
public record Kilopascals(double value) implements Quantity {
    /** A pound-force, 0.45359237 kg x 9.80665 m/s2, on a square inch; exact, NIST SP 811 B.8. */
    private static final double PSI = 0.45359237 * 9.80665 / (0.0254 * 0.0254) / 1000;

    /** Psi, bar, kilopascals, millibar. */
    public static final Scale<Kilopascals> SCALE = Scale.of(
            "pressure",
            "80 psi",
            Kilopascals::new,
            WrittenUnit.of("psi", PSI),
            WrittenUnit.of("bar", 100),
            WrittenUnit.of("kPa", 1, "kilopascal"),
            WrittenUnit.of("mbar", 0.1, "millibar"));

    public Kilopascals {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Kilopascals> scale() {
        return SCALE;
    }

    /** {@code 80 psi}; {@code 5.5 bar}, and {@code 30 mbar} for what an LP-gas appliance sees. */
    @Override
    public Amount amount(MeasureSystem system) {
        return switch (system) {
            case US -> Amount.of(Figure.coarse(value / PSI), Symbol.PSI);
            case METRIC -> {
                double millibar = Math.abs(Figure.rounded(10 * value, 0));
                yield 0 < millibar && millibar < 100
                        ? Amount.of(Figure.of(10 * value, 0), Symbol.MILLIBAR)
                        : Amount.of(Figure.of(value / 100, 1), Symbol.BAR);
            }
        };
    }
}
