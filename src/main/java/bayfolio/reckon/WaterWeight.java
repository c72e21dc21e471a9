package bayfolio.reckon;

import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;

/** What water weighs, fresh or used. */
public final class WaterWeight {
    /** As on the label of 49 CFR 571.120; at most 0.8 % too much, for water up to 40 degrees Celsius. */
    private static final double KILOGRAMS_PER_LITER = 1;

    private WaterWeight() {}

    public static Kilograms of(Liters water) {
        return new Kilograms(KILOGRAMS_PER_LITER * water.value());
    }
}
