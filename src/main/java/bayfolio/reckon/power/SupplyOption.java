package bayfolio.reckon.power;

import bayfolio.measure.Amps;
import bayfolio.measure.Volts;
import bayfolio.model.Adapter;
import bayfolio.model.Coach;
import bayfolio.model.Inverter;
import bayfolio.model.Region;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Published;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One way in which a coach has alternating current: its own outlet, a smaller one, generator, inverter.
 *
 * @param volts between one leg and neutral
 * @param perLeg what one leg carries
 * @param surge what one leg gives for a moment; empty where nothing says so, and for outlets, which carry a start
 * @param small whether it is an outlet smaller than the one that the coach is made for
 * @param name of a supply that the description names; absent for outlets that are called by their amps
 * @param origin the description, or the region that makes it possible
 */
public record SupplyOption(
        String id,
        Optional<String> name,
        Supply.Source source,
        Volts volts,
        Amps perLeg,
        Legs legs,
        Optional<Amps> surge,
        boolean small,
        Origin origin) {
    /** How the legs of the coach are fed. */
    public enum Legs {
        /** The coach has one, and so has the supply. */
        ONE,
        /** Each by itself, so that between them there is twice the voltage. */
        TWO,
        /** Both by the same conductor: what they carry adds up, and between them there is no voltage. */
        JOINED,
        /** The first only; what hangs on the second is dead. */
        FIRST_ONLY
    }

    /** A plug for 15 A goes into an outlet for 20 A: NEMA 5-15P into 5-20R, a guide to outlets. */
    private static final Amps FIFTEEN = new Amps(15);

    private static final Published<Amps> TWENTY = Draw.TABLE.quantity("outlet.20", Amps.SCALE);

    /** Posts for the blue 16 A plug are often fused lower; motorhome magazine. */
    private static final List<Published<Amps>> EUROPEAN_POSTS =
            List.of(Draw.TABLE.quantity("post.10", Amps.SCALE), Draw.TABLE.quantity("post.6", Amps.SCALE));

    /** All ways of a coach, the largest outlet first, then the smaller ones, generator and inverter. */
    public static List<SupplyOption> all(Coach coach) {
        Unit unit = coach.unit();
        List<SupplyOption> feeds = new ArrayList<>(outlets(unit));
        feeds.sort(Comparator.comparingDouble((SupplyOption feed) -> -feed.perLeg.value()));
        for (Supply.Source source : List.of(Supply.Source.GENERATOR, Supply.Source.INVERTER)) {
            unit.supplies().stream()
                    .filter(supply -> supply.source() == source)
                    .forEach(supply -> feeds.add(of(supply, unit)));
        }
        return List.copyOf(feeds);
    }

    /** Whether what hangs on a leg is dead on it. */
    public boolean feeds(int leg) {
        return legs != Legs.FIRST_ONLY || leg == 1;
    }

    /** The same, with the charger set as low as for a smaller outlet. */
    public SupplyOption withSmallCharge() {
        return new SupplyOption(id, name, source, volts, perLeg, legs, surge, true, origin);
    }

    private static List<SupplyOption> outlets(Unit unit) {
        List<SupplyOption> outlets = new ArrayList<>();
        Set<Double> seen = new HashSet<>();
        List<Supply> own = Shore.of(unit);
        own.stream().filter(supply -> seen.add(amps(supply))).forEach(supply -> outlets.add(of(supply, unit)));
        Optional<Supply> largest = own.stream().max(Comparator.comparingDouble(SupplyOption::amps));
        largest.ifPresent(cord -> {
            List<Adapter> adapters = Shore.adapters(unit);
            adapters.stream()
                    .filter(adapter -> from(adapter) < amps(cord) && seen.add(from(adapter)))
                    .forEach(adapter -> outlets.add(through(adapter, adapters, cord)));
            outlets.addAll(ofTheRegion(unit, cord, outlets, seen));
        });
        return outlets;
    }

    /** A plug of 240 V for one size of outlet and no smaller one, AS/NZS 3112; an adapter for another is told as such. */
    private static boolean flatPins(Supply cord) {
        return cord.facts().get(Supply.VOLTS).value() == 240 && (amps(cord) == 10 || amps(cord) == 15);
    }

    /** Smaller outlets that take the plug of the cord, or of an adapter on board, as it is. */
    private static List<SupplyOption> ofTheRegion(
            Unit unit, Supply cord, List<SupplyOption> outlets, Set<Double> seen) {
        if (flatPins(cord) || unit.region() == Region.OCEANIA) {
            return List.of();
        }
        if (unit.region() == Region.EUROPE) {
            return EUROPEAN_POSTS.stream()
                    .filter(post -> post.value().value() < amps(cord)
                            && seen.add(post.value().value()))
                    .map(post -> smaller(of(cord, unit), post))
                    .toList();
        }
        return outlets.stream()
                .filter(outlet -> outlet.perLeg.equals(FIFTEEN)
                        && amps(cord) > TWENTY.value().value())
                .filter(outlet -> seen.add(TWENTY.value().value()))
                .map(outlet -> smaller(outlet, TWENTY))
                .toList();
    }

    private static SupplyOption smaller(SupplyOption outlet, Published<Amps> figure) {
        Amps amps = figure.value();
        return new SupplyOption(
                "outlet-" + Math.round(amps.value()),
                Optional.empty(),
                Supply.Source.SHORE,
                outlet.volts,
                amps,
                outlet.legs,
                Optional.empty(),
                true,
                new Origin.Usual(figure));
    }

    private static SupplyOption of(Supply supply, Unit unit) {
        boolean two = supply.facts().get(Supply.LEGS) == 2;
        return new SupplyOption(
                supply.id(),
                Optional.of(supply.name()),
                supply.source(),
                supply.facts().get(Supply.VOLTS),
                supply.facts().get(Supply.AMPS),
                two ? Legs.TWO : hasTwo(unit) ? Legs.JOINED : Legs.ONE,
                supply.facts().find(Supply.SURGE).or(() -> ofTheInverter(supply, unit)),
                false,
                new Origin.Stated(supply.facts(), Supply.AMPS));
    }

    /** A generator or inverter of one leg feeds all that hangs on it, whatever leg that has on the cord. */
    private static boolean hasTwo(Unit unit) {
        return Shore.of(unit).stream().anyMatch(supply -> supply.facts().get(Supply.LEGS) == 2);
    }

    private static Optional<Amps> ofTheInverter(Supply supply, Unit unit) {
        double volts = supply.facts().get(Supply.VOLTS).value();
        return supply.source() != Supply.Source.INVERTER || volts <= 0
                ? Optional.empty()
                : unit.facts()
                        .find(Unit.INVERTER)
                        .flatMap(inverter -> inverter.facts().find(Inverter.SURGE))
                        .map(surge -> new Amps(surge.value() / volts));
    }

    private static SupplyOption through(Adapter adapter, List<Adapter> adapters, Supply cord) {
        boolean two = cord.facts().get(Supply.LEGS) == 2;
        return new SupplyOption(
                adapter.id(),
                Optional.empty(),
                Supply.Source.SHORE,
                adapter.facts().find(Adapter.VOLTS).orElseGet(() -> cord.facts().get(Supply.VOLTS)),
                adapter.facts().get(Adapter.FROM),
                !two ? Legs.ONE : joins(adapter, adapters) ? Legs.JOINED : Legs.FIRST_ONLY,
                Optional.empty(),
                true,
                new Origin.Stated(adapter.facts(), Adapter.FROM));
    }

    /** Whether it, or one that it plugs onto, joins the legs; a chain that comes back to itself ends. */
    private static boolean joins(Adapter adapter, List<Adapter> adapters) {
        Set<String> passed = new HashSet<>();
        Optional<Adapter> next = Optional.of(adapter);
        while (next.isPresent() && passed.add(next.get().id())) {
            if (next.get().facts().find(Adapter.JOINS_LEGS).orElse(false)) {
                return true;
            }
            Optional<String> onto = next.get().facts().find(Adapter.ONTO);
            next = adapters.stream()
                    .filter(it -> onto.filter(it.id()::equals).isPresent())
                    .findFirst();
        }
        return false;
    }

    private static double amps(Supply supply) {
        return supply.facts().get(Supply.AMPS).value();
    }

    private static double from(Adapter adapter) {
        return adapter.facts().get(Adapter.FROM).value();
    }
}
