package bayfolio.reckon.fuel;

import bayfolio.measure.Liters;
import bayfolio.measure.LitersPerHour;
import bayfolio.measure.Meters;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.model.Coach;
import bayfolio.model.Generator;
import bayfolio.model.Region;
import bayfolio.model.Tank;
import bayfolio.reckon.Endurance;
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.battery.ChargingFuel;
import bayfolio.reckon.gas.GasStore;
import bayfolio.reckon.power.LegRating;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How long the generator runs, what it gives at altitude, and what an hour costs. */
public record GeneratorHours(Coach coach, Generator generator) {
    private static final double FOOT = 0.3048;

    /** What it draws from: what it can burn of a full one. */
    public sealed interface Source {
        String name();

        Liters full();

        record OfGas(GasStore store) implements Source {
            @Override
            public String name() {
                return store.tank().name();
            }

            @Override
            public Liters full() {
                return store.liquid();
            }
        }

        /** @param level below which it does not reach */
        record OfFuel(FuelTank tank, Share level) implements Source {
            @Override
            public String name() {
                return tank.name();
            }

            @Override
            public Liters full() {
                Liters capacity = tank.capacity().value();
                return new PickUp(capacity, level).above(capacity);
            }
        }
    }

    /** How hard it works. */
    public enum Load {
        HALF,
        THREE_QUARTERS,
        FULL
    }

    /** What it burns at a load. */
    public record Burning(Load load, LitersPerHour burned) {}

    public static Optional<GeneratorHours> of(Coach coach) {
        return lacking(coach).isEmpty()
                ? coach.unit().generator().map(generator -> new GeneratorHours(coach, generator))
                : Optional.empty();
    }

    /** Nothing where there is no generator. */
    public static List<Missing> lacking(Coach coach) {
        return coach.unit().generator().map(GeneratorHours::lacking).orElse(List.of());
    }

    private static List<Missing> lacking(Generator generator) {
        List<Missing> lacking = new ArrayList<>();
        if (generator.facts().find(Generator.POWER).map(Watts::value).orElse(0.0) <= 0) {
            lacking.add(new Missing("generator-power"));
        }
        if (generator.facts().find(Generator.VOLTS).map(Volts::value).orElse(0.0) <= 0) {
            lacking.add(new Missing("generator-volts"));
        }
        if (!generator.facts().has(Generator.LEGS)) {
            lacking.add(new Missing("generator-legs"));
        }
        if (!generator.facts().has(Generator.FUEL)) {
            lacking.add(new Missing("generator-fuel"));
        }
        return lacking;
    }

    public Watts power() {
        return generator.facts().get(Generator.POWER);
    }

    public LegRating legs() {
        return new LegRating(
                generator.facts().get(Generator.VOLTS), generator.facts().get(Generator.LEGS));
    }

    public Generator.Fuel fuel() {
        return generator.facts().get(Generator.FUEL);
    }

    public boolean gas() {
        return fuel() == Generator.Fuel.LP_GAS;
    }

    /** How full the tank is when it stops by itself. */
    public Given<Share> level() {
        return Given.of(generator.facts(), Generator.PICK_UP, PickUp.USUAL);
    }

    public List<FuelTank> tanks() {
        return FuelTank.all(coach, fuel() == Generator.Fuel.DIESEL ? Tank.Contents.DIESEL : Tank.Contents.GASOLINE);
    }

    public List<Source> sources() {
        Stream<Source> all = gas()
                ? GasStore.all(coach).stream().map(Source.OfGas::new)
                : tanks().stream().map(tank -> new Source.OfFuel(tank, level().value()));
        return all.filter(source -> source.full().value() > 0).toList();
    }

    /** From half load on, as far as is known. */
    public List<Burning> burning() {
        Optional<LitersPerHour> half =
                generator.facts().find(Generator.BURN_HALF).filter(burned -> burned.value() > 0);
        Optional<LitersPerHour> full =
                generator.facts().find(Generator.BURN_FULL).filter(burned -> burned.value() > 0);
        List<Burning> rows = new ArrayList<>();
        half.ifPresent(burned -> rows.add(new Burning(Load.HALF, burned)));
        if (half.isPresent() && full.isPresent()) {
            Watts most = power();
            rows.add(new Burning(
                    Load.THREE_QUARTERS,
                    new ChargingFuel(most, half.get(), full.get()).at(new Watts(0.75 * most.value()))));
        }
        full.ifPresent(burned -> rows.add(new Burning(Load.FULL, burned)));
        return rows;
    }

    public Optional<FuelPrice> price() {
        return FuelPrice.of(coach.fleet(), fuel());
    }

    /** All that it can burn. */
    public Liters reached() {
        return sources().stream().map(Source::full).reduce(new Liters(0), Liters::plus);
    }

    public Seconds lasts(Burning row) {
        return Endurance.of(reached(), row.burned());
    }

    /** Heights that are told, from sea level on. */
    public List<Meters> heights() {
        return (coach.unit().region() == Region.NORTH_AMERICA
                        ? Stream.of(0.0, 2500 * FOOT, 5000 * FOOT, 7500 * FOOT)
                        : Stream.of(0.0, 750.0, 1500.0, 2250.0))
                .map(Meters::new)
                .toList();
    }

    public Given<Share> altitudeLoss() {
        return Given.of(generator.facts(), Generator.ALTITUDE_LOSS, Derating.USUAL_LOSS);
    }

    public Given<Meters> altitudeStep() {
        Given<Meters> step = Given.of(generator.facts(), Generator.ALTITUDE_STEP, Derating.USUAL_STEP);
        return step.value().value() > 0 ? step : Given.usual(Derating.USUAL_STEP);
    }

    public Given<Meters> altitudeFrom() {
        return Given.of(generator.facts(), Generator.ALTITUDE_FROM, Derating.USUAL_FROM);
    }

    /** What it still gives at that height. */
    public Watts at(Meters height) {
        return new Derating(
                        altitudeLoss().value(),
                        altitudeStep().value(),
                        altitudeFrom().value())
                .at(height, power());
    }
}
