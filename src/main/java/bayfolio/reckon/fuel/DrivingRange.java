package bayfolio.reckon.fuel;

import bayfolio.measure.Liters;
import bayfolio.measure.LitersPer100Kilometers;
import bayfolio.measure.Meters;
import bayfolio.measure.Share;
import bayfolio.model.Coach;
import bayfolio.model.Engine;
import bayfolio.model.Generator;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Published;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far a tank of fuel goes. */
public record DrivingRange(Coach coach, Given<LitersPer100Kilometers> consumption, List<FuelTank> tanks) {
    private static final Published<Share> RESERVE = FuelTank.TABLE.quantity("reserve", Share.SCALE);

    public DrivingRange {
        tanks = List.copyOf(tanks);
    }

    public static Optional<DrivingRange> of(Coach coach) {
        return lacking(coach).isEmpty()
                ? consumption(coach).map(it -> new DrivingRange(coach, it, tanks(coach)))
                : Optional.empty();
    }

    private static Optional<Given<LitersPer100Kilometers>> consumption(Coach coach) {
        return coach.unit()
                .facts()
                .find(Unit.ENGINE)
                .filter(it -> it.facts().has(Engine.CONSUMPTION))
                .map(it -> Given.stated(it.facts(), Engine.CONSUMPTION));
    }

    private static List<FuelTank> tanks(Coach coach) {
        return coach.unit()
                .facts()
                .find(Unit.ENGINE)
                .flatMap(it -> it.facts().find(Engine.FUEL))
                .flatMap(DrivingRange::contents)
                .map(fuel -> FuelTank.all(coach, fuel))
                .orElse(List.of());
    }

    /** Nothing where the coach has no engine that burns fuel. */
    public static List<Missing> lacking(Coach coach) {
        if (!coach.unit().facts().has(Unit.ENGINE) || electric(coach)) {
            return List.of();
        }
        List<Missing> lacking = new ArrayList<>();
        if (consumption(coach).isEmpty()) {
            lacking.add(new Missing("fuel-consumption"));
        }
        if (tanks(coach).stream()
                        .mapToDouble(tank -> tank.capacity().value().value())
                        .sum()
                <= 0) {
            lacking.add(new Missing("fuel-capacity"));
        }
        return lacking;
    }

    /** How far so much fuel goes. */
    public static Meters distance(Liters fuel, LitersPer100Kilometers consumption) {
        return new Meters(Math.max(0, fuel.value()) / consumption.value() * 100_000);
    }

    public Meters distance(Liters fuel) {
        return distance(fuel, consumption.value());
    }

    private static boolean electric(Coach coach) {
        return coach.unit()
                .facts()
                .find(Unit.ENGINE)
                .flatMap(it -> it.facts().find(Engine.FUEL))
                .filter(Engine.Fuel.ELECTRIC::equals)
                .isPresent();
    }

    private static Optional<Tank.Contents> contents(Engine.Fuel fuel) {
        return switch (fuel) {
            case GASOLINE -> Optional.of(Tank.Contents.GASOLINE);
            case DIESEL -> Optional.of(Tank.Contents.DIESEL);
            case ELECTRIC -> Optional.empty();
        };
    }

    /** Whether the generator burns of the same tank. */
    public boolean shared() {
        return coach.unit()
                .generator()
                .flatMap(generator -> generator.facts().find(Generator.FUEL))
                .map(Generator.Fuel::name)
                .filter(tanks.get(0).tank().contents().name()::equals)
                .isPresent();
    }

    /** What is left when it is time to fill up: where the generator stops, or what is usual. */
    public Given<Share> reserve() {
        return coach.unit()
                .generator()
                .filter(generator -> shared())
                .map(generator -> Given.of(generator.facts(), Generator.PICK_UP, RESERVE))
                .orElseGet(() -> Given.usual(RESERVE));
    }

    public Liters usable() {
        return new Liters(
                tanks.stream().mapToDouble(tank -> tank.gives().value()).sum());
    }

    /** Never more than what is usable. */
    public Liters aboveReserve() {
        Share reserve = reserve().value();
        return new Liters(tanks.stream()
                .mapToDouble(tank -> {
                    Liters full = tank.capacity().value();
                    return Math.min(
                            tank.gives().value(),
                            new PickUp(full, reserve).above(full).value());
                })
                .sum());
    }
}
