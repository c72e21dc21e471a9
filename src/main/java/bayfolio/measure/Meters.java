package bayfolio.measure;

/**
 * A length, height, width, clearance or distance, kept in meters. A clearance may be negative.
 *
 * @param value in meters
 */
public record Meters(double value) implements Quantity {
    // All exact, NIST SP 811 Appendix B.8: 1 ft = 12 in, 1 mi = 5280 ft.
    private static final double FOOT = 0.3048;
    private static final double MILE = 1609.344;

    /** A thousandth of a micrometer is a slip of the arithmetic, not a reason to add an inch. */
    private static final double SLIP = 1e-9;

    /** Feet and inches, meters, miles, and their parts. */
    public static final Scale<Meters> SCALE = Scale.of(
            "length",
            "12 ft 11 in",
            Meters::new,
            WrittenUnit.of("ft", FOOT, "foot", "feet"),
            WrittenUnit.of("in", FeetAndInches.INCH, "inch", "inches"),
            WrittenUnit.of("m", 1, "meter", "metre"),
            WrittenUnit.of("cm", 0.01, "centimeter", "centimetre"),
            WrittenUnit.of("mm", 0.001, "millimeter", "millimetre"),
            WrittenUnit.of("mi", MILE, "mile"),
            WrittenUnit.of("km", 1000, "kilometer", "kilometre"),
            WrittenUnit.of("in", FeetAndInches.BEFORE_INCHES, inches -> inches * FeetAndInches.INCH));

    public Meters {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Meters> scale() {
        return SCALE;
    }

    /**
     * {@code 12 ft 11 in}, {@code 7 in}, {@code 50 mi}; {@code 3.94 m}, {@code 18 cm}, {@code 80
     * km}.
     */
    @Override
    public Amount amount(MeasureSystem system) {
        double size = Math.abs(value);
        return switch (system) {
            case US ->
                size < MILE ? FeetAndInches.nearest(value).amount() : Amount.of(Figure.fine(value / MILE), Symbol.MILE);
            case METRIC ->
                size < 0.1
                        ? Amount.of(Figure.of(100 * value, 1), Symbol.CENTIMETER)
                        : size < 100
                                ? centimeters(Figure.rounded(100 * value, 0))
                                : size < 1000
                                        ? Amount.of(Figure.of(value, 0), Symbol.METER)
                                        : Amount.of(Figure.fine(value / 1000), Symbol.KILOMETER);
        };
    }

    /**
     * Printed so that a coach never looks smaller than it is: to the next inch or centimeter up.
     */
    public Amount roundedUp(MeasureSystem system) {
        return switch (system) {
            case US -> new FeetAndInches((long) Math.ceil((value - SLIP) / FeetAndInches.INCH)).amount();
            case METRIC -> centimeters(Math.ceil(100 * (value - SLIP)));
        };
    }

    /** Printed so that a gap never looks bigger than it is: to the inch or centimeter below. */
    public Amount roundedDown(MeasureSystem system) {
        return switch (system) {
            case US -> new FeetAndInches((long) Math.floor((value + SLIP) / FeetAndInches.INCH)).amount();
            case METRIC -> centimeters(Math.floor(100 * (value + SLIP)));
        };
    }

    public double feet() {
        return value / FOOT;
    }

    /** In statute miles. */
    public double miles() {
        return value / MILE;
    }

    public Meters plus(Meters other) {
        return new Meters(value + other.value);
    }

    public Meters minus(Meters other) {
        return new Meters(value - other.value);
    }

    public boolean exceeds(Meters limit) {
        return value > limit.value;
    }

    private static Amount centimeters(double whole) {
        return Math.abs(whole) < 100
                ? Amount.of(Figure.of(whole, 0), Symbol.CENTIMETER)
                : Amount.of(Figure.of(whole / 100, 2), Symbol.METER);
    }
}
