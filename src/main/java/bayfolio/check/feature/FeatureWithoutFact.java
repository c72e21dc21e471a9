package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Access;
import bayfolio.model.Appliance;
import bayfolio.model.Bank;
import bayfolio.model.Feature;
import bayfolio.model.Generator;
import bayfolio.model.Solar;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.model.Water;
import bayfolio.model.Weights;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Flags a feature of which the coach does not tell the one fact that a renter must know before using it. */
public final class FeatureWithoutFact implements Rule {

    /**
     * @param used whether a renter may come to use it
     * @param records those that ought to tell; where there are none, the block does
     * @param block the key under which they stand
     */
    private record Requirement(
            Feature feature,
            Predicate<Unit> used,
            Function<Unit, Stream<Facts>> records,
            Key<?> block,
            Key<?> fact,
            String because) {

        /** Records that ought to tell and do not; an empty one where there is none. */
        Stream<Lack> lacking(Unit unit) {
            if (!feature.of(unit) || !used.test(unit)) {
                return Stream.of();
            }
            List<Facts> telling = records.apply(unit).toList();
            return telling.isEmpty()
                    ? Stream.of(new Lack(Optional.empty(), fact, because))
                    : telling.stream().filter(it -> !it.has(fact)).map(it -> new Lack(Optional.of(it), fact, because));
        }

        Stream<Finding> unmet(Unit unit) {
            return lacking(unit)
                    .map(lack -> told(at(
                            unit,
                            lack.of.map(Facts::at).orElseGet(() -> unit.facts().at(block)))));
        }

        /** Where the feature comes from the role of a thing, that thing asks for the fact. */
        private Place at(Unit unit, Place record) {
            return Optional.ofNullable(BY_ROLE.get(feature))
                    .flatMap(role -> unit.things()
                            .filter(thing -> thing.roles().contains(role))
                            .findFirst())
                    .map(Thing::at)
                    .orElse(record);
        }

        private Finding told(Place at) {
            return Finding.warning(
                            "feature-without-fact",
                            at,
                            "this coach has the feature `" + feature.word() + "` and does not tell `" + fact.name()
                                    + "`: " + because)
                    .mend("Add `" + fact.name() + "` to `" + block.name() + "`, from the papers of the new part.");
        }
    }

    private static final Map<Feature, String> BY_ROLE =
            Map.of(Feature.HITCH, "tow-hitch", Feature.FILL_VALVE, "water-fill-valve");

    private static final Predicate<Unit> ALWAYS = unit -> true;

    private static final List<Requirement> NEEDS = List.of(
            new Requirement(
                    Feature.HOUSE_LITHIUM,
                    ALWAYS,
                    unit -> unit.banks().stream()
                            .filter(bank -> bank.facts().get(Bank.CHEMISTRY) == Bank.Chemistry.LITHIUM)
                            .map(Described::facts),
                    Unit.BANKS,
                    Bank.FROST_LIMIT,
                    "charged below it, lithium is ruined"),
            new Requirement(
                    Feature.HEAT_PUMP,
                    ALWAYS,
                    unit -> unit.appliances().stream()
                            .filter(it -> it.facts().get(Appliance.WHAT) == Appliance.What.HEAT_PUMP)
                            .map(Described::facts),
                    Unit.APPLIANCES,
                    Appliance.LOWEST_OUTSIDE,
                    "below it, it does not heat"),
            new Requirement(
                    Feature.GENERATOR,
                    ALWAYS,
                    unit -> block(unit, Unit.GENERATOR),
                    Unit.GENERATOR,
                    Generator.EXHAUST_SIDE,
                    "nobody opens a window there while it runs"),
            new Requirement(
                    Feature.SOLAR,
                    ALWAYS,
                    unit -> block(unit, Unit.SOLAR),
                    Unit.SOLAR,
                    Solar.ALIVE_WITH_SWITCH_OFF,
                    "a wire that is believed dead may be live in the sun"),
            new Requirement(
                    Feature.FILL_VALVE,
                    ALWAYS,
                    unit -> block(unit, Unit.WATER),
                    Unit.WATER,
                    Water.CITY_POSITION,
                    "one hose connection serves several ways, and the valve decides which"),
            new Requirement(
                    Feature.FILL_VALVE,
                    ALWAYS,
                    unit -> block(unit, Unit.WATER),
                    Unit.WATER,
                    Water.TANK_FILL_POSITION,
                    "left in it, the tank overflows"),
            new Requirement(
                    Feature.HITCH,
                    Feature.TOWING_ALLOWED::of,
                    unit -> block(unit, Unit.WEIGHTS),
                    Unit.WEIGHTS,
                    Weights.TOW_WEIGHT,
                    "what hangs on the hitch must not be heavier"),
            new Requirement(
                    Feature.HITCH,
                    FeatureWithoutFact::hitchForRenters,
                    unit -> block(unit, Unit.WEIGHTS),
                    Unit.WEIGHTS,
                    Weights.NOSE_WEIGHT,
                    "what presses on the hitch, a rack too, must not be heavier"));

    /** Whether one may be used at all, if only for a rack. */
    private static boolean hitchForRenters(Unit unit) {
        return unit.connections().stream()
                .anyMatch(it -> it.roles().contains("tow-hitch") && it.access() != Access.STAFF);
    }

    private static <T extends Described> Stream<Facts> block(Unit unit, Key<T> key) {
        return unit.facts().located(key).map(Located::value).map(Described::facts).stream();
    }

    /**
     * A fact that a coach ought to tell.
     *
     * @param of the record that lacks it; empty where there is no such record
     * @param because what a renter must know it for
     */
    public record Lack(Optional<Facts> of, Key<?> fact, String because) {}

    /** All facts that a coach ought to tell for what it has. */
    public static Stream<Lack> lacking(Unit unit) {
        return NEEDS.stream().flatMap(need -> need.lacking(unit));
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        boolean draft = !coach.unit().facts().has(Unit.HIRE);
        return draft ? Stream.of() : NEEDS.stream().flatMap(need -> need.unmet(coach.unit()));
    }
}
