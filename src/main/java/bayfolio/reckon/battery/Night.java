package bayfolio.reckon.battery;

import bayfolio.measure.Amps;
import bayfolio.measure.Celsius;
import bayfolio.measure.Seconds;
import bayfolio.model.Coach;
import bayfolio.reckon.Missing;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A night on the house batteries, without hook-up, generator and sun.
 *
 * @param loads those that run, each for its hours
 */
public record Night(HouseBank bank, Inverting inverter, List<HouseLoad> loads) {
    /** From evening to morning; taken, not measured. */
    public static final Seconds LENGTH =
            BatteryKind.TABLE.quantity("night", Seconds.SCALE).value();

    public Night {
        loads = List.copyOf(loads);
    }

    /** The usual one; empty where a fact is missing for it. */
    public static Optional<Night> of(Coach coach) {
        return HouseBank.of(coach)
                .filter(bank -> HouseLoad.unknown(coach.unit(), bank).findAny().isEmpty())
                .map(bank -> new Night(
                        bank,
                        Inverting.of(coach.unit(), bank.volts()),
                        HouseLoad.all(coach.unit(), bank).stream()
                                .filter(load -> load.hours().value() > 0
                                        || load.frosty().value() > 0)
                                .toList()))
                .filter(night -> !night.loads().isEmpty());
    }

    /** What is missing for one. */
    public static List<Missing> lacking(Coach coach) {
        Optional<HouseBank> bank = HouseBank.of(coach);
        if (of(coach).isPresent()) {
            return List.of();
        }
        if (bank.isEmpty() || coach.unit().loads().isEmpty()) {
            return HouseBank.lacking(coach);
        }
        List<Missing> unknown = HouseLoad.unknown(coach.unit(), bank.get())
                .map(load -> new Missing("load-draw", load.name()))
                .toList();
        return unknown.isEmpty() ? List.of(new Missing("loads-of-a-night")) : unknown;
    }

    public Night without(HouseLoad load) {
        return new Night(
                bank, inverter, loads.stream().filter(it -> !it.equals(load)).toList());
    }

    /**
     * While anything hangs on it that is always on, the inverter stays on; else as long as its loads run one after the
     * other.
     */
    public Seconds inverterOn() {
        List<HouseLoad> inverted = loads.stream().filter(HouseLoad::inverted).toList();
        double longest = inverted.stream().mapToDouble(Night::seconds).max().orElse(0);
        double most = Math.max(LENGTH.value(), longest);
        boolean stays = inverted.stream().anyMatch(load -> load.alwaysOn() && seconds(load) > 0);
        return new Seconds(
                stays
                        ? most
                        : Math.min(
                                most,
                                inverted.stream().mapToDouble(Night::seconds).sum()));
    }

    private static double seconds(HouseLoad load) {
        return load.run().time().value();
    }

    public Discharge.Run idling() {
        return new Discharge.Run(inverter.idles(), inverterOn());
    }

    public List<Discharge.Run> runs() {
        return Stream.concat(loads.stream().map(HouseLoad::run), Stream.of(idling()))
                .toList();
    }

    /** At freezing and below, heaters run for their hours of frost. */
    public Discharge at(Celsius temperature) {
        Night night = frost(temperature) ? inFrost() : this;
        return Discharge.together(bank.at(temperature), night.runs());
    }

    public static boolean frost(Celsius temperature) {
        return temperature.value() <= 0;
    }

    private Night inFrost() {
        return new Night(
                bank,
                inverter,
                loads.stream().map(load -> load.running(load.frosty())).toList());
    }

    public List<HouseLoad> heaters() {
        return loads.stream().filter(HouseLoad::heats).toList();
    }

    /** One load alone until the limit, with the inverter where it needs that. */
    public Seconds alone(HouseLoad load) {
        return alone(load.inverted() ? load.current().plus(inverter.idles()) : load.current());
    }

    public Seconds alone(Amps current) {
        return new Seconds(bank.usable().value().value()
                * bank.at(HouseBank.MILD).lasts(current).value());
    }
}
