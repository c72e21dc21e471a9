package bayfolio.reckon.water;

import bayfolio.measure.Liters;

/**
 * Household bleach of one strength, to disinfect a water tank with.
 *
 * @param percent sodium hypochlorite by weight, as the bottle says
 * @param density in grams a milliliter; within 2 % of suppliers' sheets
 */
public record Bleach(double percent, double density) {
    public static final Bleach WEAK = read("bleach.weak");
    public static final Bleach STRONG = read("bleach.strong");

    /** Available chlorine is given as that much Cl2, of which one mole stands for one of NaOCl: 70.906 and 74.442 g. */
    private static final double CHLORINE = 70.906 / 74.442;

    private static Bleach read(String name) {
        return new Bleach(
                WaterUseProfile.TABLE.number(name + ".percent").value(),
                WaterUseProfile.TABLE.number(name + ".density").value());
    }

    /** Smaller ones cannot be told apart in a measuring cup. */
    private static final double SMALLEST_STEP = 0.005;

    /**
     * How much brings a full tank to so much chlorine: {@code C V / a}, where {@code a} is the available chlorine of the
     * bleach; to the nearest 5 mL, and never less than that.
     *
     * @param milligramsPerLiter for 4 hours 50, the dose that a state health authority gives for storage tanks
     */
    public Liters toReach(double milligramsPerLiter, Liters tank) {
        double liters = milligramsPerLiter * tank.value() / available() / 1000;
        return new Liters(Math.max(1, Math.round(liters / SMALLEST_STEP)) * SMALLEST_STEP);
    }

    /** Available chlorine, in milligrams a milliliter. */
    public double available() {
        return percent / 100 * density * 1000 * CHLORINE;
    }
}
