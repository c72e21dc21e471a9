package bayfolio.reckon.power;

import bayfolio.fact.Facts;
import bayfolio.measure.Amps;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.model.Charger;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How the loads of a coach share one supply: what each draws on which leg, and on which breaker.
 *
 * <p>Loads fit when on every leg 1.25 x continuous + 1.00 x other amps stay within the rating in North America (NEC 210.19(A)
 * and 210.20(A), verified), and the plain sum in Europe; what is always on is counted in. A load of twice the voltage of a
 * leg draws on both legs. What is fed through another circuit counts at the breaker of that one, too; what the inverter
 * makes itself does not pass the breaker in front of it.
 *
 * @param switched loads that somebody switches on, in the order of the description
 * @param always loads that run without anybody's doing
 * @param dead loads that do not run on this supply at all
 * @param conductors what can be loaded too far: legs, then breakers that several loads pass
 */
public record LoadSharing(
        SupplyOption feed, List<Draw> switched, List<Draw> always, List<Draw> dead, List<Limit> conductors) {
    /**
     * @param circuit of the breaker; absent for what the supply itself gives
     * @param leg counted from 1; 0 where it is not of one of two legs
     * @param draws what each switched load draws on it, counted as the rule counts it
     * @param always what all that is always on draws on it
     */
    public record Limit(Optional<Circuit> circuit, int leg, Amps limit, Amps always, List<Amps> draws) {
        public Limit {
            draws = List.copyOf(draws);
        }
    }

    /** The role of what charges the house batteries. */
    public static final String CHARGER = "charger";

    /** What the search takes, far more than any coach has; what is beyond counts as always on, to be safe. */
    private static final int MOST_LOADS = 62;

    private static final double TWICE = 1.7;

    /** Up to here every set is listed, however many things it has. */
    private static final int ALL_SETS = 24;

    /** Beyond that, what a set has at most. */
    public static final int FEW = 4;

    public LoadSharing {
        switched = List.copyOf(switched);
        always = List.copyOf(always);
        dead = List.copyOf(dead);
        conductors = List.copyOf(conductors);
    }

    /** All supplies of a coach on which there is something to switch on. */
    public static List<LoadSharing> all(Coach coach) {
        return SupplyOption.all(coach).stream()
                .map(feed -> of(feed, coach))
                .filter(way -> !way.switched().isEmpty())
                .toList();
    }

    /** A supply and the alternating-current loads of the coach. */
    public static LoadSharing of(SupplyOption feed, Coach coach) {
        List<Draw> switched = new ArrayList<>();
        List<Draw> always = new ArrayList<>();
        List<Draw> dead = new ArrayList<>();
        for (Draw draw :
                Draw.all(coach.unit()).map(draw -> limited(draw, feed, coach)).toList()) {
            if (draw.circuit().facts().get(Circuit.CURRENT) == Circuit.Current.AC) {
                boolean on = draw.alwaysOn() || switched.size() == MOST_LOADS;
                (!runs(draw, feed) ? dead : on ? always : switched).add(draw);
            }
        }
        return new LoadSharing(feed, switched, always, dead, conductors(feed, switched, always));
    }

    /** On a small outlet the charger is set to the current that the description gives for it. */
    private static Draw limited(Draw draw, SupplyOption feed, Coach coach) {
        return feed.small() && draw.load().roles().contains(CHARGER)
                ? limit(coach).map(share -> draw.times(share)).orElse(draw)
                : draw;
    }

    /** The share of its full current that the charger is set to. */
    public static Optional<Share> limit(Coach coach) {
        Optional<Facts> charger = coach.unit().facts().find(Unit.CHARGER).map(Charger::facts);
        double full =
                charger.flatMap(it -> it.find(Charger.RATING)).map(Amps::value).orElse(0.0);
        return charger.flatMap(it -> it.find(Charger.LIMIT))
                .filter(limit -> limit.value() < full)
                .map(limit -> new Share(limit.value() / full));
    }

    /** The same with the charger set low; absent where it is so already, or where nobody says that it can be. */
    public Optional<LoadSharing> chargerLow(Coach coach) {
        return limit(coach).filter(limit -> !feed.small()).map(limit -> of(feed.withSmallCharge(), coach));
    }

    private static boolean runs(Draw draw, SupplyOption feed) {
        boolean fed = feed.source() != Supply.Source.INVERTER || byInverter(draw.circuit());
        return fed && (twice(draw, feed) ? feed.legs() == SupplyOption.Legs.TWO : feed.feeds(leg(draw)));
    }

    private static boolean byInverter(Circuit circuit) {
        return circuit.facts().find(Circuit.BY_INVERTER).orElse(false);
    }

    /** Whether it hangs between both legs: 240 V on legs of 120 V, also where a plate says 208 or 230 V. */
    private static boolean twice(Draw draw, SupplyOption feed) {
        return twice(Draw.volts(draw.load(), draw.circuit()), feed);
    }

    private static boolean twice(Volts volts, SupplyOption feed) {
        return volts.value() > TWICE * feed.volts().value();
    }

    private static int leg(Draw draw) {
        return draw.circuit().facts().find(Circuit.LEG).orElse(1);
    }

    /** The legs of the supply that it draws on, counted from 1; a supply with one conductor for all has the first only. */
    private static List<Integer> legs(Draw draw, SupplyOption feed) {
        return feed.legs() != SupplyOption.Legs.TWO
                ? List.of(1)
                : twice(draw, feed) ? List.of(1, 2) : List.of(leg(draw));
    }

    public List<Integer> legs(Draw draw) {
        return legs(draw, feed);
    }

    /** Whether two things draw on the same leg. */
    public boolean meet(Draw one, Draw other) {
        return legs(one).stream().anyMatch(legs(other)::contains);
    }

    private static List<Limit> conductors(SupplyOption feed, List<Draw> switched, List<Draw> always) {
        List<Limit> conductors = new ArrayList<>();
        int legs = feed.legs() == SupplyOption.Legs.TWO ? 2 : 1;
        for (int leg = 1; leg <= legs; leg++) {
            int number = leg;
            conductors.add(conductor(
                    Optional.empty(),
                    legs == 1 ? 0 : leg,
                    feed.perLeg(),
                    switched,
                    always,
                    draw -> legs(draw, feed).contains(number)));
        }
        Map<String, Circuit> shared = new LinkedHashMap<>();
        switched.forEach(draw -> passed(draw, feed).forEach(circuit -> shared.putIfAbsent(circuit.id(), circuit)));
        shared.values().stream()
                .flatMap(circuit -> poles(circuit, feed, switched, always))
                .filter(conductor -> several(conductor))
                .forEach(conductors::add);
        return conductors;
    }

    /** The circuits whose breakers it passes, its own first. */
    private static List<Circuit> passed(Draw draw, SupplyOption feed) {
        List<Circuit> passed = new ArrayList<>(List.of(draw.circuit()));
        draw.feeds().stream()
                .takeWhile(circuit -> feed.source() != Supply.Source.INVERTER || byInverter(circuit))
                .forEach(passed::add);
        return passed;
    }

    /** A breaker between both legs carries each of them by itself. */
    private static Stream<Limit> poles(Circuit circuit, SupplyOption feed, List<Draw> switched, List<Draw> always) {
        boolean both =
                feed.legs() == SupplyOption.Legs.TWO && twice(circuit.facts().get(Circuit.VOLTS), feed);
        return (both ? Stream.of(1, 2) : Stream.of(0))
                .map(leg -> conductor(
                        Optional.of(circuit),
                        leg,
                        circuit.facts().get(Circuit.BREAKER),
                        switched,
                        always,
                        draw -> passed(draw, feed).contains(circuit)
                                && (!both || legs(draw, feed).contains(leg))));
    }

    /** A breaker with one load on it is the business of the check. */
    private static boolean several(Limit conductor) {
        long loads = conductor.draws().stream().filter(amps -> amps.value() > 0).count();
        return loads + (conductor.always().value() > 0 ? 1 : 0) > 1;
    }

    private static Limit conductor(
            Optional<Circuit> circuit,
            int leg,
            Amps limit,
            List<Draw> switched,
            List<Draw> always,
            Predicate<Draw> on) {
        return new Limit(
                circuit,
                leg,
                limit,
                Draw.needs(always.stream().filter(on).toList()),
                switched.stream()
                        .map(draw -> on.test(draw) ? draw.needs() : new Amps(0))
                        .toList());
    }

    public Limits limits() {
        return new Limits(
                conductors.stream().mapToDouble(it -> it.limit().value()).toArray(),
                conductors.stream().mapToDouble(it -> it.always().value()).toArray(),
                IntStream.range(0, switched.size())
                        .mapToObj(load -> conductors.stream()
                                .mapToDouble(it -> it.draws().get(load).value())
                                .toArray())
                        .toList());
    }

    public boolean manyThings() {
        return switched.size() > ALL_SETS;
    }

    /** What never goes together: each list is too much, and fits with any one of it off; an empty list says that nothing fits. */
    public List<List<Draw>> never() {
        int most = manyThings() ? FEW : switched.size();
        return limits().never(most).stream().map(this::draws).toList();
    }

    /** Whether the loads fit together with what is always on. */
    public boolean fits(List<Draw> on) {
        return limits().fits(bits(on));
    }

    /** What a leg or breaker has to carry with these on, as the rule counts it. */
    public Amps carried(Limit conductor, List<Draw> on) {
        return new Amps(limits().on(conductors.indexOf(conductor), bits(on)));
    }

    /** The most of some loads that fit together, with others on in any case. */
    public List<Draw> most(List<Draw> among, List<Draw> on) {
        return draws(limits().with(bits(on)).most(bits(among)));
    }

    public List<Draw> draws(long set) {
        return IntStream.range(0, switched.size())
                .filter(load -> (set >> load & 1) == 1)
                .mapToObj(switched::get)
                .toList();
    }

    public long bits(List<Draw> draws) {
        long set = 0;
        for (Draw draw : draws) {
            set |= 1L << switched.indexOf(draw);
        }
        return set;
    }
}
