package bayfolio.reckon;

import bayfolio.measure.Liters;
import bayfolio.measure.LitersPer100Kilometers;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Share;
import bayfolio.model.Coach;
import bayfolio.model.Engine;
import bayfolio.model.Generator;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How far a tank of fuel goes. */
public final class DrivingRange {
    /** What is a whole ten may lie a hair below it. */
    private static final double HAIR = 1e-6;

    private static final String ASKED = "How far does a tank of fuel go?";

    private final Coach coach;
    private final MeasureSystem first;
    private final LitersPer100Kilometers consumption;
    private final List<FuelTank> tanks;

    private DrivingRange(Coach coach, LitersPer100Kilometers consumption, List<FuelTank> tanks) {
        this.coach = coach;
        this.first = coach.unit().region().first();
        this.consumption = consumption;
        this.tanks = tanks;
    }

    public static Reckoned of(Coach coach) {
        List<String> lacking = lacking(coach);
        return consumption(coach)
                .filter(it -> lacking.isEmpty())
                .map(it -> new DrivingRange(coach, it, tanks(coach)).reckoning())
                .orElseGet(() -> new Reckoned.Lacking(Question.RANGE, ASKED, lacking));
    }

    private static Optional<LitersPer100Kilometers> consumption(Coach coach) {
        return coach.unit().facts().find(Unit.ENGINE).flatMap(it -> it.facts().find(Engine.CONSUMPTION));
    }

    private static List<FuelTank> tanks(Coach coach) {
        return coach.unit()
                .facts()
                .find(Unit.ENGINE)
                .flatMap(it -> it.facts().find(Engine.FUEL))
                .map(DrivingRange::contents)
                .map(fuel -> FuelTank.all(coach, fuel))
                .orElse(List.of());
    }

    static List<String> lacking(Coach coach) {
        if (!coach.unit().facts().has(Unit.ENGINE)) {
            return List.of();
        }
        List<String> lacking = new ArrayList<>();
        if (consumption(coach).isEmpty()) {
            lacking.add("fuel consumption of the engine");
        }
        if (tanks(coach).stream().mapToDouble(tank -> tank.capacity().value()).sum() <= 0) {
            lacking.add("capacity of the fuel tank");
        }
        return lacking;
    }

    /** How far so much fuel goes. */
    static Meters distance(Liters fuel, LitersPer100Kilometers consumption) {
        return new Meters(Math.max(0, fuel.value()) / consumption.value() * 100_000);
    }

    private static Tank.Contents contents(Engine.Fuel fuel) {
        return switch (fuel) {
            case GASOLINE -> Tank.Contents.GASOLINE;
            case DIESEL -> Tank.Contents.DIESEL;
        };
    }

    private Reckoned reckoning() {
        Share reserve = reserve();
        String level = Rounding.NEAREST.print(reserve);
        Meters empty = distance(usable(), consumption);
        Meters above = distance(aboveReserve(), consumption);
        Meters below = distance(usable().minus(aboveReserve()), consumption);
        return new Reckoned.Reckoning(
                Question.RANGE,
                ASKED,
                names() + ", full: " + print(above) + " until " + level + " is left. Fill up then.",
                List.of(new Grid(
                        "",
                        List.of("Fuel", "Amount", "Goes"),
                        List.of(
                                List.of("from full until " + level + " is left", fuel(aboveReserve()), print(above)),
                                List.of("the last " + level, fuel(usable().minus(aboveReserve())), print(below)),
                                List.of("full to empty", fuel(usable()), print(empty))))),
                inputs(),
                "Distance = fuel / fuel consumption.",
                List.of(
                        "Usable: " + fuel(usable()) + ". Above " + level + ": " + fuel(aboveReserve()) + ".",
                        "Full to empty: " + fuel(usable()) + " at " + consumption.both(first) + " = " + print(empty)
                                + ".",
                        "Until " + level + " is left: " + fuel(aboveReserve()) + " at " + consumption.both(first)
                                + " = " + print(above) + "."),
                assumed(),
                "Arithmetic. To plan with a reserve of a quarter is common practice, no source.",
                "Hills, head wind, speed and load make it shorter. The gauge is no exact measure.");
    }

    private String names() {
        return tanks.stream().map(FuelTank::name).collect(Collectors.joining(" and "));
    }

    private boolean shared() {
        return coach.unit()
                .generator()
                .flatMap(generator -> generator.facts().find(Generator.FUEL))
                .map(Generator.Fuel::name)
                .filter(tanks.get(0).tank().contents().name()::equals)
                .isPresent();
    }

    private Optional<Share> pickUp() {
        return coach.unit()
                .generator()
                .filter(generator -> shared())
                .flatMap(generator -> generator.facts().find(Generator.PICK_UP));
    }

    private Share reserve() {
        return pickUp().orElse(PickUp.USUAL);
    }

    private Liters usable() {
        return new Liters(tanks.stream()
                .mapToDouble(tank -> tank.capacity().value() * tank.usable().value())
                .sum());
    }

    /** Never more than what is usable. */
    private Liters aboveReserve() {
        return new Liters(tanks.stream()
                .mapToDouble(tank -> Math.min(
                        tank.capacity().value() * tank.usable().value(),
                        new PickUp(tank.capacity(), reserve())
                                .above(tank.capacity())
                                .value()))
                .sum());
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (FuelTank tank : tanks) {
            inputs.add(
                    Input.described(tank.name() + ", capacity", tank.capacity().both(first)));
            String share = Rounding.NEAREST.print(tank.usable());
            inputs.add(
                    tank.usableStated()
                            ? Input.described(tank.name() + ", share that can be used", share)
                            : Input.usual(
                                    tank.name() + ", share that can be used", share, "common practice, no source"));
        }
        inputs.add(Input.described("Fuel consumption", consumption.both(first)));
        String share = Rounding.NEAREST.print(reserve());
        inputs.add(
                pickUp().isPresent()
                        ? Input.described("Reserve: the level at which the generator stops", share)
                        : Input.usual("Reserve", share, "common practice, no source"));
        return inputs;
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("The tank is full at the start. The road is neither steep nor windy.");
        if (shared()) {
            assumed.add("The generator is off. It burns the same fuel, so with it you get less far.");
        }
        assumed.add("What cannot be used stays at the bottom of the tank.");
        return assumed;
    }

    private String fuel(Liters fuel) {
        return Rounding.NEAREST.print(fuel, first);
    }

    /** To ten of each, down: fuel consumption is not known to a mile. */
    private String print(Meters distance) {
        String us = tens(distance.miles()) + " mi";
        String metric = tens(distance.value() / 1000) + " km";
        return first == MeasureSystem.US ? us + " (" + metric + ")" : metric + " (" + us + ")";
    }

    private static String tens(double distance) {
        return Rounding.DOWN.print(10 * Math.floor(distance / 10 + HAIR), 0);
    }
}
