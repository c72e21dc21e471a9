package bayfolio.reckon.power;

import bayfolio.fact.Key;
import bayfolio.measure.Amps;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.model.Circuit;
import bayfolio.model.Load;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.reckon.Published;
import bayfolio.reckon.Table;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A load on its circuit, with the current that it takes there.
 *
 * @param amps as stated, or else watts divided by volts
 * @param feeds the circuits that its own is fed through, the nearest first
 */
public record Draw(Load load, Circuit circuit, Amps amps, Region region, List<Circuit> feeds) {
    /** The role of what somebody would switch off last. */
    public static final String AIR_CONDITIONER = "air-conditioner";

    static final Table TABLE = Table.read("power");

    /** NEC 210.20(A): a breaker carries continuous loads at 125 %; Europe knows no such factor. */
    public static final Published<Double> CONTINUOUS_NORTH_AMERICA = TABLE.number("continuous.north-america");

    private static final double HAIR = 1e-6;

    public Draw {
        feeds = List.copyOf(feeds);
    }

    /** Those whose circuit and current are known. */
    public static Stream<Draw> all(Unit unit) {
        return unit.loads().stream()
                .flatMap(load -> circuit(load, unit)
                        .flatMap(circuit -> amps(load, circuit)
                                .map(amps -> new Draw(load, circuit, amps, unit.region(), feeds(circuit, unit))))
                        .stream());
    }

    public static Optional<Circuit> circuit(Load load, Unit unit) {
        return circuit(load.facts().get(Load.CIRCUIT), unit);
    }

    private static Optional<Circuit> circuit(String id, Unit unit) {
        return unit.circuits().stream()
                .filter(circuit -> circuit.id().equals(id))
                .findFirst();
    }

    /** A chain that comes back to itself ends; the check tells it. */
    private static List<Circuit> feeds(Circuit circuit, Unit unit) {
        List<Circuit> feeds = new ArrayList<>(List.of(circuit));
        Optional<Circuit> next = feed(circuit, unit);
        while (next.filter(feed -> !feeds.contains(feed)).isPresent()) {
            feeds.add(next.get());
            next = feed(next.get(), unit);
        }
        return feeds.subList(1, feeds.size());
    }

    private static Optional<Circuit> feed(Circuit circuit, Unit unit) {
        return circuit.facts().find(Circuit.FED_THROUGH).flatMap(id -> circuit(id, unit));
    }

    /** Whether its current passes the breaker of a circuit: its own, or one that this is fed through. */
    public boolean passes(Circuit other) {
        return circuit.id().equals(other.id())
                || feeds.stream().anyMatch(feed -> feed.id().equals(other.id()));
    }

    /** The load's own voltage, or else that of its circuit. */
    public static Volts volts(Load load, Circuit circuit) {
        return load.facts().find(Load.VOLTS).orElseGet(() -> circuit.facts().get(Circuit.VOLTS));
    }

    private static Optional<Amps> amps(Load load, Circuit circuit) {
        double volts = volts(load, circuit).value();
        return load.facts()
                .find(Load.AMPS)
                .or(() -> load.facts()
                        .find(Load.WATTS)
                        .filter(watts -> volts > 0)
                        .map(watts -> new Amps(watts.value() / volts)));
    }

    /** Watts as stated, or else volts times amps. */
    public Watts watts() {
        return load.facts()
                .find(Load.WATTS)
                .orElseGet(() -> new Watts(amps.value() * volts(load, circuit).value()));
    }

    /** The same with a share of its current. */
    public Draw times(Share share) {
        return new Draw(load, circuit, new Amps(share.value() * amps.value()), region, feeds);
    }

    public boolean continuous() {
        return load.facts().find(Load.CONTINUOUS).orElse(false);
    }

    public boolean alwaysOn() {
        return load.facts().find(Load.ALWAYS_ON).orElse(false);
    }

    public boolean onInverter() {
        return load.facts().find(Load.ON_INVERTER).orElse(false);
    }

    /** Whether a breaker must be larger than what is drawn. */
    public boolean raised() {
        return continuous() && region == Region.NORTH_AMERICA;
    }

    /** What a breaker must be rated for. */
    public Amps needs() {
        return raised() ? new Amps(CONTINUOUS_NORTH_AMERICA.value() * amps.value()) : amps;
    }

    /** What they take together, as it flows. */
    public static Amps amps(List<Draw> together) {
        return new Amps(
                together.stream().mapToDouble(draw -> draw.amps().value()).sum());
    }

    public static Amps needs(List<Draw> together) {
        return new Amps(
                together.stream().mapToDouble(draw -> draw.needs().value()).sum());
    }

    /** Currents are multiplied and added up, so what is exactly at a limit may lie a hair above it. */
    public static boolean over(Amps current, Amps limit) {
        return current.value() > limit.value() + HAIR;
    }

    public static boolean over(Watts power, Watts limit) {
        return power.value() > limit.value() + HAIR;
    }

    /** What its current follows from. */
    public Key<?> stated() {
        return stated(load);
    }

    /** What the current of a load follows from. */
    public static Key<?> stated(Load load) {
        return load.facts().has(Load.AMPS) ? Load.AMPS : Load.WATTS;
    }

    /** Where the current is written, or what it follows from. */
    public Place at() {
        return load.facts().at(stated());
    }
}
