package bayfolio.check.sense;

import static bayfolio.check.sense.ElectricRelations.between;
import static bayfolio.check.sense.Relation.error;
import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.measure.Kilopascals;
import bayfolio.measure.NotAQuantityException;
import bayfolio.model.Access;
import bayfolio.model.Appliance;
import bayfolio.model.Coach;
import bayfolio.model.Connection;
import bayfolio.model.Device;
import bayfolio.model.Gauge;
import bayfolio.model.Hire;
import bayfolio.model.Item;
import bayfolio.model.Side;
import bayfolio.model.Spot;
import bayfolio.model.States;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Tank.Contents;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Water;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Facts of water, waste and what fills and empties them, that must agree. */
final class WaterRelations {
    private static final Set<Contents> WASTE = EnumSet.of(Contents.GRAY, Contents.BLACK, Contents.CASSETTE);

    /** What is filled or emptied by the holder of a role. */
    private static final Map<String, Set<Contents>> BY_ROLE = Map.ofEntries(
            Map.entry("fresh-fill-port", EnumSet.of(Contents.FRESH)),
            Map.entry("city-water-inlet", EnumSet.of(Contents.FRESH)),
            Map.entry("fuel-filler", EnumSet.of(Contents.GASOLINE, Contents.DIESEL)),
            Map.entry("def-filler", EnumSet.of(Contents.EXHAUST_FLUID)),
            Map.entry("lp-fill-port", EnumSet.of(Contents.LP_GAS)),
            Map.entry("tank-flush-inlet", EnumSet.of(Contents.BLACK)),
            Map.entry("black-dump-valve", EnumSet.of(Contents.BLACK)),
            Map.entry("gray-dump-valve", EnumSet.of(Contents.GRAY)),
            Map.entry("gray-drain-tap", EnumSet.of(Contents.GRAY)),
            Map.entry("fresh-drain-valve", EnumSet.of(Contents.FRESH)),
            Map.entry("lp-main-valve", EnumSet.of(Contents.LP_GAS)),
            Map.entry("gas-cylinder-valve", EnumSet.of(Contents.LP_GAS)),
            Map.entry("fuel-gauge", EnumSet.of(Contents.GASOLINE, Contents.DIESEL, Contents.EXHAUST_FLUID)),
            Map.entry("lp-gauge", EnumSet.of(Contents.LP_GAS)),
            Map.entry("tank-gauge", EnumSet.of(Contents.FRESH, Contents.GRAY, Contents.BLACK, Contents.CASSETTE)));

    private static final Set<Contents> WATERS = EnumSet.of(Contents.FRESH, Contents.GRAY, Contents.BLACK);
    private static final Pattern HOT_OR_COLD = Pattern.compile("(?i)\\b(?:hot|cold)\\b");
    private static final Set<Contents> FUELS = EnumSet.of(Contents.GASOLINE, Contents.DIESEL, Contents.LP_GAS);
    private static final Set<Contents> HEATABLE =
            EnumSet.of(Contents.FRESH, Contents.GRAY, Contents.BLACK, Contents.CASSETTE, Contents.EXHAUST_FLUID);

    private static final Set<String> CLEAN = Set.of("drinking-hose", "pressure-regulator", "water-filter");
    private static final Set<String> DIRTY =
            Set.of("sewer-hose", "rinse-hose", "disposable-gloves", "toilet-fluid", "toilet-cassette");
    private static final Set<String> DRINKING = Set.of("city-water-inlet", "fresh-fill-port");
    private static final Set<String> SEWAGE = Set.of("sewer-outlet", "macerator-outlet", "tank-flush-inlet");

    private static final Pattern PRESSURE = Pattern.compile("(?i)\\b[0-9]+(?:\\.[0-9]+)? ?(?:psi|bar)\\b");
    /** Common practice, no published source. */
    private static final double LEAST_INLET = kilopascals("39 psi");

    private static final double MOST_INLET = kilopascals("61 psi");

    private static final Set<String> FUEL = Set.of("fuel-filler", "def-filler");

    private static final Set<String> OF_WATER =
            Set.of("low-point-drain", "fresh-drain-valve", "frost-valve", "water-heater-bypass", "gray-drain-tap");

    static final List<Relation<?, ?>> ALL = List.of(
            note(
                    "drain-of-something-dry",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Appliance.SHAPE)
                            .where((it, appliance) -> it.holdsOneOf(OF_WATER)),
                    (it, appliance) -> !appliance.facts().get(Appliance.WHAT).dry(),
                    "{about} lets water out or past, and {2} holds none",
                    "Look what runs dry when it is turned."),
            note(
                    "steps-of-no-gauge",
                    records -> records.of(Tank.SHAPE)
                            .filter(tank -> tank.facts().has(Tank.GAUGE_STEPS))
                            .map(tank -> Pairs.Pair.of(
                                    tank,
                                    tank.facts().at(Tank.GAUGE_STEPS),
                                    records.coach().unit())),
                    (tank, unit) -> unit.draft()
                            || unit.things()
                                    .anyMatch(it -> it instanceof Gauge gauge
                                            && gauge.facts().all(Gauge.OF).contains(tank.id())),
                    "the steps in which {about} is shown are told, and no gauge is said to be `of` it",
                    "Name it under `of` of its gauge, or leave the steps out."),
            note(
                    "second-way-or-not",
                    Pairs.onCoach(Water.SHAPE, Water.GRAVITY_CAP).given(Records::described),
                    (water, coach) ->
                            water.facts().get(Water.GRAVITY_CAP) == coach.unit().holds("fresh-fill-port"),
                    "`gravity-cap` does not go with whether a connection holds the role `fresh-fill-port`",
                    "Describe the cap, or mend the answer."),
            error(
                    "opening-of-another-tank",
                    Pairs.toOne(Connection.SHAPE, Connection.TANK, Tank.SHAPE),
                    WaterRelations::rolesFit,
                    "{about} leads into {2}, which its role does not go with",
                    "Name the tank that it really fills or empties."),
            error(
                    "valve-of-another-tank",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Tank.SHAPE),
                    WaterRelations::rolesFit,
                    "{about} is said to serve {2}, which its role does not go with",
                    "Name what it really opens."),
            error(
                    "gauge-of-another-tank",
                    Pairs.toEach(Gauge.SHAPE, Gauge.OF, Tank.SHAPE),
                    WaterRelations::rolesFit,
                    "{about} is said to show {2}, which its role does not go with",
                    "Name what it really shows."),
            error(
                    "tank-drains-elsewhere",
                    Pairs.toEach(Tank.SHAPE, Tank.DRAINS, Connection.SHAPE),
                    (tank, outlet) -> drainsRightly(tank.contents(), outlet.roles()),
                    "{about} is said to drain into {2}, which is for other water",
                    "Fresh water never drains into a sewer outlet, and a toilet tank nowhere else."),
            warning(
                    "valve-apart-from-outlet",
                    valvesAndOutlets(),
                    (valve, outlet) -> near(valve, outlet),
                    "{about} is on another side than {2}, or far from it",
                    "Look where both are; valve and outlet of one tank are mostly in one place."),
            warning(
                    "waste-against-fresh",
                    Pairs.onCoach(Unit.SHAPE, Unit.TANKS)
                            .where((unit, coach) ->
                                    liters(coach, Set.of(Contents.FRESH)) > 0 && liters(coach, WASTE) > 0),
                    (unit, coach) -> between(liters(coach, WASTE) / liters(coach, Set.of(Contents.FRESH)), 0.5, 2.6),
                    "the tanks for waste hold far more or far less than the one for fresh water",
                    "Read the plates of the tanks again."),
            warning(
                    "clean-thing-in-the-dirty-bag",
                    Pairs.own(Item.SHAPE, Item.BAG),
                    (bag, item) -> bag == Item.Bag.CLEAN
                            ? item.roles().stream().noneMatch(DIRTY::contains)
                            : item.roles().stream().noneMatch(CLEAN::contains),
                    "{about} is said to go into the {1} bag",
                    "What touches drinking water goes into the clean bag, what touches waste into the dirty one."),
            error(
                    "dirty-on-clean",
                    Pairs.toEach(Item.SHAPE, Item.GOES_ON, Connection.SHAPE),
                    WaterRelations::safely,
                    "{about} is said to go onto {2}: germs would get into the drinking water",
                    "Name the connection that it really fits."),
            error(
                    "dirty-on-clean",
                    Pairs.toEach(Connection.SHAPE, Connection.FITS, Item.SHAPE),
                    (connection, item) ->
                            item.facts().all(Item.GOES_ON).contains(connection.id()) || safely(item, connection),
                    "{about} is said to take {2}: germs would get into the drinking water",
                    "Name what really fits there."),
            error(
                    "clean-beside-dirty",
                    sharedPlace(),
                    (item, other) -> !(clean(item) && dirty(other)),
                    "{about} lies in one place with {2}: germs would get into the drinking water",
                    "Stow it with other clean things."),
            warning(
                    "tank-of-which-there-are-several",
                    Pairs.within(Tank.SHAPE, Tank.COUNT, Tank.CONTENTS),
                    (count, contents) -> count == 1 || contents == Contents.LP_GAS || contents == Contents.CASSETTE,
                    "{about} is said to be there {1} times",
                    "Only cylinders and cassettes are alike; describe each other tank by itself."),
            warning(
                    "shower-against-tank",
                    Pairs.records(Water.SHAPE, Water.SHOWER_PER_MINUTE, Tank.SHAPE, Tank.CAPACITY)
                            .where((water, tank) -> tank.contents() == Contents.FRESH),
                    (water, tank) -> between(
                            tank.facts().get(Tank.CAPACITY).value()
                                    / water.facts().get(Water.SHOWER_PER_MINUTE).value(),
                            4,
                            90),
                    "at this flow the shower empties the fresh tank far too soon or hardly at all",
                    "Measure it with a bucket and a watch."),
            warning(
                    "pressure-at-the-inlet",
                    Pairs.own(Connection.SHAPE, Connection.LABEL)
                            .where((label, inlet) -> inlet.roles().contains("city-water-inlet")),
                    (label, inlet) -> PRESSURE.matcher(label)
                            .results()
                            .allMatch(it -> between(kilopascals(it.group()), LEAST_INLET, MOST_INLET)),
                    "the label of {about} says {1}, and pipes of coaches are made for 40 to 60 psi (2.8 to 4.1 bar)",
                    "Read the label again."),
            note(
                    "flush-with-the-valve-shut",
                    Pairs.own(Water.SHAPE, Water.FLUSH_VALVE),
                    (valve, water) -> valve != Water.FlushValve.SHUT,
                    "the black tank is said to be flushed with its valve shut: water would fill it until it bursts",
                    "Read the words beside the inlet; if it is so, say under `accept` what keeps it from that."),
            note(
                    "drain-of-one-pipe-only",
                    onlyDrain().given(records -> records.coach().unit().idsRead(Switch.SHAPE.name())),
                    (drain, unit) -> !HOT_OR_COLD
                            .matcher(drain.id() + " " + drain.name())
                            .find(),
                    "{about} drains the one pipe, and nothing drains the other",
                    "Hot and cold pipes have a drain each; describe the other, too."),
            note(
                    "heated-or-not",
                    Pairs.own(Tank.SHAPE, Tank.HEATED).where((heated, tank) -> WATERS.contains(tank.contents())),
                    (heated, tank) -> heated || !insideOf(tank),
                    "`heated` of {about} is {1}, and it is inside, where it is as warm as the rooms",
                    "Say `yes`, or under `accept` why it is not."),
            note(
                    "heated-by-nothing",
                    Pairs.onCoach(Tank.SHAPE, Tank.HEATED)
                            .where((tank, coach) ->
                                    !coach.unit().draft() && tank.facts().get(Tank.HEATED)),
                    (tank, coach) -> insideOf(tank) || HEATABLE.contains(tank.contents()) && heats(coach),
                    "{about} is said to be heated, and nothing on the coach heats a tank",
                    "Describe what heats it, or say `no`."),
            note(
                    "left-out-of-the-heat",
                    Pairs.onCoach(Tank.SHAPE, Tank.HEATED)
                            .where((tank, coach) ->
                                    !tank.facts().get(Tank.HEATED) && HEATABLE.contains(tank.contents())),
                    (tank, coach) -> !coach.unit().holds("tank-heater-switch")
                            && !coach.unit()
                                    .facts()
                                    .find(Unit.HIRE)
                                    .flatMap(hire -> hire.facts().find(Hire.WINTER))
                                    .orElse(false),
                    "{about} is said not to be heated, on a coach that heats its tanks or is hired out in winter",
                    "Look whether a mat or a warm duct reaches it; if not, say under `accept` how it is kept from frost."),
            note(
                    "fuel-in-the-rooms",
                    Pairs.onCoach(Tank.SHAPE, Tank.SHAPE.key("side").orElseThrow())
                            .where((tank, coach) -> FUELS.contains(tank.contents())),
                    (tank, coach) -> !insideOf(tank),
                    "{about} is said to be inside, where no fuel is",
                    "Look where it is: mostly under the floor."),
            warning(
                    "tank-on-a-side",
                    Pairs.onCoach(Tank.SHAPE, Tank.SHAPE.key("side").orElseThrow())
                            .where((tank, coach) -> WATERS.contains(tank.contents())),
                    (tank, coach) -> insideOf(tank)
                            || tank.spot()
                                    .flatMap(Spot::side)
                                    .filter(side -> side == Side.UNDERFLOOR)
                                    .isPresent(),
                    "{about} is said to be on one side of the coach; such tanks are inside or under the floor",
                    "Say where the tank itself is; its filler and its outlet have sides of their own."),
            error(
                    "waste-valve-open-on-the-road",
                    Pairs.own(Switch.SHAPE, Switch.DRIVING).where((state, valve) -> dumps(valve)),
                    (state, valve) -> !States.open(state),
                    "{about} is said to be {1} on the road",
                    "Waste must not run out on the road; say `shut`."),
            error(
                    "waste-valve-open-at-pickup",
                    Pairs.own(Switch.SHAPE, Switch.AT_PICKUP).where((state, valve) -> dumps(valve)),
                    (state, valve) -> !States.open(state),
                    "{about} is said to be {1} at pickup",
                    "A renter fills in water before looking at valves; say `shut`."));

    private WaterRelations() {}

    private static double kilopascals(String figure) {
        try {
            return Kilopascals.SCALE.parse(figure.toLowerCase(Locale.ROOT)).value();
        } catch (NotAQuantityException e) {
            throw new IllegalArgumentException(figure, e);
        }
    }

    private static Pairs<Switch, Unit> onlyDrain() {
        return records -> {
            // One of which something could not be read is another one all the same.
            List<Switch> drains = records.coach().unit().switches().stream()
                    .filter(it -> it.roles().contains("low-point-drain"))
                    .toList();
            return drains.size() == 1
                    ? Stream.of(Pairs.Pair.of(
                            drains.get(0), drains.get(0).at(), records.coach().unit()))
                    : Stream.of();
        };
    }

    private static boolean insideOf(Tank tank) {
        return tank.spot()
                .flatMap(Spot::side)
                .filter(side -> side == Side.INSIDE)
                .isPresent();
    }

    private static boolean heats(Coach coach) {
        return coach.unit().holds("tank-heater-switch")
                || coach.unit().appliances().stream()
                        .flatMap(it -> it.facts().find(Appliance.WHAT).stream())
                        .anyMatch(Device::warmsTanks);
    }

    private static boolean rolesFit(Thing thing, Tank tank) {
        return thing.roles().stream()
                .allMatch(role -> Optional.ofNullable(BY_ROLE.get(role))
                        .map(contents -> contents.contains(tank.contents()))
                        .orElse(true));
    }

    private static boolean drainsRightly(Contents contents, List<String> roles) {
        boolean sewage = roles.contains("sewer-outlet") || roles.contains("macerator-outlet");
        return switch (contents) {
            case FRESH -> !sewage;
            case BLACK -> sewage;
            default -> true;
        };
    }

    private static Pairs<Switch, Connection> valvesAndOutlets() {
        return records -> records.of(Switch.SHAPE)
                .filter(WaterRelations::dumps)
                .flatMap(valve -> valve.facts().all(Switch.FEEDS).stream()
                        .flatMap(id -> records.named(Tank.SHAPE, id).stream())
                        .flatMap(tank -> tank.facts().all(Tank.DRAINS).stream())
                        .flatMap(id -> records.named(Connection.SHAPE, id).stream())
                        .map(outlet -> Pairs.Pair.of(valve, valve.at(), outlet)));
    }

    private static boolean near(Thing one, Thing other) {
        Optional<Spot> here = one.spot();
        Optional<Spot> there = other.spot();
        boolean side = here.flatMap(Spot::side)
                .flatMap(it -> there.flatMap(Spot::side).map(it::equals))
                .orElse(true);
        boolean distance = here.flatMap(Spot::fromFront)
                .flatMap(from -> there.flatMap(Spot::fromFront).map(to -> Math.abs(from.value() - to.value()) <= 3))
                .orElse(true);
        boolean inside =
                here.flatMap(Spot::side).filter(it -> it == Side.INSIDE).isPresent();
        return inside || side && distance;
    }

    private static double liters(Coach coach, Set<Contents> contents) {
        return coach.unit().tanks().stream()
                .filter(tank -> contents.contains(tank.contents()))
                .mapToDouble(tank -> tank.facts().get(Tank.CAPACITY).value()
                        * tank.facts().find(Tank.COUNT).orElse(1))
                .sum();
    }

    /** Things in one small place, which is not a bay that holds all sorts: a tube, a tray, a box. */
    private static Pairs<Item, Item> sharedPlace() {
        return records -> records.of(Item.SHAPE)
                .filter(WaterRelations::clean)
                .flatMap(item -> place(item).stream()
                        .filter(place -> holdsOnlyWaste(records, place, item))
                        .flatMap(place -> records.of(Item.SHAPE)
                                .filter(other -> other != item
                                        && dirty(other)
                                        && place(other).equals(Optional.of(place)))
                                .limit(1))
                        .map(other -> Pairs.Pair.of(item, item.at(), other)));
    }

    private static boolean holdsOnlyWaste(Records records, String place, Item but) {
        return records.of(Item.SHAPE)
                .filter(it -> it != but && place(it).equals(Optional.of(place)))
                .allMatch(WaterRelations::dirty);
    }

    private static Optional<String> place(Item item) {
        return item.spot().flatMap(Spot::in);
    }

    private static boolean safely(Item item, Connection connection) {
        return !(dirty(item) && connection.holdsOneOf(DRINKING)
                || clean(item) && (connection.holdsOneOf(SEWAGE) || connection.holdsOneOf(FUEL)));
    }

    private static boolean dirty(Item item) {
        return item.facts().find(Item.BAG).filter(bag -> bag == Item.Bag.DIRTY).isPresent() || item.holdsOneOf(DIRTY);
    }

    private static boolean clean(Item item) {
        return item.facts().find(Item.BAG).filter(bag -> bag == Item.Bag.CLEAN).isPresent() || item.holdsOneOf(CLEAN);
    }

    private static boolean dumps(Switch valve) {
        return valve.holdsOneOf(Set.of("black-dump-valve", "gray-dump-valve"))
                && valve.facts()
                        .find(Switch.ACCESS)
                        .filter(access -> access != Access.STAFF)
                        .isPresent();
    }
}
