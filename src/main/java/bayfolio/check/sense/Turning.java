package bayfolio.check.sense;

import bayfolio.fact.Facts;
import bayfolio.model.Size;

/**
 * A coach in its tightest turn, all wheels rolling about one point on the line of the rear axle. Checked against the
 * ring of 12.50 m and 5.30 m of Directive 97/27/EC, clause 7.6.1.
 */
final class Turning {
    private Turning() {}

    static boolean known(Facts size) {
        return size.has(Size.WHEELBASE) && size.has(Size.FRONT_OVERHANG) && size.has(Size.REAR_OVERHANG);
    }

    /** How far the outer rear corner passes beyond the wall that the flank touched, in meters. */
    static double tailSwing(Facts size) {
        double flank = flank(size);
        double overhang = size.get(Size.REAR_OVERHANG).value();
        return Math.sqrt(flank * flank + overhang * overhang) - flank;
    }

    /** The mean angle of the front wheels, in degrees. */
    static double wheelAngle(Facts size) {
        return Math.toDegrees(Math.atan(size.get(Size.WHEELBASE).value()
                / (flank(size) - size.get(Size.WIDTH).value() / 2)));
    }

    /** From the middle of the turn to the outer flank, in meters; not a number where the circle is too small. */
    private static double flank(Facts size) {
        double half = size.get(Size.TURNING_CIRCLE).value() / 2;
        double nose =
                size.get(Size.WHEELBASE).value() + size.get(Size.FRONT_OVERHANG).value();
        return Math.sqrt(half * half - nose * nose);
    }
}
