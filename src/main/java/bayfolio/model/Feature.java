package bayfolio.model;

import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a coach has, as conditions of procedures may ask for it: a closed list, each derived from
 * facts of the description and never typed a second time.
 */
public enum Feature {
    SHORE_50A(unit -> shore(unit, 50)),
    SHORE_30A(unit -> shore(unit, 30)),
    HOOKUP_230V(unit -> unit.supplies().stream()
            .anyMatch(supply -> supply.source() == Supply.Source.SHORE
                    && supply.facts().get(Supply.VOLTS).value() > 200)),
    CORD_DETACHABLE(unit -> cord(unit, Cord.Kind.DETACHABLE)),
    CORD_FIXED(unit -> cord(unit, Cord.Kind.FIXED)),
    CORD_REEL_HAND(unit -> cord(unit, Cord.Kind.REEL_HAND)),
    CORD_REEL_POWERED(unit -> cord(unit, Cord.Kind.REEL_POWERED)),
    TRANSFER_AUTOMATIC(unit -> transfer(unit, Transfer.Kind.AUTOMATIC)),
    TRANSFER_MANUAL(unit -> transfer(unit, Transfer.Kind.MANUAL)),
    SURGE_PROTECTION(unit -> yes(unit, Unit.SURGE_PROTECTION)),
    LOAD_MANAGEMENT(unit -> yes(unit, Unit.LOAD_MANAGEMENT)),
    SMALL_SUPPLY_ADAPTER(unit -> holds(unit, "small-supply-adapter")),
    GENERATOR(unit -> unit.generator().isPresent()),
    GENERATOR_AUTOSTART(unit ->
            unit.generator().flatMap(it -> it.facts().find(Generator.AUTOSTART)).orElse(false)),
    GENERATOR_ON_LP(unit -> unit.generator()
            .flatMap(it -> it.facts().find(Generator.FUEL))
            .filter(Generator.Fuel.LP_GAS::equals)
            .isPresent()),
    INVERTER(unit -> unit.facts().has(Unit.INVERTER)),
    SOLAR(unit -> unit.facts().has(Unit.SOLAR)),
    HOUSE_LEAD_ACID(unit -> house(unit, false)),
    HOUSE_LITHIUM(unit -> house(unit, true)),
    BATTERY_BOOST(unit -> holds(unit, "battery-boost-switch")),
    BATTERY_SWITCH_RELAY(unit -> batterySwitch(unit, true)),
    BATTERY_SWITCH_MANUAL(unit -> batterySwitch(unit, false)),
    LP_TANK(unit -> gas(unit, Gas.Kind.TANK)),
    GAS_CYLINDERS(unit -> gas(unit, Gas.Kind.CYLINDERS)),
    GAS_CRASH_SENSOR(unit -> unit.facts()
            .find(Unit.GAS)
            .flatMap(gas -> gas.facts().find(Gas.CRASH_SENSOR))
            .orElse(false)),
    CITY_WATER(unit -> holds(unit, "city-water-inlet")),
    GRAVITY_FILL(unit -> holds(unit, "fresh-fill-port")),
    FILL_VALVE(unit -> holds(unit, "water-fill-valve")),
    WATER_HEATER_GAS(unit -> burns(unit, Appliance.What.WATER_HEATER, Appliance.Energy.GAS)),
    WATER_HEATER_ELECTRIC(unit -> burns(unit, Appliance.What.WATER_HEATER, Appliance.Energy.AC)),
    OUTSIDE_SHOWER(unit -> appliance(unit, Appliance.What.OUTSIDE_SHOWER)),
    WATER_FILTER_FITTED(unit -> appliance(unit, Appliance.What.WATER_FILTER)),
    FURNACE(unit -> appliance(unit, Appliance.What.FURNACE)),
    HYDRONIC(unit -> appliance(unit, Appliance.What.HYDRONIC_HEATER)),
    BLOWN_AIR_HEATER(unit -> appliance(unit, Appliance.What.BLOWN_AIR_HEATER)),
    COMBINED_HEATER(unit -> unit.appliances().stream()
            .anyMatch(it -> it.facts().get(Appliance.WHAT) == Appliance.What.BLOWN_AIR_HEATER
                    && it.facts().has(Appliance.CAPACITY))),
    HEATER_GAS(unit -> heats(unit, Appliance.Energy.GAS)),
    HEATER_DIESEL(unit -> heats(unit, Appliance.Energy.DIESEL)),
    HEATER_ELECTRIC(unit -> heats(unit, Appliance.Energy.AC)),
    FROST_PROTECTION_VALVE(unit -> holds(unit, "frost-valve")),
    ROOF_AC(unit -> appliance(unit, Appliance.What.AIR_CONDITIONER) || appliance(unit, Appliance.What.HEAT_PUMP)),
    SEVERAL_AIR_CONDITIONERS(unit -> unit.appliances().stream()
                    .map(it -> it.facts().get(Appliance.WHAT))
                    .filter(it -> it == Appliance.What.AIR_CONDITIONER || it == Appliance.What.HEAT_PUMP)
                    .count()
            > 1),
    HEAT_PUMP(unit -> appliance(unit, Appliance.What.HEAT_PUMP)),
    TANK_HEATERS(unit -> appliance(unit, Appliance.What.TANK_HEATER)),
    BLACK_TANK(unit -> tank(unit, Tank.Contents.BLACK)),
    CASSETTE_TOILET(unit -> tank(unit, Tank.Contents.CASSETTE)),
    GRAY_TANK_HOSE(unit -> tank(unit, Tank.Contents.GRAY) && holds(unit, "gray-dump-valve")),
    GRAY_DRAIN_FLOOR(unit -> holds(unit, "gray-drain-tap")),
    MACERATOR(unit -> appliance(unit, Appliance.What.MACERATOR)),
    TANK_FLUSH(unit -> holds(unit, "tank-flush-inlet")),
    FLUSH_VALVE_SHUT(unit -> unit.facts()
            .find(Unit.WATER)
            .flatMap(water -> water.facts().find(Water.FLUSH_VALVE))
            .filter(Water.FlushValve.SHUT::equals)
            .isPresent()),
    FRIDGE_TWO_WAY(unit -> appliance(unit, Appliance.What.FRIDGE_TWO_WAY)),
    FRIDGE_THREE_WAY(unit -> appliance(unit, Appliance.What.FRIDGE_THREE_WAY)),
    FRIDGE_RESIDENTIAL(unit -> appliance(unit, Appliance.What.FRIDGE_RESIDENTIAL)),
    FRIDGE_COMPRESSOR(unit -> appliance(unit, Appliance.What.FRIDGE_COMPRESSOR)),
    HOB_GAS(unit -> appliance(unit, Appliance.What.HOB_GAS)),
    HOB_INDUCTION(unit -> appliance(unit, Appliance.What.HOB_INDUCTION)),
    OVEN_GAS(unit -> appliance(unit, Appliance.What.OVEN_GAS)),
    MICROWAVE(unit -> appliance(unit, Appliance.What.MICROWAVE)),
    SLIDE_OUT(unit -> !unit.slides().isEmpty()),
    SLIDE_LOCKS(unit -> unit.slides().stream()
            .anyMatch(slide -> slide.facts().find(Slide.TRAVEL_LOCKS).orElse(false))),
    JACKS(unit -> unit.facts().has(Unit.JACKS)),
    LEVELING_RAMPS(unit -> holds(unit, "leveling-ramp")),
    AWNING_ELECTRIC(unit -> awning(unit, Awning.Kind.ELECTRIC)),
    AWNING_MANUAL(unit -> awning(unit, Awning.Kind.MANUAL)),
    STEP_ELECTRIC(unit -> unit.steps().stream().anyMatch(step -> step.facts().get(Step.KIND) == Step.Kind.ELECTRIC)),
    KEYLESS_ENTRY(unit -> holds(unit, "entry-keypad")),
    ANTENNA_RAISED(unit -> holds(unit, "antenna-control")),
    DROP_DOWN_BED(unit -> appliance(unit, Appliance.What.DROP_DOWN_BED)),
    SLIDING_TRAYS(unit -> !unit.trays().isEmpty()),
    DIESEL(unit -> fuel(unit, Engine.Fuel.DIESEL)),
    GASOLINE(unit -> fuel(unit, Engine.Fuel.GASOLINE)),
    DEF(unit -> tank(unit, Tank.Contents.EXHAUST_FLUID)),
    AIR_BRAKES(unit -> engine(unit, Engine.AIR_BRAKES)),
    EXHAUST_BRAKE(unit -> engine(unit, Engine.EXHAUST_BRAKE)),
    SECOND_FUEL_FILLER(unit ->
            unit.things().filter(thing -> thing.roles().contains("fuel-filler")).count() > 1),
    REAR_CAMERA(unit -> engine(unit, Engine.REAR_CAMERA)),
    DUAL_REAR_WHEELS(unit -> tires(unit, Tires.DUAL_REAR)),
    SPARE_WHEEL(unit -> tires(unit, Tires.SPARE)),
    HITCH(unit -> holds(unit, "tow-hitch")),
    HITCH_PIN_AND_CHAINS(unit -> hitch(unit, Connection.Coupling.PIN_AND_CHAINS)),
    HITCH_BALL_AND_CABLE(unit -> hitch(unit, Connection.Coupling.BALL_AND_CABLE)),
    AFTER_HOURS_PICKUP(unit -> hire(unit, Hire.AFTER_HOURS_PICKUP)),
    TOWING_ALLOWED(unit -> hire(unit, Hire.TOWING)),
    WINTER_HIRE(unit -> hire(unit, Hire.WINTER)),
    WATER_IN_FROST(unit -> unit.facts()
            .find(Unit.HIRE)
            .flatMap(hire -> hire.facts().find(Hire.LOWEST_NIGHT))
            .filter(night -> night.value() < 0)
            .isPresent()),
    BURNS_FUEL(unit -> unit.generator().isPresent()
            || unit.facts().has(Unit.GAS)
            || unit.appliances().stream().anyMatch(Feature::burns));

    private static final Map<String, Feature> BY_WORD = Stream.of(values())
            .collect(Collectors.toMap(Feature::word, Function.identity(), (a, b) -> a, LinkedHashMap::new));

    private final Predicate<Unit> derivation;

    Feature(Predicate<Unit> derivation) {
        this.derivation = derivation;
    }

    /** As conditions write it: {@code gray-tank-hose}. */
    public String word() {
        return Type.word(this);
    }

    public boolean of(Unit unit) {
        return derivation.test(unit);
    }

    /** Where it stands in a description that it is so: the last fact that this was derived from. */
    public Optional<Place> at(Unit unit) {
        List<Place> asked = new ArrayList<>();
        Unit watched = new Unit(unit.facts()
                .watched((record, key) -> record.ifRead(key).ifPresent(fact -> asked.add(fact.at()))));
        // What is asked for while a description is put together says nothing of the feature.
        asked.clear();
        return of(watched) && !asked.isEmpty() ? Optional.of(asked.get(asked.size() - 1)) : Optional.empty();
    }

    public static Optional<Feature> named(String word) {
        return Optional.ofNullable(BY_WORD.get(word));
    }

    public static List<String> words() {
        return List.copyOf(BY_WORD.keySet());
    }

    private static boolean shore(Unit unit, int amps) {
        return unit.supplies().stream()
                .filter(supply -> supply.source() == Supply.Source.SHORE)
                .anyMatch(supply -> supply.facts().get(Supply.VOLTS).value() < 200
                        && supply.facts().get(Supply.AMPS).value() == amps);
    }

    private static boolean cord(Unit unit, Cord.Kind kind) {
        return unit.facts()
                .find(Unit.CORD)
                .flatMap(cord -> cord.facts().find(Cord.KIND))
                .filter(kind::equals)
                .isPresent();
    }

    private static boolean transfer(Unit unit, Transfer.Kind kind) {
        return unit.facts()
                .find(Unit.TRANSFER)
                .flatMap(it -> it.facts().find(Transfer.KIND))
                .filter(kind::equals)
                .isPresent();
    }

    private static boolean gas(Unit unit, Gas.Kind kind) {
        return unit.facts()
                .find(Unit.GAS)
                .flatMap(gas -> gas.facts().find(Gas.KIND))
                .filter(kind::equals)
                .isPresent();
    }

    private static boolean house(Unit unit, boolean lithium) {
        return unit.banks().stream()
                .filter(bank -> bank.roles().contains("house-bank"))
                .anyMatch(bank -> (bank.facts().get(Bank.CHEMISTRY) == Bank.Chemistry.LITHIUM) == lithium);
    }

    private static boolean batterySwitch(Unit unit, boolean relay) {
        return unit.switches().stream()
                .filter(it -> it.roles().contains("house-battery-switch"))
                .anyMatch(it -> RELAY_MAKES.contains(it.make()) == relay);
    }

    /** Push buttons and rockers only steer a relay; the others break the line themselves. */
    private static final Set<Switch.Make> RELAY_MAKES = EnumSet.of(
            Switch.Make.MOMENTARY_BUTTON, Switch.Make.LATCHING_BUTTON, Switch.Make.ROCKER, Switch.Make.TOUCH_PANEL);

    private static boolean appliance(Unit unit, Appliance.What what) {
        return unit.appliances().stream().anyMatch(it -> it.facts().get(Appliance.WHAT) == what);
    }

    private static boolean burns(Appliance appliance) {
        List<Appliance.Energy> energy = appliance.facts().all(Appliance.ENERGY);
        return energy.contains(Appliance.Energy.GAS) || energy.contains(Appliance.Energy.DIESEL);
    }

    private static boolean burns(Unit unit, Appliance.What what, Appliance.Energy energy) {
        return unit.appliances().stream()
                .filter(it -> it.facts().get(Appliance.WHAT) == what)
                .anyMatch(it -> it.facts().all(Appliance.ENERGY).contains(energy));
    }

    /** Its holder is asked for its roles, so that whoever watches the facts learns by which it is so. */
    private static boolean holds(Unit unit, String role) {
        return unit.holds(role)
                && unit.things()
                        .filter(thing -> thing.facts().ifRead(thing.identity().roles()).stream()
                                .flatMap(roles -> roles.value().stream())
                                .anyMatch(held -> held.value().equals(role)))
                        .limit(1)
                        .allMatch(thing -> thing.roles().contains(role));
    }

    /** Whether a heater of rooms does so on this; a second energy beside it only runs its fan and its brain. */
    private static boolean heats(Unit unit, Appliance.Energy energy) {
        return Stream.of(Appliance.What.FURNACE, Appliance.What.HYDRONIC_HEATER, Appliance.What.BLOWN_AIR_HEATER)
                .anyMatch(what -> burns(unit, what, energy));
    }

    private static boolean tank(Unit unit, Tank.Contents contents) {
        return unit.tanks().stream().anyMatch(tank -> tank.contents() == contents);
    }

    private static boolean awning(Unit unit, Awning.Kind kind) {
        return unit.awnings().stream().anyMatch(awning -> awning.facts().get(Awning.KIND) == kind);
    }

    private static boolean fuel(Unit unit, Engine.Fuel fuel) {
        return unit.facts()
                .find(Unit.ENGINE)
                .flatMap(it -> it.facts().find(Engine.FUEL))
                .filter(fuel::equals)
                .isPresent();
    }

    private static boolean engine(Unit unit, Key<Boolean> key) {
        return unit.facts()
                .find(Unit.ENGINE)
                .flatMap(it -> it.facts().find(key))
                .orElse(false);
    }

    private static boolean tires(Unit unit, Key<Boolean> key) {
        return unit.facts().find(Unit.TIRES).flatMap(it -> it.facts().find(key)).orElse(false);
    }

    private static boolean hitch(Unit unit, Connection.Coupling coupling) {
        return unit.connections().stream()
                .filter(it -> it.roles().contains("tow-hitch"))
                .anyMatch(it -> it.facts().find(Connection.COUPLING).orElseGet(() -> usual(unit.region())) == coupling);
    }

    private static Connection.Coupling usual(Region region) {
        return switch (region) {
            case NORTH_AMERICA -> Connection.Coupling.PIN_AND_CHAINS;
            case EUROPE -> Connection.Coupling.BALL_AND_CABLE;
        };
    }

    private static boolean hire(Unit unit, Key<Boolean> key) {
        return unit.facts().find(Unit.HIRE).flatMap(it -> it.facts().find(key)).orElse(false);
    }

    private static boolean yes(Unit unit, Key<Boolean> key) {
        return unit.facts().find(key).orElse(false);
    }
}
