package bayfolio.measure;

/**
 * A voltage, of a post, a battery or a load, kept in volts.
 *
 * @param value in volts
 */
public record Volts(double value) implements Quantity {
    /** Volts. */
    public static final Scale<Volts> SCALE = Scale.of("voltage", "120 V", Volts::new, WrittenUnit.of("V", 1, "volt"));

    public Volts {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Volts> scale() {
        return SCALE;
    }

    /** {@code 120 V} in either system; {@code 12.65 V}, as a battery at rest is read. */
    @Override
    public Amount amount(MeasureSystem system) {
        return Amount.of(Figure.of(value, Math.abs(value) < 100 ? 2 : 1), Symbol.VOLT);
    }
}
