package bayfolio.measure;

/**
 * An angle, as of a slope or of the ground a coach stands on, kept in degrees of which 360 make a
 * turn.
 *
 * @param value in degrees
 */
public record Degrees(double value) implements Quantity {
    /** Degrees. */
    public static final Scale<Degrees> SCALE = Scale.of(
            "angle",
            "3°",
            Degrees::new,
            WrittenUnit.of("°", 1, "degree"),
            WrittenUnit.of("°", 1).alsoSpelled("deg"));

    public Degrees {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Degrees> scale() {
        return SCALE;
    }

    /** {@code 2.5°} in either system. */
    @Override
    public Amount amount(MeasureSystem system) {
        return Amount.of(Figure.of(value, 1), Symbol.DEGREE);
    }
}
