package bayfolio.measure;

/**
 * What a battery holds, as its label rates it, kept in ampere-hours.
 *
 * @param value in ampere-hours
 */
public record AmpHours(double value) implements Quantity {
    /** Ampere-hours. */
    public static final Scale<AmpHours> SCALE =
            Scale.of("battery capacity", "100 Ah", AmpHours::new, WrittenUnit.of("Ah", 1, "amp-hour"));

    public AmpHours {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<AmpHours> scale() {
        return SCALE;
    }

    /** {@code 100 Ah} in either system. */
    @Override
    public Amount amount(MeasureSystem system) {
        return Amount.of(Figure.fine(value), Symbol.AMPERE_HOUR);
    }

    public AmpHours plus(AmpHours other) {
        return new AmpHours(value + other.value);
    }
}
