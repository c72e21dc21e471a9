package bayfolio.reckon.weight;

import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.model.Coach;
import bayfolio.model.Region;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.reckon.Missing;
import bayfolio.reckon.water.WaterTanks;
import bayfolio.reckon.water.WaterWeight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What a coach may still carry, and which limit comes first. */
public record Loading(PayloadLimits carrying) {
    /** Less than this share of a limit left is said so; taken for planning. */
    private static final double CLOSE = 0.03;

    /** How full the fresh tanks are. */
    public enum Level {
        EMPTY(0),
        THIRD(1 / 3.0),
        FULL(1);

        private final double share;

        Level(double share) {
            this.share = share;
        }

        public double share() {
            return share;
        }
    }

    /** Where the water is. */
    public enum Water {
        AS_WEIGHED,
        FRESH_FULL,
        USED,
        EVERY_TANK_FULL
    }

    /** What it weighs in a state of its water. */
    public record State(Water water, Kilograms all, Axles.Carried axles) {}

    /** The limit of which the least is left; below zero by how much it is exceeded. */
    public record Least(WeightLimit.Kind limit, Kilograms most, Kilograms left) {
        public boolean exceeded() {
            return WeightLimit.exceeded(left);
        }

        public boolean close() {
            return left.value() < CLOSE * most.value();
        }
    }

    public static Optional<Loading> of(Coach coach) {
        return PayloadLimits.of(coach).map(Loading::new);
    }

    public static List<Missing> lacking(Coach coach) {
        return PayloadLimits.lacking(coach.unit());
    }

    public Region region() {
        return carrying.unit().region();
    }

    public boolean hasWater() {
        return !WaterTanks.fresh(carrying.unit()).none();
    }

    public List<Level> levels() {
        return hasWater() ? List.of(Level.values()) : List.of(Level.EMPTY);
    }

    public List<State> states() {
        List<State> states = new ArrayList<>();
        states.add(new State(
                Water.AS_WEIGHED,
                carrying.weighing().get(Weighing.TOTAL),
                carrying.axles().isPresent()
                        ? new Axles.Carried(
                                carrying.weighing().get(Weighing.FRONT),
                                carrying.weighing().get(Weighing.REAR))
                        : Axles.Carried.NOTHING));
        WaterTanks gray = WaterTanks.gray(carrying.unit());
        WaterTanks toilet = WaterTanks.toilet(carrying.unit());
        double water = WaterTanks.fresh(carrying.unit()).capacity().value();
        double inGray = Math.min(water, gray.capacity().value());
        double inToilet = Math.min(water - inGray, toilet.capacity().value());
        if (hasWater()) {
            states.add(state(Water.FRESH_FULL, water, 0, 0));
            if (inGray + inToilet > 0) {
                states.add(state(Water.USED, water - inGray - inToilet, inGray, inToilet));
            }
        }
        states.add(state(
                Water.EVERY_TANK_FULL,
                water,
                gray.capacity().value(),
                toilet.capacity().value()));
        return states;
    }

    /** Liters in fresh, gray and toilet tanks, with somebody on each seat. */
    private State state(Water where, double inFresh, double inGray, double inToilet) {
        WaterTanks fresh = WaterTanks.fresh(carrying.unit());
        WaterTanks gray = WaterTanks.gray(carrying.unit());
        WaterTanks toilet = WaterTanks.toilet(carrying.unit());
        Kilograms all = carrying.bare()
                .plus(carrying.heater())
                .plus(Person.weight(carrying.belts(), region()))
                .plus(WaterWeight.of(new Liters(inFresh + inGray + inToilet)));
        return new State(
                where,
                all,
                carrying.onAxles()
                        .plus(PayloadLimits.seated(carrying.belts(), region()))
                        .plus(carrying.carried(fresh, share(inFresh, fresh)))
                        .plus(carrying.carried(gray, share(inGray, gray)))
                        .plus(carrying.carried(toilet, share(inToilet, toilet))));
    }

    private static double share(double liters, WaterTanks tanks) {
        double most = tanks.capacity().value();
        return most > 0 ? liters / most : 0;
    }

    public Least least(State state) {
        Kilograms gross = carrying.weights().get(Weights.GROSS);
        Stream<Least> all = Stream.of(new Least(WeightLimit.Kind.GROSS, gross, gross.minus(state.all())));
        if (carrying.axles().isPresent()) {
            Kilograms front = carrying.weights().get(Weights.FRONT_AXLE);
            Kilograms rear = carrying.weights().get(Weights.REAR_AXLE);
            all = Stream.concat(
                    all,
                    Stream.of(
                            new Least(
                                    WeightLimit.Kind.FRONT_AXLE,
                                    front,
                                    front.minus(state.axles().front())),
                            new Least(
                                    WeightLimit.Kind.REAR_AXLE,
                                    rear,
                                    rear.minus(state.axles().rear()))));
        }
        return all.min(Comparator.comparingDouble(each -> each.left().value())).orElseThrow();
    }

    /** Seats with belts, in Europe without the driver's, whose weight is in the coach's. */
    public int counted() {
        return region() == Region.EUROPE ? carrying.belts() - 1 : carrying.belts();
    }

    /** What the label promises, or what is worked out. */
    public Kilograms payload() {
        return carrying.weights().find(Weights.PAYLOAD).orElseGet(carrying::capacity);
    }
}
