package bayfolio.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

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
        return withCommas(figure.signum() == 0 ? "0" : figure.toPlainString());
    }

    /** A plain number with its thousands parted: {@code -1,234.5}. */
    static String withCommas(String plain) {
        int point = plain.indexOf('.');
        int end = point < 0 ? plain.length() : point;
        int start = plain.startsWith("-") ? 1 : 0;
        if (end - start <= 3) {
            return plain;
        }
        StringBuilder parted = new StringBuilder(plain);
        for (int at = end - 3; at > start; at -= 3) {
            parted.insert(at, ',');
        }
        return parted.toString();
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
