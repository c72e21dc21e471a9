package bayfolio.reckon;

import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;

/**
 * How long a hose or cord must be; a rule of this handbook and nobody else's.
 *
 * @param route on the ground
 * @param inlet its height above the ground
 * @param outlet its height above the ground
 */
record RequiredLength(Meters route, Meters inlet, Meters outlet) {
    /** Nothing lies in a straight line. */
    static final double SLACK = 1.10;

    private static final double SLIP = 1e-6;

    Meters length() {
        return new Meters((route.value() + inlet.value() + outlet.value()) * SLACK);
    }

    boolean metBy(Meters owned) {
        return owned.value() >= length().value() - SLIP;
    }

    /** {@code 29 ft (8.9 m)}: up to the next foot and tenth of a meter. */
    static String needed(Meters length, MeasureSystem first) {
        return print(length, Rounding.UP, first);
    }

    /** {@code 25 ft (7.6 m)}: down to the foot and tenth of a meter. */
    static String owned(Meters length, MeasureSystem first) {
        return print(length, Rounding.DOWN, first);
    }

    private static String print(Meters length, Rounding toward, MeasureSystem first) {
        String us = toward.print(length.feet(), 0) + " ft";
        String metric = toward.print(length.value(), 1) + " m";
        return first == MeasureSystem.US ? us + " (" + metric + ")" : metric + " (" + us + ")";
    }
}
