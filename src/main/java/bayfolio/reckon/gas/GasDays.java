package bayfolio.reckon.gas;

import bayfolio.measure.Seconds;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;
import bayfolio.model.Appliance;
import bayfolio.model.Coach;
import bayfolio.model.Generator;
import bayfolio.model.Unit;
import bayfolio.reckon.Endurance;
import bayfolio.reckon.Missing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How long the gas lasts.
 *
 * @param burning all that burns gas, whether its plate was read or not
 * @param held what can be used of all that is on board
 */
public record GasDays(
        Coach coach, List<GasStore> stores, List<Appliance> burning, List<GasFlame> flames, WattHours held) {
    public GasDays {
        stores = List.copyOf(stores);
        burning = List.copyOf(burning);
        flames = List.copyOf(flames);
    }

    public static Optional<GasDays> of(Coach coach) {
        GasDays result = made(coach);
        return !result.burning.isEmpty() && result.lacking().isEmpty() ? Optional.of(result) : Optional.empty();
    }

    /** Nothing where the coach burns no gas. */
    public static List<Missing> lacking(Coach coach) {
        GasDays result = made(coach);
        return result.burning.isEmpty() ? List.of() : result.lacking();
    }

    private static GasDays made(Coach coach) {
        List<Appliance> burning = coach.unit().appliances().stream()
                .filter(appliance -> appliance.facts().all(Appliance.ENERGY).contains(Appliance.Energy.GAS))
                .toList();
        List<GasStore> stores = GasStore.all(coach);
        LpGas gas = LpGas.of(coach.unit().region());
        return new GasDays(
                coach,
                stores,
                burning,
                burning.stream()
                        .flatMap(appliance -> GasFlame.of(appliance).stream())
                        .toList(),
                stores.stream().map(store -> store.energy(gas)).reduce(new WattHours(0), WattHours::plus));
    }

    private List<Missing> lacking() {
        List<Missing> lacking = new ArrayList<>();
        if (GasStore.declared(coach).isEmpty()) {
            lacking.add(new Missing("gas-store"));
        } else if (stores.isEmpty()) {
            lacking.add(new Missing("gas-in-a-cylinder"));
        } else if (held.value() <= 0) {
            lacking.add(new Missing("gas-tank-holds"));
        }
        if (flames.isEmpty()) {
            burning.forEach(appliance -> lacking.add(new Missing("gas-input", appliance.name())));
        }
        return lacking;
    }

    /** What all take in a mild day; absent while the hours of none are known. */
    public Optional<WattHours> mild() {
        return together(GasFlame::mild);
    }

    /** In a day of frost. */
    public Optional<WattHours> frost() {
        return together(GasFlame::frost);
    }

    private Optional<WattHours> together(Function<GasFlame, Optional<Seconds>> hours) {
        return flames.stream()
                .flatMap(flame -> hours.apply(flame).map(flame::daily).stream())
                .reduce(WattHours::plus);
    }

    /** The room heater, or else the largest flame. */
    public GasFlame hungriest() {
        return flames.stream()
                .max(Comparator.comparing(GasFlame::heatsRooms)
                        .thenComparing(flame -> flame.input().value()))
                .orElseThrow();
    }

    /** How long it lasts where so much is taken each day; absent where none is. */
    public Optional<Seconds> days(WattHours daily) {
        return daily.value() > 0 ? Optional.of(Endurance.ofDays(held, daily)) : Optional.empty();
    }

    /** How long one flame burns alone, without pause. */
    public Seconds lasts(Watts input) {
        return Endurance.of(held, input);
    }

    /** Those that can run on shore power instead. */
    public List<Appliance> alsoOnShorePower() {
        return burning.stream()
                .filter(appliance -> appliance.facts().all(Appliance.ENERGY).contains(Appliance.Energy.AC))
                .toList();
    }

    /** Those whose plate nobody has read. */
    public List<Appliance> unread() {
        return burning.stream()
                .filter(appliance -> GasFlame.of(appliance).isEmpty())
                .toList();
    }

    /** Those of which nobody knows the hours. */
    public List<GasFlame> idle() {
        return flames.stream()
                .filter(flame -> flame.mild().isEmpty() && flame.frost().isEmpty())
                .toList();
    }

    public boolean generatorBurnsIt() {
        return coach.unit()
                .facts()
                .find(Unit.GENERATOR)
                .flatMap(generator -> generator.facts().find(Generator.FUEL))
                .filter(fuel -> fuel == Generator.Fuel.LP_GAS)
                .isPresent();
    }
}
