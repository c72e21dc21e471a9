package bayfolio.reckon;

import bayfolio.measure.Liters;
import bayfolio.measure.Seconds;

/**
 * A way of living: what one person uses in a day.
 *
 * @param drink for drinking and cooking; it goes down no drain
 * @param shower how long one shower runs
 * @param showers how many a day
 * @param flushes of the toilet
 */
public record WaterUseProfile(
        String name,
        Liters drink,
        Liters dishes,
        Liters wash,
        Seconds shower,
        double showers,
        int flushes,
        String source) {
    private static final String MODEL = "our own model, within published figures for basic need and for camps";

    /** 7.6 L with a sparing toilet: the floor of the Sphere handbook. */
    public static final WaterUseProfile SPARING = new WaterUseProfile(
            "sparing", new Liters(2.84), new Liters(1.89), new Liters(1.89), new Seconds(120), 0, 2, MODEL);

    public static final WaterUseProfile USUAL = new WaterUseProfile(
            "usual", new Liters(2.84), new Liters(3.79), new Liters(2.84), new Seconds(120), 1, 5, MODEL);

    public static final WaterUseProfile GENEROUS = new WaterUseProfile(
            "generous", new Liters(4), new Liters(6), new Liters(5), new Seconds(300), 1, 6, "our own choice");

    /** Feces of a day, 128 g, the median of Rose and others, 2015; urine 1.42 L, within the 1 to 2 L of medical pages. */
    public static final Liters BODY = new Liters(1.55);

    /** The same with more showers or fewer. */
    WaterUseProfile with(double count) {
        return new WaterUseProfile(name, drink, dishes, wash, shower, count, flushes, source);
    }

    /**
     * What one person takes and gives in a day, in liters.
     *
     * @param fresh out of the fresh tank
     * @param gray into the gray tank
     * @param toilet into black tank or cassette
     */
    public record Day(Liters fresh, Liters gray, Liters toilet) {}

    /**
     * @param perMinute of the shower; none where there is no shower
     * @param perFlush of the toilet; none where there is no toilet
     */
    public Day day(Liters perMinute, Liters perFlush) {
        double showered = shower.value() / 60 * showers * perMinute.value();
        double gray = dishes.value() + wash.value() + showered;
        double flushed = flushes * perFlush.value();
        return new Day(
                new Liters(drink.value() + gray + flushed), new Liters(gray), new Liters(flushed + BODY.value()));
    }
}
