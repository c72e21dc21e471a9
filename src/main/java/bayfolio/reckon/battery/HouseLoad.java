package bayfolio.reckon.battery;

import bayfolio.measure.Amps;
import bayfolio.measure.Seconds;
import bayfolio.measure.Volts;
import bayfolio.model.Appliance;
import bayfolio.model.Bank;
import bayfolio.model.Circuit;
import bayfolio.model.Load;
import bayfolio.model.Unit;
import bayfolio.reckon.gas.GasFlame;
import bayfolio.reckon.power.Draw;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A load that the house batteries feed, by themselves or through the inverter.
 *
 * @param current what it takes out of the batteries; the inverter's own draw is counted once, and not here
 * @param inverted whether the inverter feeds it
 * @param stated its hours, where they are stated; in a night no more than that has
 * @param frost the same in a night of frost, where that differs
 */
public record HouseLoad(
        Load load,
        Amps current,
        boolean inverted,
        boolean alwaysOn,
        Optional<Seconds> stated,
        Optional<Seconds> frost) {
    /** All whose draw is known. */
    public static List<HouseLoad> all(Unit unit, HouseBank bank) {
        Inverting inverter = Inverting.of(unit, bank.volts());
        return Draw.all(unit)
                .filter(draw -> fed(draw.load(), draw.circuit(), bank.bank()))
                .map(draw -> of(draw, bank.volts(), inverter, unit))
                .toList();
    }

    /** Loads that matter in a night, and whose draw is not known. */
    public static Stream<Load> unknown(Unit unit, HouseBank bank) {
        List<Load> known = Draw.all(unit).map(Draw::load).toList();
        return unit.loads().stream()
                .filter(load -> !known.contains(load))
                .filter(load -> alwaysOn(load)
                        || stated(load, unit).isPresent()
                        || frost(load, unit).isPresent())
                .filter(load -> Draw.circuit(load, unit)
                        .filter(circuit -> fed(load, circuit, bank.bank()))
                        .isPresent());
    }

    private static boolean fed(Load load, Circuit circuit, Bank bank) {
        return inverted(circuit)
                ? load.facts().find(Load.ON_INVERTER).orElse(false)
                        && circuit.facts().find(Circuit.BY_INVERTER).orElse(true)
                : circuit.facts().find(Circuit.BANK).orElse(bank.id()).equals(bank.id());
    }

    private static boolean inverted(Circuit circuit) {
        return circuit.facts().get(Circuit.CURRENT) == Circuit.Current.AC;
    }

    private static boolean alwaysOn(Load load) {
        return load.facts().find(Load.ALWAYS_ON).orElse(false);
    }

    private static HouseLoad of(Draw draw, Volts bank, Inverting inverter, Unit unit) {
        boolean inverted = inverted(draw.circuit());
        return new HouseLoad(
                draw.load(),
                inverted ? inverter.draws(draw.watts()) : direct(draw, bank),
                inverted,
                draw.alwaysOn(),
                stated(draw.load(), unit),
                frost(draw.load(), unit));
    }

    private static Optional<Seconds> stated(Load load, Unit unit) {
        return ofTheFlame(load, unit, GasFlame::mild)
                .or(() -> load.facts().find(Load.A_NIGHT))
                .map(HouseLoad::inANight);
    }

    private static Optional<Seconds> frost(Load load, Unit unit) {
        return ofTheFlame(load, unit, GasFlame::frost)
                .or(() -> load.facts().find(Load.A_NIGHT_FROST))
                .map(HouseLoad::inANight);
    }

    /** The blower of a gas heater runs while its flame does: one fact for gas and for batteries. */
    private static Optional<Seconds> ofTheFlame(Load load, Unit unit, Function<Appliance, Optional<Seconds>> hours) {
        return GasFlame.heaterOf(load, unit).flatMap(hours);
    }

    private static Seconds inANight(Seconds time) {
        return new Seconds(Math.min(time.value(), Night.LENGTH.value()));
    }

    /** Twelve-volt things on batteries of 24 V take half of their current from them. */
    private static Amps direct(Draw draw, Volts bank) {
        double volts = Draw.volts(draw.load(), draw.circuit()).value();
        double times = volts > 0 ? Math.max(1, Math.rint(bank.value() / volts)) : 1;
        return new Amps(draw.amps().value() / times);
    }

    public String name() {
        return load.name();
    }

    /** As stated, or the whole night where it is always on. */
    public Seconds hours() {
        return stated.orElse(alwaysOn ? Night.LENGTH : new Seconds(0));
    }

    /** In a night of frost. */
    public Seconds frosty() {
        return frost.orElse(hours());
    }

    /** Whether it runs for longer or shorter in frost. */
    public boolean heats() {
        return !frosty().equals(hours());
    }

    public Discharge.Run run() {
        return new Discharge.Run(current, hours());
    }

    /** For so long, in mild weather and in frost. */
    public HouseLoad running(Seconds hours) {
        return new HouseLoad(load, current, inverted, alwaysOn, Optional.of(hours), Optional.empty());
    }
}
