package bayfolio.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * A number as the handbook prints it: {@code 44,600}, {@code 5.5}; never {@code 5.50}, {@code -0}.
 */
final class Figure {
    /** Drops the last binary digits, so that 2.5 reached by a conversion is still a half. */
    private static final MathContext WITHOUT_NOISE = new MathContext(12);

    private Figure() {}

    static void requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity cannot be " + value);
        }
    }

    static String of(double value, int decimals) {
        BigDecimal figure = decimal(value, decimals).stripTrailingZeros();
        return String.format(Locale.ROOT, "%,." + Math.max(figure.scale(), 0) + "f", figure);
    }

    /** For what is filled and weighed: tenths below ten, whole from there on. */
    static String coarse(double value) {
        return of(value, Math.abs(value) < 10 ? 1 : 0);
    }

    /** For what is rated and reckoned: hundredths below one, tenths below a hundred, then whole. */
    static String fine(double value) {
        double size = Math.abs(value);
        return of(value, size < 1 ? 2 : size < 100 ? 1 : 0);
    }

    static double rounded(double value, int decimals) {
        return decimal(value, decimals).doubleValue();
    }

    private static BigDecimal decimal(double value, int decimals) {
        return new BigDecimal(value, WITHOUT_NOISE).setScale(decimals, RoundingMode.HALF_UP);
    }
}
