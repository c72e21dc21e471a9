package bayfolio.reckon.battery;

import bayfolio.measure.Amps;
import bayfolio.measure.Seconds;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Load;
import bayfolio.model.Solar;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.reckon.Missing;
import bayfolio.reckon.power.Draw;
import java.util.List;
import java.util.Optional;

/**
 * How long the coach may stand unplugged before the house batteries are down to their limit.
 *
 * @param always what draws all the time; the inverter is off
 */
public record LeftStanding(Coach coach, HouseBank bank, List<HouseLoad> always) {
    private static final double DAY = 86_400;

    /** Beyond that nothing is promised. */
    private static final double YEAR = 365;

    public LeftStanding {
        always = List.copyOf(always);
    }

    public static Optional<LeftStanding> of(Coach coach) {
        return HouseBank.of(coach)
                .filter(bank ->
                        lacking(coach).isEmpty() && !coach.unit().loads().isEmpty())
                .map(bank -> new LeftStanding(coach, bank, always(coach.unit(), bank)));
    }

    public static List<Missing> lacking(Coach coach) {
        Optional<HouseBank> bank = HouseBank.of(coach);
        if (bank.isEmpty() || coach.unit().loads().isEmpty()) {
            return HouseBank.lacking(coach);
        }
        List<Missing> unknown = HouseLoad.unknown(coach.unit(), bank.get())
                .filter(load -> load.facts().find(Load.ALWAYS_ON).orElse(false))
                .map(load -> new Missing("load-draw", load.name()))
                .toList();
        return unknown.isEmpty() && always(coach.unit(), bank.get()).isEmpty()
                ? List.of(new Missing("loads-always-on"))
                : unknown;
    }

    /** The inverter is off while the coach stands. */
    private static List<HouseLoad> always(Unit unit, HouseBank bank) {
        return HouseLoad.all(unit, bank).stream()
                .filter(load -> load.alwaysOn() && !load.inverted())
                .filter(load -> load.current().value() > 0)
                .toList();
    }

    /** Whether there is a switch for the house batteries. */
    public boolean switched() {
        return !coach.holders(Switch.SHAPE.name(), "house-battery-switch").isEmpty();
    }

    /** Only where somebody has looked what stays live. */
    public boolean offKnown() {
        return switched()
                && coach.unit().circuits().stream()
                        .anyMatch(circuit -> circuit.facts().has(Circuit.PAST_BATTERY_SWITCH));
    }

    /** What draws with the switch off. */
    public List<HouseLoad> past() {
        return always.stream().filter(this::past).toList();
    }

    public boolean past(HouseLoad load) {
        return Draw.circuit(load.load(), coach.unit())
                .flatMap(circuit -> circuit.facts().find(Circuit.PAST_BATTERY_SWITCH))
                .orElse(false);
    }

    public static Amps sum(List<HouseLoad> loads) {
        return new Amps(
                loads.stream().mapToDouble(load -> load.current().value()).sum());
    }

    /** With these drawing all the time. */
    public SelfDischarge standing(List<HouseLoad> loads) {
        Amps current = sum(loads);
        return new SelfDischarge(
                bank.kind().fades().value(),
                current.value() > 0
                        ? DAY / bank.at(HouseBank.MILD).lasts(current).value()
                        : 0);
    }

    /** When the limit is reached; empty where that is more than a year away. */
    public Optional<Seconds> until(List<HouseLoad> loads) {
        return standing(loads).until(bank.limit()).filter(time -> time.value() <= YEAR * DAY);
    }

    /** Whether a current is above the one that the capacity is rated for. */
    public boolean aboveRated() {
        return bank.at(HouseBank.MILD).ratedCurrent().value() < sum(always).value();
    }

    public boolean hasSun() {
        return coach.unit()
                .facts()
                .find(Unit.SOLAR)
                .filter(it -> it.facts().has(Solar.RATING))
                .isPresent();
    }
}
