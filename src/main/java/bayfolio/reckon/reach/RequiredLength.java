package bayfolio.reckon.reach;

import bayfolio.measure.Meters;

/**
 * How long a hose or cord must be; a rule of this handbook and nobody else's.
 *
 * @param route on the ground
 * @param inlet its height above the ground
 * @param outlet its height above the ground
 */
public record RequiredLength(Meters route, Meters inlet, Meters outlet) {
    /** Nothing lies in a straight line. */
    public static final double SLACK = Posts.TABLE.number("slack").value();

    private static final double SLIP = 1e-6;

    public Meters length() {
        return new Meters((route.value() + inlet.value() + outlet.value()) * SLACK);
    }

    public boolean metBy(Meters owned) {
        return owned.value() >= length().value() - SLIP;
    }
}
