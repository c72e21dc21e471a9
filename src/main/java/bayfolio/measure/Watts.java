package bayfolio.measure;

/**
 * Electrical power, drawn by a load or given by a generator, kept in watts.
 *
 * @param value in watts
 */
public record Watts(double value) implements Quantity {
    /** Watts and kilowatts. */
    public static final Scale<Watts> SCALE = Scale.of(
            "power", "1,500 W", Watts::new, WrittenUnit.of("W", 1, "watt"), WrittenUnit.of("kW", 1000, "kilowatt"));

    public Watts {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Watts> scale() {
        return SCALE;
    }

    /** {@code 1,500 W} in either system, however large: a renter adds up watts. */
    @Override
    public String in(MeasureSystem system) {
        return Figure.fine(value) + " W";
    }

    public Watts plus(Watts other) {
        return new Watts(value + other.value);
    }

    public boolean exceeds(Watts limit) {
        return value > limit.value;
    }
}
