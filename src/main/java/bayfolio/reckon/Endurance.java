package bayfolio.reckon;

import bayfolio.measure.Liters;
import bayfolio.measure.LitersPerHour;
import bayfolio.measure.Seconds;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;

/** How long a store lasts at an even draw: what it holds divided by what is taken. Definitions, exact. */
public final class Endurance {
    private static final double HOUR = 3600;
    private static final double DAY = 86_400;

    private Endurance() {}

    /**
     * @param taken above zero
     */
    public static Seconds of(WattHours held, Watts taken) {
        return divided(held.value(), taken.value(), HOUR);
    }

    /**
     * @param taken above zero
     */
    public static Seconds of(Liters held, LitersPerHour taken) {
        return divided(held.value(), taken.value(), HOUR);
    }

    /**
     * @param daily above zero
     */
    public static Seconds ofDays(WattHours held, WattHours daily) {
        return divided(held.value(), daily.value(), DAY);
    }

    private static Seconds divided(double held, double taken, double unit) {
        if (taken <= 0) {
            throw new IllegalArgumentException("nothing is taken, so it lasts for ever");
        }
        return new Seconds(Math.max(0, held) / taken * unit);
    }
}
