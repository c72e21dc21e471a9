package bayfolio.reckon.water;

import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.reckon.Published;

/** What water weighs, fresh or used. */
public final class WaterWeight {
    /** As on the label of 49 CFR 571.120; at most 0.8 % too much, for water up to 40 degrees Celsius. */
    public static final Published<Double> KILOGRAMS_PER_LITER =
            WaterUseProfile.TABLE.number("weight.kilograms-per-liter");

    private WaterWeight() {}

    public static Kilograms of(Liters water) {
        return new Kilograms(KILOGRAMS_PER_LITER.value() * water.value());
    }
}
