package bayfolio.reckon;

import bayfolio.measure.Liters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.model.Coach;
import bayfolio.model.People;
import bayfolio.model.Unit;
import bayfolio.model.Water;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How long the tanks of a coach last.
 *
 * @param berths people it sleeps, at least one
 * @param perMinute of the shower; none where the description has no shower
 * @param perFlush none where there is no toilet tank
 * @param flushStated whether the description says so
 */
record WaterUse(
        WaterTanks fresh,
        WaterTanks gray,
        WaterTanks toilet,
        int berths,
        Liters perMinute,
        Liters perFlush,
        boolean flushStated) {
    static final List<WaterUseProfile> WAYS =
            List.of(WaterUseProfile.SPARING, WaterUseProfile.USUAL, WaterUseProfile.GENEROUS);

    /** A foot pedal and no more than rinses the bowl; an eighth of a gallon. Common practice, no source. */
    private static final Liters USUAL_FLUSH = new Liters(0.4731764730);

    private static final Liters NONE = new Liters(0);

    /**
     * Tanks of one purpose and how long they last.
     *
     * @param end what happens then, in the middle of a sentence: {@code full}
     */
    record Lasting(WaterTanks tanks, String end, Liters each, double days) {
        String shown() {
            return Rounding.DOWN.days(new Seconds(86_400 * days));
        }

        String names() {
            return tanks.names();
        }

        /** {@code Gray tank full}. */
        String what() {
            return names() + " " + end;
        }

        /** Whole days, as they are promised. */
        String whole() {
            long whole = (long) Math.floor(days + 1e-6);
            return whole < 1 ? "less than a day" : whole == 1 ? "1 day" : whole + " days";
        }
    }

    /** What the description must say, in plain words. */
    static List<String> lacking(Unit unit) {
        return WaterTanks.fresh(unit).none() || berths(unit).isPresent()
                ? List.of()
                : List.of("how many people sleep in the coach");
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
    static Optional<WaterUse> of(Coach coach) {
        Unit unit = coach.unit();
        WaterTanks fresh = WaterTanks.fresh(unit);
        WaterTanks toilet = WaterTanks.toilet(unit);
        Optional<Water> water = unit.facts().find(Unit.WATER);
        Optional<Liters> flush = water.flatMap(it -> it.facts().find(Water.TOILET_PER_FLUSH));
        return fresh.usable().value() <= 0
                ? Optional.empty()
                : berths(unit)
                        .map(berths -> new WaterUse(
                                fresh,
                                WaterTanks.gray(unit),
                                toilet,
                                berths,
                                water.flatMap(it -> it.facts().find(Water.SHOWER_PER_MINUTE))
                                        .orElse(NONE),
                                toilet.none() ? NONE : flush.orElse(USUAL_FLUSH),
                                flush.isPresent()));
    }

    boolean shower() {
        return perMinute.value() > 0;
    }

    WaterUseProfile.Day day(WaterUseProfile living) {
        return living.day(perMinute, perFlush);
    }

    /** The tanks that the coach has: fresh, gray, toilet. */
    List<Lasting> lasting(WaterUseProfile living, int people) {
        WaterUseProfile.Day day = day(living);
        List<Lasting> all = new ArrayList<>();
        add(fresh, "empty", day.fresh(), people, all);
        add(gray, "full", day.gray(), people, all);
        add(toilet, "full", day.toilet(), people, all);
        return List.copyOf(all);
    }

    private static void add(WaterTanks tanks, String end, Liters each, int people, List<Lasting> all) {
        if (!tanks.none()) {
            all.add(new Lasting(tanks, end, each, tanks.usable().value() / (people * each.value())));
        }
    }

    /** The one that is empty or full first. */
    Lasting first(WaterUseProfile living, int people) {
        return lasting(living, people).stream()
                .min(Comparator.comparingDouble(Lasting::days))
                .orElseThrow();
    }
}
