package bayfolio.measure;

import java.util.List;

/**
 * A length the American way, in whole inches: {@code 12 ft 11 in}, {@code 7 in}, {@code 40 ft}.
 *
 * @param inches all of them, feet included; may be negative, as a clearance that is not there
 */
record FeetAndInches(long inches) {
    /** Meters; exact by definition, NIST SP 811 Appendix B.8. */
    static final double INCH = 0.0254;

    static final Numeral BEFORE_INCHES = new Numeral(
            Numeral.WHOLE + " ?ft (?:[0-9]|1[01])(?:\\.[0-9]{1,3})?",
            "whole feet and inches under 12, such as 12 ft 11",
            FeetAndInches::inches);

    static FeetAndInches nearest(double meters) {
        double inches = Figure.rounded(meters / INCH, 0);
        // Beyond a hundred feet nobody measures to the inch.
        return Math.abs(inches) < 1200
                ? new FeetAndInches((long) inches)
                : new FeetAndInches(12 * (long) Figure.rounded(meters / (12 * INCH), 0));
    }

    Amount amount() {
        long whole = Math.abs(inches);
        long feet = whole / 12;
        long rest = whole % 12;
        String sign = inches < 0 ? "-" : "";
        if (feet == 0) {
            return Amount.of(sign + rest, Symbol.INCH);
        }
        Amount.Piece large = new Amount.Piece(sign + Figure.of((double) feet, 0), Symbol.FOOT);
        return new Amount(
                rest == 0 ? List.of(large) : List.of(large, new Amount.Piece(String.valueOf(rest), Symbol.INCH)),
                List.of());
    }

    private static double inches(String feetAndInches) {
        int ft = feetAndInches.indexOf("ft");
        return 12 * Numeral.number(feetAndInches.substring(0, ft).strip())
                + Numeral.number(feetAndInches.substring(ft + 2).strip());
    }
}
