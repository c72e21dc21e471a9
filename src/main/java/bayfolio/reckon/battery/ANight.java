package bayfolio.reckon.battery;

import bayfolio.measure.Celsius;
import bayfolio.measure.Seconds;
import bayfolio.measure.Watts;
import bayfolio.model.Coach;
import bayfolio.model.Inverter;
import bayfolio.model.Unit;
import bayfolio.reckon.Missing;
import bayfolio.reckon.power.Draw;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether the house batteries last a usual night without hook-up. */
public record ANight(Coach coach, Night night) {
    public static final Celsius FREEZING = new Celsius(0);
    public static final Celsius HARD_FROST = new Celsius(-10);

    public static final List<Celsius> TEMPERATURES = List.of(HouseBank.MILD, FREEZING, HARD_FROST);

    public static Optional<ANight> of(Coach coach) {
        return Night.of(coach).map(night -> new ANight(coach, night));
    }

    public static List<Missing> lacking(Coach coach) {
        return Night.lacking(coach);
    }

    /** When the limit is reached; empty where it is not in the night. */
    public Optional<Seconds> until(Discharge discharge) {
        return discharge.until(night.bank().usable().value());
    }

    public boolean lasts(Celsius temperature) {
        return until(night.at(temperature)).isEmpty();
    }

    /** The load without which the charge lasts: of what can be left out, what takes most; never the heater. */
    public Optional<HouseLoad> leaveOut(Celsius temperature) {
        return sorted().stream()
                .filter(load -> !load.alwaysOn() && !load.heats())
                .findFirst()
                .filter(load -> until(night.without(load).at(temperature)).isEmpty());
    }

    /** What takes most first. */
    public List<HouseLoad> sorted() {
        return night.loads().stream()
                .sorted(Comparator.comparingDouble(
                                (HouseLoad load) -> load.run().drawn().value())
                        .reversed())
                .toList();
    }

    /** Air conditioners that the inverter has the power for, whether it is wired to them or not. */
    public List<Draw> airConditioners() {
        Optional<Watts> rating = coach.unit()
                .facts()
                .find(Unit.INVERTER)
                .flatMap(inverter -> inverter.facts().find(Inverter.RATING));
        return Draw.all(coach.unit())
                .filter(draw -> draw.load().roles().contains(Draw.AIR_CONDITIONER))
                .filter(draw -> draw.watts().value() > 0)
                .filter(draw ->
                        night.loads().stream().noneMatch(load -> load.load().equals(draw.load())))
                .filter(draw ->
                        rating.filter(limit -> !Draw.over(draw.watts(), limit)).isPresent())
                .toList();
    }

    /** How long one would run alone. */
    public Seconds alone(Draw airConditioner) {
        Inverting inverter = night.inverter();
        return night.alone(inverter.draws(airConditioner.watts()).plus(inverter.idles()));
    }
}
