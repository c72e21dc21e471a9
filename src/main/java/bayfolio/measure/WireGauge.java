package bayfolio.measure;

import java.util.Optional;

/**
 * A conductor size of the American Wire Gauge, from 36 up to 4/0.
 *
 * @param number as AWG counts, thicker is lower; 0 stands for 1/0 and -3 for 4/0
 * @see "ASTM B258: No. 36 is 0.0050 in, No. 0000 is 0.4600 in, with 39 equal ratio steps"
 */
record WireGauge(int number) {
    private static final int THINNEST = 36;
    private static final int THICKEST = -3;

    static final Numeral NUMERAL = new Numeral(
            "(?:[1-4]/0|[1-9]|[12][0-9]|3[0-6])",
            "a size from 36 to 1 or from 1/0 to 4/0",
            text -> text.endsWith("/0") ? 1 - Numeral.number(text.substring(0, 1)) : Numeral.number(text));

    /** The size nearest to a cross-section, if AWG has one within half a step of it. */
    static Optional<WireGauge> nearest(double squareMillimeters) {
        double diameter = Math.sqrt(4 / Math.PI * squareMillimeters) / millimeters(0.005);
        double number = Figure.rounded(36 - 39 * Math.log(Math.max(diameter, 1e-9)) / Math.log(92), 0);
        return THICKEST <= number && number <= THINNEST ? Optional.of(new WireGauge((int) number)) : Optional.empty();
    }

    double squareMillimeters() {
        // d = 0.005 in x 92^((36 - n) / 39), ASTM B258
        double diameter = millimeters(0.005 * Math.pow(92, (36 - number) / 39.0));
        return Math.PI / 4 * diameter * diameter;
    }

    Amount amount() {
        return Amount.of(number > 0 ? String.valueOf(number) : (1 - number) + "/0", Symbol.AWG);
    }

    private static double millimeters(double inches) {
        return inches * FeetAndInches.INCH * 1000;
    }
}
