package bayfolio.reckon.power;

import bayfolio.measure.Amps;
import bayfolio.model.Charger;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Load;
import bayfolio.model.Unit;
import bayfolio.reckon.Missing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What runs together on each supply of a coach, and what never does. */
public record RunsTogether(Coach coach, List<LoadSharing> ways) {
    /** So many of several things that are alike. */
    public record Some(int chosen, List<Draw> of) {}

    public RunsTogether {
        ways = List.copyOf(ways);
    }

    public static Optional<RunsTogether> of(Coach coach) {
        List<LoadSharing> ways = LoadSharing.all(coach);
        return ways.isEmpty() ? Optional.empty() : Optional.of(new RunsTogether(coach, ways));
    }

    /** Nothing where the coach has neither supplies nor loads. */
    public static List<Missing> lacking(Coach coach) {
        boolean supplies = !coach.unit().supplies().isEmpty();
        boolean loads = Draw.all(coach.unit())
                .anyMatch(draw -> draw.circuit().facts().get(Circuit.CURRENT) == Circuit.Current.AC);
        return supplies == loads ? List.of() : List.of(new Missing(loads ? "supplies" : "loads"));
    }

    /** What the charger can be set to on a small outlet. */
    public Optional<Amps> chargerLimit() {
        return LoadSharing.limit(coach)
                .flatMap(limit -> coach.unit().facts().find(Unit.CHARGER))
                .flatMap(charger -> charger.facts().find(Charger.LIMIT));
    }

    /** Whether it fits once the charger is set low. */
    public boolean fitsWithChargerLow(List<Draw> set, LoadSharing way) {
        return way.chargerLow(coach)
                .filter(low -> low.limits().fits(way.bits(set)))
                .isPresent();
    }

    public boolean cooled() {
        return ways.stream().anyMatch(way -> !air(way.switched()).isEmpty());
    }

    public static List<Draw> usual(LoadSharing way) {
        return way.switched().stream()
                .filter(draw -> draw.load().facts().find(Load.USUAL).orElse(false))
                .toList();
    }

    /** The air conditioners that run with all that is usually on, as many as can be. */
    public static List<Draw> coolers(LoadSharing way) {
        List<Draw> usual = usual(way);
        return way.fits(usual) ? way.most(air(way.switched()), usual) : List.of();
    }

    /** The usual things, and as many air conditioners as fit with them. */
    public static List<Draw> on(LoadSharing way) {
        return Stream.concat(usual(way).stream(), coolers(way).stream()).toList();
    }

    /** What a supply gives, leg by leg. */
    public static List<LoadSharing.Limit> legs(LoadSharing way) {
        return way.conductors().subList(0, way.feed().legs() == SupplyOption.Legs.TWO ? 2 : 1);
    }

    /** What carries too little for a set. */
    public static LoadSharing.Limit over(List<Draw> set, LoadSharing way) {
        return way.conductors().stream()
                .filter(it -> way.carried(it, set).value() > it.limit().value())
                .findFirst()
                .orElseThrow();
    }

    /** A set by like things: any two of the three air conditioners. What stands alone comes first. */
    public static List<Some> grouped(List<Draw> set, LoadSharing way) {
        Map<List<Draw>, Integer> groups = new LinkedHashMap<>();
        for (Draw draw : way.switched()) {
            if (set.contains(draw)) {
                List<Draw> alike = way.switched().stream()
                        .filter(other -> alike(draw, other, way))
                        .toList();
                groups.merge(alike, 1, Integer::sum);
            }
        }
        return groups.entrySet().stream()
                .sorted(Comparator.comparing(group -> group.getKey().size() > 1))
                .map(group -> new Some(group.getValue(), group.getKey()))
                .toList();
    }

    /** Of one kind, and equally heavy wherever they draw. */
    private static boolean alike(Draw one, Draw other, LoadSharing way) {
        return one.equals(other)
                || !one.load().roles().isEmpty()
                        && one.load().roles().equals(other.load().roles())
                        && way.conductors().stream()
                                .allMatch(it -> it.draws()
                                        .get(way.switched().indexOf(one))
                                        .equals(it.draws().get(way.switched().indexOf(other))));
    }

    /** Heat first, as it draws most and is missed least for a while; cooling last. */
    public List<Draw> switchOff() {
        List<Draw> switched = new ArrayList<>(ways.get(0).switched());
        switched.removeAll(usual(ways.get(0)));
        switched.sort(Comparator.comparing(RunsTogether::isAir)
                .thenComparing(draw -> -draw.needs().value()));
        return switched;
    }

    public static List<Draw> air(List<Draw> draws) {
        return draws.stream().filter(RunsTogether::isAir).toList();
    }

    private static boolean isAir(Draw draw) {
        return draw.load().roles().contains(Draw.AIR_CONDITIONER);
    }
}
