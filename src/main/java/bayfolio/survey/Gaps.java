package bayfolio.survey;

import bayfolio.fact.Key;
import bayfolio.model.Appliance;
import bayfolio.model.Bank;
import bayfolio.model.Charger;
import bayfolio.model.Cord;
import bayfolio.model.Engine;
import bayfolio.model.Generator;
import bayfolio.model.Load;
import bayfolio.model.People;
import bayfolio.model.Size;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import bayfolio.reckon.Missing;
import java.util.List;
import java.util.Map;

/** What a question of renters lacks, as the keys that would state it. What takes a thing to be described first is none of them. */
final class Gaps {
    private static final Map<String, List<Key<?>>> KEYS = Map.ofEntries(
            Map.entry("gas-input", List.of(Appliance.GAS_INPUT)),
            Map.entry("sleeping-places", List.of(People.SLEEPING_PLACES)),
            Map.entry("belted-seats", List.of(People.BELTED_SEATS)),
            Map.entry("fuel-consumption", List.of(Engine.CONSUMPTION)),
            Map.entry("generator-power", List.of(Generator.POWER)),
            Map.entry("generator-volts", List.of(Generator.VOLTS)),
            Map.entry("generator-legs", List.of(Generator.LEGS)),
            Map.entry("generator-fuel", List.of(Generator.FUEL)),
            Map.entry("cord-length", List.of(Cord.LENGTH)),
            Map.entry("cord-conductor", List.of(Cord.CONDUCTOR)),
            Map.entry("cord-conductor-listed", List.of(Cord.CONDUCTOR)),
            Map.entry("length-and-width", List.of(Size.LENGTH, Size.WIDTH)),
            Map.entry("size-height", List.of(Size.HEIGHT)),
            Map.entry("size-width", List.of(Size.WIDTH)),
            Map.entry("size-length", List.of(Size.LENGTH)),
            Map.entry("gross-weight", List.of(Weights.GROSS)),
            Map.entry(
                    "weighing",
                    List.of(Weighing.ON, Weighing.TOTAL, Weighing.PEOPLE, Weighing.FRESH_WATER, Weighing.STATE)),
            Map.entry("weighing-people", List.of(Weighing.PEOPLE)),
            Map.entry("weighing-fresh-water", List.of(Weighing.FRESH_WATER)),
            Map.entry("axle-limits", List.of(Weights.FRONT_AXLE, Weights.REAR_AXLE)),
            Map.entry("axle-weights", List.of(Weighing.FRONT, Weighing.REAR)),
            Map.entry("wheelbase", List.of(Size.WHEELBASE, Size.FRONT_OVERHANG)),
            Map.entry("bank-amp-hours", List.of(Bank.AMP_HOURS)),
            Map.entry("bank-volts", List.of(Bank.VOLTS)),
            Map.entry("bank-usable", List.of(Bank.USABLE)),
            Map.entry("load-draw", List.of(Load.AMPS, Load.WATTS)),
            Map.entry("charger-amps", List.of(Charger.RATING)));

    /** Of the place of a thing, by the names that all things have for it. */
    private static final List<String> PLACE = List.of("side", "from-front");

    private Gaps() {}

    static List<Key<?>> keys(Missing missing) {
        return KEYS.getOrDefault(missing.what(), List.of());
    }

    static List<String> names(Missing missing) {
        return List.of("inlet-place", "place").contains(missing.what()) ? PLACE : List.of();
    }
}
