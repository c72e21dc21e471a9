package bayfolio.check.sense;

import static bayfolio.check.sense.ElectricRelations.between;
import static bayfolio.check.sense.Relation.error;
import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.measure.Quantity;
import bayfolio.model.Appliance;
import bayfolio.model.Coach;
import bayfolio.model.Connection;
import bayfolio.model.Device;
import bayfolio.model.Engine;
import bayfolio.model.Gas;
import bayfolio.model.Hire;
import bayfolio.model.Region;
import bayfolio.model.Size;
import bayfolio.model.States;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Tank.Contents;
import bayfolio.model.Unit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Facts of fuel and gas that must agree. */
final class FuelRelations {
    private static final Pattern NOT = Pattern.compile("\\b(?:no|not|never|kein|keine?n?|pas de)\\s+\\p{L}+");
    private static final Pattern DIESEL = Pattern.compile("\\bdiesel\\b|\\bb7\\b|\\bb10\\b|\\bxtl\\b");
    private static final Set<String> GAS_VALVES =
            Set.of("lp-main-valve", "gas-cylinder-valve", "gas-isolation-tap", "gas-safety-reset");

    private static final Pattern GASOLINE =
            Pattern.compile("\\bgasoline\\b|\\bunleaded\\b|\\bpetrol\\b|\\be5\\b|\\be10\\b|\\boctane\\b|\\bbenzin\\b");
    private static final Pattern PRESSURE = Pattern.compile("([0-9]+(?:\\.[0-9]+)?) ?(mbar|in(?:ch(?:es)?)?)\\b");

    static final List<Relation<?, ?>> ALL = List.of(
            error(
                    "label-of-another-fuel",
                    Pairs.within(Engine.SHAPE, Engine.FUEL_LABEL, Engine.FUEL),
                    (label, fuel) -> fits(label, fuel),
                    "the flap says {1} and the engine burns {2}: one of them is wrong, and a renter would fill in the wrong fuel",
                    "Read the label at the filler and the papers of the coach."),
            error(
                    "filler-of-another-fuel",
                    Pairs.records(Connection.SHAPE, Connection.WHAT, Engine.SHAPE, Engine.FUEL)
                            .where((filler, engine) -> filler.roles().contains("fuel-filler")),
                    (filler, engine) -> fits(
                                    filler.facts().get(Connection.WHAT),
                                    engine.facts().get(Engine.FUEL))
                            && fits(
                                    filler.facts().find(Connection.LABEL).orElse(""),
                                    engine.facts().get(Engine.FUEL))
                            && fits(filler.name(), engine.facts().get(Engine.FUEL)),
                    "{about} names another fuel than the engine burns: a renter would fill in the wrong one",
                    "Read the label at the filler and the papers of the coach."),
            error(
                    "exhaust-fluid-without-diesel",
                    Pairs.records(Tank.SHAPE, Tank.CONTENTS, Engine.SHAPE, Engine.FUEL)
                            .where((tank, engine) -> tank.contents() == Contents.EXHAUST_FLUID),
                    (tank, engine) -> engine.facts().get(Engine.FUEL) == Engine.Fuel.DIESEL,
                    "{about} holds exhaust fluid, which an engine that burns gasoline does not take",
                    "Only diesel engines take it."),
            error(
                    "more-exhaust-fluid-than-its-tank-holds",
                    Pairs.records(Engine.SHAPE, Engine.EXHAUST_FLUID_FILL, Tank.SHAPE, Tank.CAPACITY)
                            .where((engine, tank) -> tank.contents() == Contents.EXHAUST_FLUID),
                    (engine, tank) ->
                            engine.facts().get(Engine.EXHAUST_FLUID_FILL).value()
                                    <= tank.facts().get(Tank.CAPACITY).value(),
                    "more exhaust fluid is to be filled in than its tank holds",
                    "Read the plate of the tank."),
            error(
                    "gas-tank-filled-to-the-brim",
                    Pairs.onCoach(Tank.SHAPE, Tank.USABLE)
                            .where((tank, coach) -> tank.contents() == Contents.LP_GAS && kind(coach, Gas.Kind.TANK)),
                    (tank, coach) -> tank.facts().get(Tank.USABLE).value() <= 0.805,
                    "{about} is a fixed tank for gas, which is filled to 80 % at most",
                    "Say 80 %, or what its stop allows."),
            error(
                    "gas-in-a-cylinder",
                    Pairs.onCoach(Tank.SHAPE, Tank.EACH).where((tank, coach) -> tank.contents() == Contents.LP_GAS),
                    (tank, coach) -> between(
                            tank.facts().get(Tank.EACH).value()
                                    / tank.facts().get(Tank.CAPACITY).value(),
                            0.45,
                            0.6),
                    "{about} holds another weight of gas than its volume takes",
                    "A liter of liquid gas weighs about half a kilogram; read the figures stamped on the collar."),
            warning(
                    "weight-of-a-full-cylinder",
                    Pairs.own(Tank.SHAPE, Tank.FULL_WEIGHT)
                            .where((weight, tank) -> tank.facts().has(Tank.EACH)),
                    (weight, tank) ->
                            between(weight.value() / tank.facts().get(Tank.EACH).value(), 1.35, 3.1),
                    "{about} weighs {1} when full, which does not go with the gas in it",
                    "Tare and gas are stamped on the collar."),
            warning(
                    "weight-of-a-full-cassette",
                    Pairs.own(Tank.SHAPE, Tank.FULL_WEIGHT)
                            .where((weight, tank) -> tank.contents() == Contents.CASSETTE),
                    (weight, tank) -> between(
                            weight.value() - tank.facts().get(Tank.CAPACITY).value(), 0.5, 9),
                    "{about} weighs {1} when full, which does not go with what it holds",
                    "A liter weighs a kilogram; the empty cassette a few more."),
            error(
                    "gas-pressure-of-another-region",
                    Pairs.onCoach(Gas.SHAPE, Gas.REGULATOR),
                    (gas, coach) -> pressure(
                            gas.facts().get(Gas.REGULATOR), coach.unit().region()),
                    "the regulator is said to give a pressure that appliances of this region do not take",
                    "Read its plate: 11 inches of water in North America, 30 mbar in Europe (28, 37 or 50 in some countries)."),
            error(
                    "gas-to-what-burns-none",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Appliance.SHAPE)
                            .where((valve, appliance) -> valve.holdsOneOf(GAS_VALVES)
                                    && appliance.facts().has(Appliance.ENERGY)),
                    (valve, appliance) ->
                            appliance.facts().all(Appliance.ENERGY).contains(Appliance.Energy.GAS),
                    "{about} lets gas through, and {2}, which it is said to feed, does not run on gas",
                    "Name what goes out when it is shut."),
            error(
                    "gas-open-against-shut",
                    Pairs.records(Switch.SHAPE, Switch.DRIVING, Gas.SHAPE, Gas.WHILE_DRIVING)
                            .where((valve, gas) -> valve.roles().contains("lp-main-valve")
                                    || valve.roles().contains("gas-cylinder-valve")),
                    (valve, gas) -> !(States.open(valve.facts().get(Switch.DRIVING))
                            && shutForTheRoad(gas.facts().get(Gas.WHILE_DRIVING))),
                    "{about} is said to be open on the road, and `gas.while-driving` says shut",
                    "Say on both what the owner wants."),
            error(
                    "less-heat-in-frost",
                    Pairs.own(Appliance.SHAPE, Appliance.GAS_HOURS_FROST)
                            .where((frost, heater) ->
                                    warmsByItself(heater) && heater.facts().has(Appliance.GAS_HOURS)),
                    (frost, heater) -> frost.value()
                            >= heater.facts().get(Appliance.GAS_HOURS).value(),
                    "{about} is said to burn {1} a day in frost, and longer in mild weather",
                    "Change the two about, if they were."),
            warning(
                    "furnace-against-size",
                    Pairs.records(Appliance.SHAPE, Appliance.GAS_INPUT, Size.SHAPE, Size.LENGTH)
                            .where((furnace, size) ->
                                    furnace.facts().get(Appliance.WHAT).is("furnace")),
                    (furnace, size) -> between(
                            furnace.facts().get(Appliance.GAS_INPUT).value()
                                    / size.facts().get(Size.LENGTH).value()
                                    / size.facts().get(Size.WIDTH).value(),
                            140,
                            650),
                    "{about} gives far more or far less heat than a coach of this size takes",
                    "Read its plate, in BTU/h or W."),
            warning(
                    "heat-up-against-input",
                    Pairs.own(Appliance.SHAPE, Appliance.HEAT_UP)
                            .where((time, heater) ->
                                    heater.facts().get(Appliance.WHAT).is("water-heater")
                                            && heater.facts().has(Appliance.CAPACITY)
                                            && heater.facts().has(Appliance.GAS_INPUT)),
                    (time, heater) -> between(
                            time.value()
                                    / (4186
                                            * heater.facts()
                                                    .get(Appliance.CAPACITY)
                                                    .value()
                                            * 42
                                            / (0.8
                                                    * heater.facts()
                                                            .get(Appliance.GAS_INPUT)
                                                            .value())),
                            0.5,
                            2.2),
                    "{about} is said to be hot after {1}, which its volume and its burner do not give",
                    "Measure it with a watch, or read its plate again."),
            error(
                    "heater-fails-in-the-coldest-night",
                    Pairs.records(Appliance.SHAPE, Appliance.LOWEST_OUTSIDE, Hire.SHAPE, Hire.LOWEST_NIGHT)
                            .where((heater, hire) -> warmsByItself(heater)),
                    (heater, hire) ->
                            heater.facts().get(Appliance.LOWEST_OUTSIDE).value()
                                    <= hire.facts().get(Hire.LOWEST_NIGHT).value(),
                    "{about} heats down to a temperature that the coldest night allowed goes below",
                    "Read its plate, or allow less frost."),
            warning(
                    "range-of-a-tank",
                    Pairs.records(Engine.SHAPE, Engine.CONSUMPTION, Tank.SHAPE, Tank.CAPACITY)
                            .where((engine, tank) -> tank.roles().contains("fuel")),
                    (engine, tank) -> between(
                            100
                                    * tank.facts().get(Tank.CAPACITY).value()
                                    * tank.facts()
                                            .find(Tank.USABLE)
                                            .map(Quantity::value)
                                            .orElse(0.9)
                                    / engine.facts().get(Engine.CONSUMPTION).value(),
                            350,
                            1900),
                    "the coach would go a range on one tank that is far too short or too long",
                    "Read the trip computer again, and the plate of the tank."),
            note(
                    "gas-on-the-road-without-crash-sensor",
                    Pairs.onCoach(Gas.SHAPE, Gas.CRASH_SENSOR)
                            .where((gas, coach) -> coach.unit().region() == Region.EUROPE),
                    (gas, coach) -> gas.facts().get(Gas.CRASH_SENSOR)
                            || gas.facts()
                                    .find(Gas.WHILE_DRIVING)
                                    .map(it -> !allowed(it))
                                    .orElse(true),
                    "gas is allowed on the road, and there is no crash sensor",
                    "UN R122 wants one for heating on the road; ask the workshop."));

    private FuelRelations() {}

    static boolean fits(String words, Engine.Fuel fuel) {
        String said = NOT.matcher(words.toLowerCase(Locale.ROOT)).replaceAll(" ");
        boolean diesel = DIESEL.matcher(said).find();
        boolean gasoline = GASOLINE.matcher(said).find();
        return switch (fuel) {
            case DIESEL -> diesel || !gasoline;
            case GASOLINE -> gasoline || !diesel;
            case ELECTRIC -> !diesel && !gasoline;
        };
    }

    private static boolean kind(Coach coach, Gas.Kind kind) {
        return coach.unit()
                .facts()
                .find(Unit.GAS)
                .flatMap(gas -> gas.facts().find(Gas.KIND))
                .equals(Optional.of(kind));
    }

    private static boolean pressure(String regulator, Region region) {
        Matcher figure = PRESSURE.matcher(regulator.toLowerCase(Locale.ROOT));
        if (!figure.find()) {
            return true;
        }
        double value = Double.parseDouble(figure.group(1));
        return switch (region) {
            case NORTH_AMERICA -> !figure.group(2).equals("mbar") && between(value, 10, 14);
            case EUROPE ->
                figure.group(2).equals("mbar")
                        && List.of(28.0, 30.0, 37.0, 50.0).contains(value);
            case OCEANIA -> true; // no table was found
        };
    }

    private static boolean shutForTheRoad(String whileDriving) {
        String said = whileDriving.toLowerCase(Locale.ROOT);
        return said.startsWith("not allowed") || said.startsWith("shut") && !said.contains("stay open");
    }

    private static boolean allowed(String whileDriving) {
        return whileDriving.toLowerCase(Locale.ROOT).startsWith("allowed");
    }

    /** Whether it heats rooms with heat that it makes, and does not fetch it from outside. */
    private static boolean warmsByItself(Appliance heater) {
        Device what = heater.facts().get(Appliance.WHAT);
        return what.heats() && !what.coolsRooms();
    }
}
