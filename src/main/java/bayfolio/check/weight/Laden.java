package bayfolio.check.weight;

import bayfolio.fact.Facts;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.Meters;
import bayfolio.model.People;
import bayfolio.model.Region;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.reckon.water.WaterTanks;
import bayfolio.reckon.water.WaterWeight;
import bayfolio.reckon.weight.Axles;
import bayfolio.reckon.weight.Person;
import bayfolio.reckon.weight.TankCenter;
import java.util.List;
import java.util.Optional;

/**
 * A coach as the regulation loads it, on top of a weighing: somebody on every seat with a belt, and
 * the fresh tanks full. Waste tanks stay as they were, since that water comes out of the fresh
 * tanks; fuel and gas stay as they were weighed.
 *
 * @param seats what those who were not on board when it was weighed add; empty where the weighing
 *     does not tell how many were
 * @param water what was missing in each fresh tank when it was weighed; empty where the weighing
 *     does not tell how full they were
 */
record Laden(Unit unit, Facts limits, Facts weighing, Optional<Kilograms> seats, List<Filled> water) {
    /** A gram. */
    private static final double HAIR = 0.001;

    /** What goes into a fresh tank. */
    record Filled(Tank tank, Kilograms weight) {}

    /** Nothing where the coach was not weighed. */
    static Optional<Laden> of(Unit unit) {
        return limits(unit)
                .flatMap(limits -> limits.find(Weights.AS_WEIGHED)
                        .map(Weighing::facts)
                        .filter(Facts::whole)
                        .map(weighing ->
                                new Laden(unit, limits, weighing, seats(unit, weighing), water(unit, weighing))));
    }

    static Optional<Facts> limits(Unit unit) {
        return unit.facts().find(Unit.WEIGHTS).map(Weights::facts).filter(Facts::whole);
    }

    static Optional<Integer> belts(Unit unit) {
        return unit.facts().find(Unit.PEOPLE).flatMap(people -> people.facts().find(People.BELTED_SEATS));
    }

    static Kilograms persons(int count, Region region) {
        return Person.weight(count, region);
    }

    /** A share of what all fresh tanks hold. */
    static Kilograms water(Unit unit, double share) {
        return new Kilograms(fresh(unit, share).stream()
                .mapToDouble(filled -> filled.weight().value())
                .sum());
    }

    private static Optional<Kilograms> seats(Unit unit, Facts weighing) {
        return weighing.find(Weighing.PEOPLE)
                .flatMap(on -> belts(unit).map(belts -> persons(Math.max(0, belts - on), unit.region())));
    }

    private static List<Filled> water(Unit unit, Facts weighing) {
        return weighing.find(Weighing.FRESH_WATER)
                .map(full -> fresh(unit, 1 - full.value()))
                .orElse(List.of());
    }

    private static List<Filled> fresh(Unit unit, double share) {
        return WaterTanks.fresh(unit).tanks().stream()
                .map(tank -> new Filled(
                        tank,
                        WaterWeight.of(new Liters(
                                share * tank.facts().get(Tank.CAPACITY).value()))))
                .toList();
    }

    Kilograms weighed() {
        return weighing.get(Weighing.TOTAL);
    }

    Kilograms waterWeight() {
        return new Kilograms(
                water.stream().mapToDouble(filled -> filled.weight().value()).sum());
    }

    Kilograms gross() {
        return seats.orElse(new Kilograms(0)).plus(waterWeight()).plus(weighed());
    }

    /**
     * What the water puts on the rear axle, by moments about the front axle; the rest is on the
     * front axle. Nothing where it is not known how far back a tank is.
     */
    Optional<Kilograms> waterOnRear() {
        Optional<Axles> axles = Axles.of(unit);
        if (axles.isEmpty()) {
            return Optional.empty();
        }
        Kilograms rear = new Kilograms(0);
        for (Filled filled : water) {
            Optional<Meters> middle = TankCenter.of(filled.tank(), unit);
            if (middle.isEmpty()) {
                return Optional.empty();
            }
            rear = rear.plus(axles.get().carried(filled.weight(), middle.get()).rear());
        }
        return Optional.of(rear);
    }

    /** Pounds are added up as kilograms, so what is exactly at a limit may lie a hair above it. */
    static boolean over(Kilograms weight, Kilograms limit) {
        return weight.value() > limit.value() + HAIR;
    }

    String print(Kilograms weight) {
        return weight.in(unit.region().first());
    }
}
