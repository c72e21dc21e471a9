package bayfolio.reckon;

import bayfolio.measure.Amps;
import bayfolio.measure.Celsius;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.model.Coach;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A night on the house batteries, without hook-up, generator and sun.
 *
 * @param loads those that run, each for its hours
 */
record Night(HouseBank bank, Inverting inverter, List<HouseLoad> loads) {
    /** From evening to morning; taken, not measured. */
    static final Seconds LENGTH = new Seconds(12 * 3600);

    Night {
        loads = List.copyOf(loads);
    }

    /** The usual one; empty where a fact is missing for it. */
    static Optional<Night> of(Coach coach) {
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

    /** What is missing for one, in words. */
    static List<String> lacking(Coach coach) {
        Optional<HouseBank> bank = HouseBank.of(coach);
        if (of(coach).isPresent()) {
            return List.of();
        }
        if (bank.isEmpty() || coach.unit().loads().isEmpty()) {
            return HouseBank.lacking(coach);
        }
        List<String> unknown = HouseLoad.unknown(coach.unit(), bank.get())
                .map(load -> "what " + HouseLoad.named(load.name()) + " draws")
                .toList();
        return unknown.isEmpty()
                ? List.of("which loads run in a night without hook-up, and for how many hours")
                : unknown;
    }

    Night without(HouseLoad load) {
        return new Night(
                bank, inverter, loads.stream().filter(it -> !it.equals(load)).toList());
    }

    /**
     * While anything hangs on it that is always on, the inverter stays on; else as long as its loads run one after the
     * other.
     */
    Seconds inverterOn() {
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

    Discharge.Run idling() {
        return new Discharge.Run(inverter.idles(), inverterOn());
    }

    List<Discharge.Run> runs() {
        return Stream.concat(loads.stream().map(HouseLoad::run), Stream.of(idling()))
                .toList();
    }

    /** At freezing and below, heaters run for their hours of frost. */
    Discharge at(Celsius temperature) {
        Night night = frost(temperature) ? inFrost() : this;
        return Discharge.together(bank.at(temperature), night.runs());
    }

    static boolean frost(Celsius temperature) {
        return temperature.value() <= 0;
    }

    private Night inFrost() {
        return new Night(
                bank,
                inverter,
                loads.stream().map(load -> load.running(load.frosty())).toList());
    }

    List<HouseLoad> heaters() {
        return loads.stream().filter(HouseLoad::heats).toList();
    }

    /** One load alone until the limit, with the inverter where it needs that. */
    Seconds alone(HouseLoad load) {
        return alone(load.inverted() ? load.current().plus(inverter.idles()) : load.current());
    }

    Seconds alone(Amps current) {
        return new Seconds(
                bank.usable().value() * bank.at(HouseBank.MILD).lasts(current).value());
    }

    /** In minutes, hours or days, whichever suits: {@code 15 min}, {@code 5.0 h}, {@code 3.1 days}. */
    static String time(Rounding toward, Seconds time) {
        if (time.value() < 3600) {
            return toward.print(time.value() / 60, 0) + " min";
        }
        return time.value() < 48 * 3600 ? toward.hours(time) : toward.days(time);
    }

    /** To the hundredth below one ampere, for that runs all night. */
    static String current(Rounding toward, Amps current) {
        return current.value() < 1 ? toward.print(current.value(), 2) + " A" : toward.print(current);
    }
}
