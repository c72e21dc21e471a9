package bayfolio.reckon.water;

import bayfolio.measure.Liters;
import bayfolio.measure.Seconds;
import bayfolio.model.Coach;
import bayfolio.model.People;
import bayfolio.model.Unit;
import bayfolio.model.Water;
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Published;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How long the tanks of a coach last.
 *
 * @param berths people it sleeps, at least one
 * @param perMinute of the shower; absent where the description has no shower
 * @param perFlush absent where there is no toilet tank
 */
public record WaterUse(
        WaterTanks fresh,
        WaterTanks gray,
        WaterTanks toilet,
        int berths,
        Optional<Given<Liters>> perMinute,
        Optional<Given<Liters>> perFlush) {
    private static final Published<Liters> USUAL_FLUSH = WaterUseProfile.TABLE.quantity("flush", Liters.SCALE);

    private static final Liters NONE = new Liters(0);

    /**
     * Tanks of one purpose and how long they last.
     *
     * @param each what a person and day takes or gives
     */
    public record Lasting(WaterTanks tanks, End end, Liters each, double days) {
        public Seconds time() {
            return new Seconds(86_400 * days);
        }

        /** Whole days, as they are promised. */
        public long whole() {
            return (long) Math.floor(days + 1e-6);
        }
    }

    /** How a tank is when it is used up. */
    public enum End {
        EMPTY,
        FULL
    }

    public static List<Missing> lacking(Unit unit) {
        return WaterTanks.fresh(unit).none() || berths(unit).isPresent()
                ? List.of()
                : List.of(new Missing("sleeping-places"));
    }

    private static Optional<Integer> berths(Unit unit) {
        return unit.facts()
                .find(Unit.PEOPLE)
                .flatMap(people -> people.facts()
                        .find(People.SLEEPING_PLACES)
                        .filter(places -> places > 0)
                        .or(() -> people.facts().find(People.BELTED_SEATS)));
    }

    /** Nothing where the coach has no fresh tank, or one that holds nothing, or nobody knows for how many it is. */
    public static Optional<WaterUse> of(Coach coach) {
        Unit unit = coach.unit();
        WaterTanks fresh = WaterTanks.fresh(unit);
        WaterTanks toilet = WaterTanks.toilet(unit);
        Optional<Water> water = unit.facts().find(Unit.WATER);
        return fresh.usable().value() <= 0
                ? Optional.empty()
                : berths(unit)
                        .map(berths -> new WaterUse(
                                fresh,
                                WaterTanks.gray(unit),
                                toilet,
                                berths,
                                water.filter(it -> it.facts().has(Water.SHOWER_PER_MINUTE))
                                        .map(it -> Given.stated(it.facts(), Water.SHOWER_PER_MINUTE)),
                                toilet.none() ? Optional.empty() : Optional.of(flush(water))));
    }

    private static Given<Liters> flush(Optional<Water> water) {
        return water.map(it -> Given.of(it.facts(), Water.TOILET_PER_FLUSH, USUAL_FLUSH))
                .orElseGet(() -> Given.usual(USUAL_FLUSH));
    }

    public boolean shower() {
        return liters(perMinute).value() > 0;
    }

    /** None where it is absent. */
    public static Liters liters(Optional<Given<Liters>> given) {
        return given.map(Given::value).orElse(NONE);
    }

    public WaterUseProfile.Day day(WaterUseProfile living) {
        return living.day(liters(perMinute), liters(perFlush));
    }

    /** The tanks that the coach has: fresh, gray, toilet. */
    public List<Lasting> lasting(WaterUseProfile living, int people) {
        WaterUseProfile.Day day = day(living);
        List<Lasting> all = new ArrayList<>();
        add(fresh, End.EMPTY, day.fresh(), people, all);
        add(gray, End.FULL, day.gray(), people, all);
        add(toilet, End.FULL, day.toilet(), people, all);
        return List.copyOf(all);
    }

    private static void add(WaterTanks tanks, End end, Liters each, int people, List<Lasting> all) {
        if (!tanks.none()) {
            all.add(new Lasting(tanks, end, each, tanks.usable().value() / (people * each.value())));
        }
    }

    /** The one that is empty or full first. */
    public Lasting first(WaterUseProfile living, int people) {
        return lasting(living, people).stream()
                .min(Comparator.comparingDouble(Lasting::days))
                .orElseThrow();
    }
}
