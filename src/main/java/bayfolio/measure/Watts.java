package bayfolio.measure;

/**
 * Power, drawn by a load, given by a generator or burned by a gas device, kept in watts.
 *
 * @param value in watts
 */
public record Watts(double value) implements Quantity {
    /** Watts and kilowatts; what gas devices burn in North America. */
    public static final Scale<Watts> SCALE = Scale.of(
            "power",
            "1,500 W",
            Watts::new,
            WrittenUnit.of("W", 1, "watt"),
            WrittenUnit.of("kW", 1000, "kilowatt"),
            WrittenUnit.of("BTU/h", WattHours.BTU, "btu/h", "BTU/hr", "BTUH"));

    public Watts {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Watts> scale() {
        return SCALE;
    }

    /** {@code 1,500 W} in either system, however large: a renter adds up watts. */
    @Override
    public Amount amount(MeasureSystem system) {
        return Amount.of(Figure.fine(value), Symbol.WATT);
    }

    /** In British thermal units (International Table) an hour. */
    public double btuPerHour() {
        return value / WattHours.BTU;
    }

    public Watts plus(Watts other) {
        return new Watts(value + other.value);
    }

    public boolean exceeds(Watts limit) {
        return value > limit.value;
    }
}
