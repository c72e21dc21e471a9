package bayfolio.measure;

/**
 * Electrical energy, stored or used over a day, kept in watt-hours.
 *
 * @param value in watt-hours
 */
public record WattHours(double value) implements Quantity {
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
    public String in(MeasureSystem system) {
        return Figure.fine(value) + " Wh";
    }

    public WattHours plus(WattHours other) {
        return new WattHours(value + other.value);
    }
}
