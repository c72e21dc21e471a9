package bayfolio.measure;

/**
 * Energy of a battery or of gas, stored or used over a day, kept in watt-hours.
 *
 * @param value in watt-hours
 */
public record WattHours(double value) implements Quantity {
    /** International Table BTU of 1055.05585262 J; exact, NIST SP 811 Appendix B.8. */
    static final double BTU = 1055.05585262 / 3600;

    /** Watt-hours and kilowatt-hours. */
    public static final Scale<WattHours> SCALE = Scale.of(
            "energy",
            "1,200 Wh",
            WattHours::new,
            WrittenUnit.of("Wh", 1, "watt-hour"),
            WrittenUnit.of("kWh", 1000, "kilowatt-hour"));

    public WattHours {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<WattHours> scale() {
        return SCALE;
    }

    /** {@code 1,200 Wh} in either system, to stand beside watts. */
    @Override
    public Amount amount(MeasureSystem system) {
        return Amount.of(Figure.fine(value), Symbol.WATT_HOUR);
    }

    public static WattHours ofBtu(double btu) {
        return new WattHours(btu * BTU);
    }

    /** In British thermal units (International Table). */
    public double btu() {
        return value / BTU;
    }

    public WattHours plus(WattHours other) {
        return new WattHours(value + other.value);
    }
}
