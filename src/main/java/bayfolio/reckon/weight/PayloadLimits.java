package bayfolio.reckon.weight;

import bayfolio.fact.Facts;
import bayfolio.measure.Kilograms;
import bayfolio.measure.Liters;
import bayfolio.measure.Meters;
import bayfolio.measure.Share;
import bayfolio.model.Access;
import bayfolio.model.Appliance;
import bayfolio.model.Coach;
import bayfolio.model.Compartment;
import bayfolio.model.People;
import bayfolio.model.Region;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.reckon.Missing;
import bayfolio.reckon.water.WaterTanks;
import bayfolio.reckon.water.WaterWeight;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a coach can carry, from a weighing: its limits and what comes on each of them.
 *
 * @param bare what it weighs with nobody on board and no fresh water
 * @param heater what the water heater takes that was empty then
 * @param axles where they are; empty where one of their figures or places is missing
 * @param onAxles what they carry of the bare coach with its water heater full
 * @param limits the ones that are known
 * @param missing what the axles cannot be worked out without
 */
public record PayloadLimits(
        Unit unit,
        int belts,
        Facts weights,
        Facts weighing,
        Kilograms bare,
        Kilograms heater,
        Optional<Axles> axles,
        Axles.Carried onAxles,
        List<WeightLimit> limits,
        List<Missing> missing) {
    /** Between the axles, where seats in the house are taken to be. */
    private static final double HALF = 0.5;

    /** Which limit comes first, and what can still be stowed; less than zero is by how much it is exceeded. */
    public record First(WeightLimit limit, Kilograms more) {
        public boolean exceeded() {
            return WeightLimit.exceeded(more);
        }
    }

    /** What the description must say, in plain words; empty where it says so, or says nothing of weights at all. */
    public static List<Missing> lacking(Unit unit) {
        Optional<Facts> weights = unit.facts().find(Unit.WEIGHTS).map(it -> it.facts());
        Optional<Facts> weighing =
                weights.flatMap(it -> it.find(Weights.AS_WEIGHED)).map(it -> it.facts());
        if (weights.isEmpty()) {
            return List.of();
        }
        List<Missing> lacking = new ArrayList<>();
        need(weights.filter(it -> it.has(Weights.GROSS)), "gross-weight", lacking);
        need(weighing.filter(it -> it.has(Weighing.TOTAL)), "weighing", lacking);
        if (weighing.isPresent()) {
            need(weighing.filter(it -> it.has(Weighing.PEOPLE)), "weighing-people", lacking);
            need(weighing.filter(it -> it.has(Weighing.FRESH_WATER)), "weighing-fresh-water", lacking);
        }
        need(belts(unit), "belted-seats", lacking);
        return lacking;
    }

    private static void need(Optional<?> fact, String what, List<Missing> lacking) {
        if (fact.isEmpty()) {
            lacking.add(new Missing(what));
        }
    }

    private static Optional<Integer> belts(Unit unit) {
        return unit.facts().find(Unit.PEOPLE).flatMap(it -> it.facts().find(People.BELTED_SEATS));
    }

    /** Nothing where a fact is lacking. */
    public static Optional<PayloadLimits> of(Coach coach) {
        return coach.unit().facts().has(Unit.WEIGHTS) && lacking(coach.unit()).isEmpty()
                ? Optional.of(known(coach.unit()))
                : Optional.empty();
    }

    private static PayloadLimits known(Unit unit) {
        Facts weights = unit.facts().get(Unit.WEIGHTS).facts();
        Facts weighing = weights.get(Weights.AS_WEIGHED).facts();
        int belts = belts(unit).orElseThrow();
        Region region = unit.region();
        int people = weighing.get(Weighing.PEOPLE);
        double fresh = weighing.get(Weighing.FRESH_WATER).value();
        Kilograms water = WaterWeight.of(WaterTanks.fresh(unit).capacity());
        Kilograms bare = weighing.get(Weighing.TOTAL)
                .minus(Person.weight(people, region))
                .minus(new Kilograms(fresh * water.value()));
        List<WeightLimit> limits = new ArrayList<>();
        // The heater fills before any water stays in the tanks.
        boolean heaterFull = weighing.find(Weighing.HEATER_FULL).orElse(fresh > 0);
        Kilograms heater = heaterFull ? new Kilograms(0) : inHeater(unit);
        limits.add(new WeightLimit(
                WeightLimit.Kind.GROSS, weights.get(Weights.GROSS).minus(bare).minus(heater), 1, 1, water, 1));
        // A European payload begins with the driver on board.
        Kilograms driver = Person.weight(region == Region.EUROPE ? 1 : 0, region);
        weights.find(Weights.PAYLOAD)
                .ifPresent(payload -> limits.add(new WeightLimit(
                        WeightLimit.Kind.LABEL, payload.plus(driver).minus(inHeater(unit)), 1, 1, water, 1)));
        List<Missing> missing = missing(unit, weights, weighing);
        if (!missing.isEmpty()) {
            return new PayloadLimits(
                    unit,
                    belts,
                    weights,
                    weighing,
                    bare,
                    heater,
                    Optional.empty(),
                    Axles.Carried.NOTHING,
                    limits,
                    missing);
        }
        Axles axles = Axles.of(unit).orElseThrow();
        Axles.Carried onWater = carried(axles, WaterTanks.fresh(unit), unit);
        Axles.Carried on = new Axles.Carried(weighing.get(Weighing.FRONT), weighing.get(Weighing.REAR))
                .minus(seated(people, region))
                .minus(onWater.times(fresh))
                .plus(heaterFull ? Axles.Carried.NOTHING : ofHeater(axles, unit));
        double stowed = axles.rear(stowage(unit).orElseThrow());
        limits.add(new WeightLimit(
                WeightLimit.Kind.FRONT_AXLE,
                weights.get(Weights.FRONT_AXLE).minus(on.front()),
                1,
                HALF,
                onWater.front(),
                1 - stowed));
        limits.add(new WeightLimit(
                WeightLimit.Kind.REAR_AXLE,
                weights.get(Weights.REAR_AXLE).minus(on.rear()),
                0,
                HALF,
                onWater.rear(),
                stowed));
        return new PayloadLimits(unit, belts, weights, weighing, bare, heater, Optional.of(axles), on, limits, missing);
    }

    /** What holds drinking water, by whatever it is heated; the closed loop of a hydronic heater is full on the scale, too. */
    private static Stream<Appliance> heaters(Unit unit) {
        return unit.appliances().stream()
                .filter(it -> it.facts().get(Appliance.WHAT).holdsDrinkingWater()
                        && it.facts().has(Appliance.CAPACITY));
    }

    /** Names of the water heaters. */
    public static List<String> heaterNames(Unit unit) {
        return heaters(unit).map(Appliance::name).toList();
    }

    private static Kilograms weight(Appliance heater) {
        return WaterWeight.of(heater.facts().get(Appliance.CAPACITY));
    }

    /** Drinking water in the heater is cargo, as that in the tanks: 49 CFR 571.110 S9. */
    public static Kilograms inHeater(Unit unit) {
        return new Kilograms(
                heaters(unit).mapToDouble(heater -> weight(heater).value()).sum());
    }

    private static Axles.Carried ofHeater(Axles axles, Unit unit) {
        return heaters(unit)
                .map(heater -> axles.carried(
                        weight(heater), TankCenter.of(heater, unit).orElseThrow()))
                .reduce(Axles.Carried.NOTHING, Axles.Carried::plus);
    }

    private static List<Missing> missing(Unit unit, Facts weights, Facts weighing) {
        List<Missing> missing = new ArrayList<>();
        if (!weights.has(Weights.FRONT_AXLE) || !weights.has(Weights.REAR_AXLE)) {
            missing.add(new Missing("axle-limits"));
        }
        if (!weighing.has(Weighing.FRONT) || !weighing.has(Weighing.REAR)) {
            missing.add(new Missing("axle-weights"));
        }
        need(Axles.of(unit), "wheelbase", missing);
        need(stowage(unit), "storage-place", missing);
        for (WaterTanks tanks : List.of(WaterTanks.fresh(unit), WaterTanks.gray(unit), WaterTanks.toilet(unit))) {
            tanks.tanks().stream()
                    .filter(tank -> TankCenter.of(tank, unit).isEmpty())
                    .forEach(tank -> missing.add(new Missing("place", tank.name())));
        }
        heaters(unit)
                .filter(heater -> TankCenter.of(heater, unit).isEmpty())
                .forEach(heater -> missing.add(new Missing("place", heater.name())));
        return missing;
    }

    /** What people on so many seats put on the axles: two on the front axle, the others half-way between. */
    public static Axles.Carried seated(int people, Region region) {
        int front = Math.min(people, WeightLimit.FRONT_SEATS);
        double each = Person.weight(region).value();
        double house = each * (people - front);
        return new Axles.Carried(new Kilograms(each * front + HALF * house), new Kilograms(HALF * house));
    }

    private static Axles.Carried carried(Axles axles, WaterTanks tanks, Unit unit) {
        Axles.Carried sum = Axles.Carried.NOTHING;
        for (Tank tank : tanks.tanks()) {
            sum = sum.plus(axles.carried(
                    WaterWeight.of(new Liters(WaterTanks.capacity(tank))),
                    TankCenter.of(tank, unit).orElseThrow()));
        }
        return sum;
    }

    /** The middle of the storage bays; where none is called so, of all that a renter may open at any time. */
    private static Optional<Meters> stowage(Unit unit) {
        return middle(
                        unit.compartments().stream()
                                .filter(it -> it.roles().contains("storage-bay"))
                                .toList(),
                        unit)
                .or(() -> middle(
                        unit.compartments().stream()
                                .filter(it -> it.access() == Access.FREE)
                                .toList(),
                        unit));
    }

    private static Optional<Meters> middle(List<Compartment> compartments, Unit unit) {
        OptionalDouble middle = compartments.stream()
                .flatMap(each -> TankCenter.of(each, unit).stream())
                .mapToDouble(Meters::value)
                .average();
        return middle.isPresent() ? Optional.of(new Meters(middle.getAsDouble())) : Optional.empty();
    }

    /** A share of all tanks of a kind, on the axles; nothing there where the axles are not known. */
    public Axles.Carried carried(WaterTanks tanks, double share) {
        return axles.map(known -> carried(known, tanks, unit).times(share)).orElse(Axles.Carried.NOTHING);
    }

    /** The limit that is reached first; of exceeded ones, the one that is exceeded most. */
    public First first(int people, Kilograms each, double fresh, Kilograms stowed) {
        return limits.stream()
                .flatMap(limit -> limit.more(limit.left(people, each, fresh, stowed)).stream()
                        .map(more -> new First(limit, more)))
                .min(Comparator.comparingDouble(first -> first.more().value()))
                .orElseThrow();
    }

    /** With people as the regulation takes them, and nothing stowed. */
    public First first(int people, double fresh) {
        return first(people, Person.weight(unit.region()), fresh, new Kilograms(0));
    }

    public Share full() {
        return weighing.get(Weighing.FRESH_WATER);
    }

    /** Occupant and cargo capacity; in Europe beside the driver. */
    public Kilograms capacity() {
        Kilograms driver = Person.weight(unit.region() == Region.EUROPE ? 1 : 0, unit.region());
        return weights.get(Weights.GROSS).minus(bare).minus(driver);
    }
}
