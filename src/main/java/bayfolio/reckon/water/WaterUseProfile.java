package bayfolio.reckon.water;

import bayfolio.measure.Liters;
import bayfolio.measure.Seconds;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;
import java.util.List;

/**
 * A way of living: what one person uses in a day.
 *
 * @param name in the table, and in the catalog
 * @param drink for drinking and cooking, with where all of it comes from; it goes down no drain
 * @param shower how long one shower runs
 * @param showers how many a day
 * @param flushes of the toilet
 */
public record WaterUseProfile(
        String name, Published<Liters> drink, Liters dishes, Liters wash, Seconds shower, double showers, int flushes) {
    static final Table TABLE = Table.read("water");

    public static final WaterUseProfile SPARING = read("sparing");
    public static final WaterUseProfile USUAL = read("usual");
    public static final WaterUseProfile GENEROUS = read("generous");

    public static final List<WaterUseProfile> ALL = List.of(SPARING, USUAL, GENEROUS);

    /** Feces and urine of a day. */
    public static final Published<Liters> BODY = TABLE.quantity("body", Liters.SCALE);

    private static WaterUseProfile read(String name) {
        return new WaterUseProfile(
                name,
                TABLE.quantity(name + ".drink", Liters.SCALE),
                TABLE.quantity(name + ".dishes", Liters.SCALE).value(),
                TABLE.quantity(name + ".wash", Liters.SCALE).value(),
                TABLE.quantity(name + ".shower", Seconds.SCALE).value(),
                TABLE.number(name + ".showers").value(),
                TABLE.number(name + ".flushes").value().intValue());
    }

    /** The same with more showers or fewer. */
    public WaterUseProfile with(double count) {
        return new WaterUseProfile(name, drink, dishes, wash, shower, count, flushes);
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
                new Liters(drink.value().value() + gray + flushed),
                new Liters(gray),
                new Liters(flushed + BODY.value().value()));
    }
}
