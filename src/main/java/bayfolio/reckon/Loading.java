package bayfolio.reckon;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Quantity;
import bayfolio.measure.Rounding;
import bayfolio.model.Coach;
import bayfolio.model.Region;
import bayfolio.model.Size;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a coach may still carry, and which limit comes first. */
public final class Loading {
    private static final String ASKED = "How much can you load?";

    /** Less than this share of a limit left is said so; taken for planning. */
    private static final double CLOSE = 0.03;

    /** How full the fresh tanks are. */
    record Level(String name, double share) {}

    static final List<Level> WATER =
            List.of(new Level("empty", 0), new Level("a third", 1 / 3.0), new Level("full", 1));

    private final PayloadLimits carrying;
    private final Region region;
    private final MeasureSystem system;
    private final boolean hasWater;

    private Loading(PayloadLimits carrying) {
        this.carrying = carrying;
        this.region = carrying.unit().region();
        this.system = region.first();
        this.hasWater = !WaterTanks.fresh(carrying.unit()).none();
    }

    public static Reckoned of(Coach coach) {
        return PayloadLimits.of(coach)
                .<Reckoned>map(carrying -> new Loading(carrying).reckoning())
                .orElseGet(() -> new Reckoned.Lacking(Question.LOADING, ASKED, PayloadLimits.lacking(coach.unit())));
    }

    private boolean european() {
        return region == Region.EUROPE;
    }

    private Reckoned reckoning() {
        return new Reckoned.Reckoning(
                Question.LOADING,
                ASKED,
                answer(),
                List.of(left(), states()),
                inputs(),
                "Left = limit − coach − people − water. On the rear axle, a load counts (its distance behind the front axle)"
                        + " / wheelbase; the rest is on the front axle.",
                steps(),
                assumed(),
                european()
                        ? "Regulation (EU) 1230/2012 Article 2 for the masses; (EU) 2021/535 Annex XIII for the least payload, as a maker quotes it. Axles: statics."
                        : "49 CFR 571.110 and 571.120 for the capacity; 49 CFR 567.4(g)(3) for 150 lb a seat. Axles: statics.",
                "Real people and bags differ from the figures here. Only a scale shows what your coach weighs.");
    }

    private String answer() {
        int few = Math.min(2, carrying.belts());
        String answer = promise(few);
        return carrying.belts() > few ? answer + " " + promise(carrying.belts()) : answer;
    }

    private String promise(int people) {
        PayloadLimits.First first = carrying.first(people, hasWater ? 1 : 0);
        String with = "With " + WaterDays.people(people) + (hasWater ? " and full water" : "");
        return first.exceeded()
                ? with + " it is " + over(first.more()) + " too heavy: "
                        + first.limit().name() + "."
                : with + ": " + less(first.more()) + " for your things.";
    }

    private List<Level> levels() {
        return hasWater ? WATER : WATER.subList(0, 1);
    }

    private Grid left() {
        List<String> head = new ArrayList<>(List.of("People"));
        levels().forEach(level -> head.add(hasWater ? "Left, fresh water " + level.name() : "Left"));
        return new Grid(
                "",
                head,
                IntStream.rangeClosed(1, carrying.belts())
                        .mapToObj(people -> Stream.concat(
                                        Stream.of(String.valueOf(people)),
                                        levels().stream().map(level -> told(carrying.first(people, level.share()))))
                                .toList())
                        .toList());
    }

    private String told(PayloadLimits.First first) {
        return first.exceeded()
                ? over(first.more()) + " too much: " + first.limit().name()
                : less(first.more()) + ", " + first.limit().name() + " first";
    }

    /** What it weighs in a state of its water. */
    private record State(String name, Kilograms all, Axles.Carried axles, boolean stated) {
        State(String name, Kilograms all, Axles.Carried axles) {
            this(name, all, axles, false);
        }
    }

    private Grid states() {
        boolean axles = carrying.axles().isPresent();
        List<String> head = axles
                ? List.of("Every seat taken, no bags", "All", "Front axle", "Rear axle", "So")
                : List.of("Every seat taken, no bags", "All", "So");
        List<List<String>> rows = new ArrayList<>();
        for (State state : allStates()) {
            List<String> row = new ArrayList<>(List.of(state.name(), shown(state, state.all(), Weighing.TOTAL)));
            if (axles) {
                row.add(shown(state, state.axles().front(), Weighing.FRONT));
                row.add(shown(state, state.axles().rear(), Weighing.REAR));
            }
            row.add(verdict(state));
            rows.add(row);
        }
        return new Grid("Where the water is", head, rows);
    }

    private String shown(State state, Kilograms weight, Key<Kilograms> key) {
        return state.stated() ? carrying.weighing().written(key).orElseThrow() : more(weight);
    }

    private List<State> allStates() {
        List<State> states = new ArrayList<>();
        states.add(new State(
                "as weighed",
                carrying.weighing().get(Weighing.TOTAL),
                carrying.axles().isPresent()
                        ? new Axles.Carried(
                                carrying.weighing().get(Weighing.FRONT),
                                carrying.weighing().get(Weighing.REAR))
                        : Axles.Carried.NOTHING,
                true));
        WaterTanks fresh = WaterTanks.fresh(carrying.unit());
        WaterTanks gray = WaterTanks.gray(carrying.unit());
        WaterTanks toilet = WaterTanks.toilet(carrying.unit());
        double water = fresh.capacity().value();
        double inGray = Math.min(water, gray.capacity().value());
        double inToilet = Math.min(water - inGray, toilet.capacity().value());
        double stays = water - inGray - inToilet;
        if (hasWater) {
            states.add(state("fresh water full", water, 0, 0));
            if (inGray + inToilet > 0) {
                states.add(state("the same water, used", stays, inGray, inToilet));
            }
        }
        states.add(state(
                "every tank full",
                water,
                gray.capacity().value(),
                toilet.capacity().value()));
        return states;
    }

    /** Liters in fresh, gray and toilet tanks, with somebody on each seat. */
    private State state(String name, double inFresh, double inGray, double inToilet) {
        WaterTanks fresh = WaterTanks.fresh(carrying.unit());
        WaterTanks gray = WaterTanks.gray(carrying.unit());
        WaterTanks toilet = WaterTanks.toilet(carrying.unit());
        Kilograms all = carrying.bare()
                .plus(carrying.heater())
                .plus(Person.weight(carrying.belts(), region))
                .plus(WaterWeight.of(new Liters(inFresh + inGray + inToilet)));
        return new State(
                name,
                all,
                carrying.onAxles()
                        .plus(PayloadLimits.seated(carrying.belts(), region))
                        .plus(carrying.carried(fresh, share(inFresh, fresh)))
                        .plus(carrying.carried(gray, share(inGray, gray)))
                        .plus(carrying.carried(toilet, share(inToilet, toilet))));
    }

    private static double share(double liters, WaterTanks tanks) {
        double most = tanks.capacity().value();
        return most > 0 ? liters / most : 0;
    }

    /** The limit of which the least is left. */
    private String verdict(State state) {
        record Left(String name, Kilograms limit, Kilograms left) {}
        List<Left> all = new ArrayList<>();
        Kilograms gross = carrying.weights().get(Weights.GROSS);
        all.add(new Left("gross limit", gross, gross.minus(state.all())));
        if (carrying.axles().isPresent()) {
            Kilograms front = carrying.weights().get(Weights.FRONT_AXLE);
            Kilograms rear = carrying.weights().get(Weights.REAR_AXLE);
            all.add(new Left("front axle", front, front.minus(state.axles().front())));
            all.add(new Left("rear axle", rear, rear.minus(state.axles().rear())));
        }
        Left least = all.stream()
                .min(Comparator.comparingDouble(each -> each.left().value()))
                .orElseThrow();
        return WeightLimit.exceeded(least.left())
                ? over(least.left()) + " too much: " + least.name()
                : (least.left().value() < CLOSE * least.limit().value() ? "close: " : "") + less(least.left())
                        + " left on the " + least.name();
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        described("gross limit", carrying.weights(), Weights.GROSS, inputs);
        described("limit of the front axle", carrying.weights(), Weights.FRONT_AXLE, inputs);
        described("limit of the rear axle", carrying.weights(), Weights.REAR_AXLE, inputs);
        described("payload of the label", carrying.weights(), Weights.PAYLOAD, inputs);
        described("weight on the scale", carrying.weighing(), Weighing.TOTAL, inputs);
        described("of it on the front axle", carrying.weighing(), Weighing.FRONT, inputs);
        described("of it on the rear axle", carrying.weighing(), Weighing.REAR, inputs);
        inputs.add(Input.described(
                "people on board then", String.valueOf(carrying.weighing().get(Weighing.PEOPLE))));
        described("fresh water then", carrying.weighing(), Weighing.FRESH_WATER, inputs);
        inputs.add(Input.described("seats with belts", String.valueOf(carrying.belts())));
        if (hasWater) {
            WaterTanks.fresh(carrying.unit())
                    .tanks()
                    .forEach(tank -> inputs.add(Input.described(tank.name(), WaterTanks.stated(tank))));
            inputs.add(Input.usual(
                    "weight of one liter of water", "1 kg", "the label of 49 CFR 571.120; true within 1 %"));
        }
        inputs.add(Input.usual(
                "weight of one person",
                Rounding.NEAREST.print(Person.weight(region), system),
                european()
                        ? "Regulation (EU) 1230/2012 for the driver; for passengers an owner's manual"
                        : "49 CFR 567.4(g)(3)"));
        carrying.axles().ifPresent(axles -> {
            Facts size = carrying.unit().size().facts();
            described("wheelbase", size, Size.WHEELBASE, inputs);
            described("front overhang", size, Size.FRONT_OVERHANG, inputs);
        });
        return inputs;
    }

    private static <Q extends Quantity> void described(String name, Facts facts, Key<Q> key, List<Input> inputs) {
        facts.written(key).ifPresent(written -> inputs.add(Input.described(name, written)));
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        Kilograms capacity = carrying.capacity();
        steps.add("Coach with nobody on board and no fresh water: " + bare() + ".");
        steps.add((european() ? "Payload beside the driver: " : "Capacity for people, water and things: ")
                + carrying.weights().written(Weights.GROSS).orElseThrow() + " − " + bare()
                + (european() ? " − " + more(Person.weight(region)) : "") + " = "
                + stated(carrying.weights(), Weights.PAYLOAD, capacity).orElseGet(() -> less(capacity)) + ".");
        int counted = european() ? carrying.belts() - 1 : carrying.belts();
        Kilograms least = carrying.weights().find(Weights.PAYLOAD).orElse(capacity);
        Kilograms seats = Person.weight(counted, region);
        steps.add("Somebody on each seat with a belt" + (european() ? ", beside the driver" : "") + ": " + counted
                + " × " + Rounding.NEAREST.print(Person.weight(region), system) + " = " + more(seats)
                + (WeightLimit.exceeded(least.minus(seats))
                        ? ", more than the payload of "
                        : ", within the payload of ")
                + carrying.weights().written(Weights.PAYLOAD).orElseGet(() -> less(capacity)) + ".");
        if (european()) {
            Kilograms rule = MinimumPayload.of(
                    carrying.belts(), carrying.unit().size().facts().get(Size.LENGTH));
            steps.add("Least payload by the rule: 10 × (seats + length in meters) = " + more(rule)
                    + (WeightLimit.exceeded(least.minus(rule)) ? "; less is stated." : "; more is stated."));
        }
        if (hasWater) {
            steps.add("Full fresh water weighs "
                    + more(WaterWeight.of(WaterTanks.fresh(carrying.unit()).capacity())) + ".");
        }
        carrying.limits()
                .forEach(limit -> steps.add("Left with every seat taken" + (hasWater ? " and full water" : "") + ", "
                        + limit.name() + ": "
                        + signed(
                                limit.left(carrying.belts(), Person.weight(region), hasWater ? 1 : 0, new Kilograms(0)))
                        + "."));
        return steps;
    }

    private String bare() {
        return stated(carrying.weighing(), Weighing.TOTAL, carrying.bare()).orElseGet(() -> more(carrying.bare()));
    }

    /** As the description puts it, where that is the same. */
    private static Optional<String> stated(Facts facts, Key<Kilograms> key, Kilograms same) {
        return facts.find(key)
                .filter(fact -> Math.abs(fact.value() - same.value()) < WeightLimit.HAIR)
                .flatMap(fact -> facts.written(key));
    }

    private String signed(Kilograms left) {
        return WeightLimit.exceeded(left) ? over(left) + " too much" : less(left);
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("Each person weighs " + Rounding.NEAREST.print(Person.weight(region), system)
                + ". Count more for heavier people, pets and child seats.");
        assumed.add("Fuel and gas are as they were on the scale.");
        if (PayloadLimits.inHeater(carrying.unit()).value() > 0) {
            assumed.add("Full of water: " + PayloadLimits.heaterNames(carrying.unit()) + ", "
                    + more(PayloadLimits.inHeater(carrying.unit())) + ".");
        }
        assumed.add("Waste tanks were empty on the scale. Nothing is towed.");
        if (carrying.axles().isPresent()) {
            assumed.add("Two people sit above the front axle, the others half-way between the axles.");
            assumed.add("Your things lie in the middle of the storage bays.");
            if (hasWater) {
                assumed.add("The water is still in the fresh tank. Used water shifts the load: see the second table.");
            }
        } else {
            assumed.add("The axles are not counted. Not known: " + String.join(", ", carrying.missing()) + ".");
        }
        return assumed;
    }

    /** A hair below zero is nothing. */
    private String less(Kilograms weight) {
        return Rounding.DOWN.print(new Kilograms(Math.max(0, weight.value())), system);
    }

    private String more(Kilograms weight) {
        return Rounding.UP.print(weight, system);
    }

    private String over(Kilograms left) {
        return Rounding.UP.print(new Kilograms(-left.value()), system);
    }
}
