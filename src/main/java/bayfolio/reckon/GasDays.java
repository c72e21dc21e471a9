package bayfolio.reckon;

import static java.util.function.Predicate.not;

import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;
import bayfolio.model.Appliance;
import bayfolio.model.Coach;
import bayfolio.model.Generator;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How long the gas lasts. */
public final class GasDays {
    private static final String ASKED = "How long does the gas last?";
    private static final String NONE = "uses none";

    private final Coach coach;
    private final boolean american;
    private final List<GasStore> stores;
    private final List<GasFlame> flames;
    private final WattHours held;

    private GasDays(Coach coach) {
        this.coach = coach;
        this.american = coach.unit().region() == Region.NORTH_AMERICA;
        this.stores = GasStore.all(coach);
        this.flames = burning(coach).stream()
                .flatMap(appliance -> GasFlame.of(appliance).stream())
                .toList();
        LpGas gas = LpGas.of(coach.unit().region());
        this.held = stores.stream().map(store -> store.energy(gas)).reduce(new WattHours(0), WattHours::plus);
    }

    public static Reckoned of(Coach coach) {
        if (burning(coach).isEmpty()) {
            return new Reckoned.Lacking(Question.GAS_DAYS, ASKED, List.of());
        }
        GasDays result = new GasDays(coach);
        List<String> lacking = result.lacking();
        return lacking.isEmpty() ? result.reckoning() : new Reckoned.Lacking(Question.GAS_DAYS, ASKED, lacking);
    }

    private static List<Appliance> burning(Coach coach) {
        return coach.unit().appliances().stream()
                .filter(appliance -> appliance.facts().all(Appliance.ENERGY).contains(Appliance.Energy.GAS))
                .toList();
    }

    static List<String> lacking(Coach coach) {
        return burning(coach).isEmpty() ? List.of() : new GasDays(coach).lacking();
    }

    private List<String> lacking() {
        List<String> lacking = new ArrayList<>();
        if (GasStore.declared(coach).isEmpty()) {
            lacking.add("the gas tank or the gas cylinders");
        } else if (stores.isEmpty()) {
            lacking.add("the gas in one full cylinder");
        } else if (held.value() <= 0) {
            lacking.add("what the gas tank holds");
        }
        if (flames.isEmpty()) {
            burning(coach).forEach(appliance -> lacking.add("gas input of " + appliance.name()));
        }
        return lacking;
    }

    private Reckoned reckoning() {
        return new Reckoned.Reckoning(
                Question.GAS_DAYS,
                ASKED,
                answer(),
                grids(),
                inputs(),
                "Days = gas in the full tank / (input of each flame × its hours a day, added up).",
                steps(),
                assumed(),
                american
                        ? "Gas: 91,502 BTU a gallon, 21,548 BTU a pound, gross, from suppliers' tables. Tanks are filled to 80 %: an owner's manual and a dispenser training page."
                        : "Gas: 12.87 kWh a kilogram, net, from two published tables. Where a plate means gross, the gas lasts 8 % longer.",
                "No two days are alike. Wind, cold and an open door take more.");
    }

    private String answer() {
        String full = stores.stream().map(store -> store.tank().name()).collect(Collectors.joining(" and "));
        Optional<WattHours> mild = together(GasFlame::mild).filter(daily -> daily.value() > 0);
        Optional<WattHours> frost = together(GasFlame::frost).filter(daily -> daily.value() > 0);
        String days = mild.equals(frost)
                ? mild.map(daily -> ": " + days(daily) + " of gas").orElse("")
                : ": " + mild.map(this::days).orElse("any time") + " in mild weather, "
                        + frost.map(this::days).orElse("any time") + " in frost";
        GasFlame hungry = hungriest();
        String alone = hungry.appliance().name() + " without pause: " + lasts(hungry.input()) + ".";
        return days.isEmpty() ? alone : full + ", full" + days + ". " + alone;
    }

    /** The room heater, or else the largest flame. */
    private GasFlame hungriest() {
        return flames.stream()
                .max(Comparator.comparing(GasFlame::heatsRooms)
                        .thenComparing(flame -> flame.input().value()))
                .orElseThrow();
    }

    private List<Grid> grids() {
        List<Grid> grids = new ArrayList<>();
        Optional<WattHours> mild = together(GasFlame::mild);
        Optional<WattHours> frost = together(GasFlame::frost);
        if (mild.isPresent() && frost.isPresent()) {
            grids.add(new Grid(
                    "All together",
                    List.of("Weather", "Takes a day", "The gas lasts"),
                    List.of(
                            List.of("Mild", energy(mild.get()), days(mild.get())),
                            List.of("Frost", energy(frost.get()), days(frost.get())))));
        }
        grids.add(new Grid(
                "Each one alone",
                List.of("Appliance", "Mild weather", "Frost", "Without pause"),
                flames.stream()
                        .map(flame -> List.of(
                                flame.appliance().name(),
                                alone(flame, flame.mild()),
                                alone(flame, flame.frost()),
                                lasts(flame.input())))
                        .toList()));
        return grids;
    }

    private String alone(GasFlame flame, Optional<Seconds> hours) {
        return hours.map(it -> days(flame.daily(it))).orElse("hours a day not known");
    }

    /** What all take in a day; absent while the hours of none are known. */
    private Optional<WattHours> together(Function<GasFlame, Optional<Seconds>> hours) {
        return flames.stream()
                .flatMap(flame -> hours.apply(flame).map(flame::daily).stream())
                .reduce(WattHours::plus);
    }

    private String days(WattHours daily) {
        return daily.value() > 0 ? Rounding.DOWN.days(Endurance.ofDays(held, daily)) : NONE;
    }

    private String lasts(Watts input) {
        return Rounding.DOWN.hours(Endurance.of(held, input));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (GasStore store : stores) {
            String name = store.tank().name();
            inputs.add(Input.described(
                    store.each().isPresent() ? name + ", gas when full" : name + ", capacity",
                    store.holds(coach.unit().region().first())));
            String share = Rounding.NEAREST.print(store.usable());
            String usable = name + ", share that can be used";
            inputs.add(
                    store.usableStated()
                            ? Input.described(usable, share)
                            : Input.usual(
                                    usable,
                                    share,
                                    store.each().isPresent()
                                            ? "common practice, no source"
                                            : "fill limit, from an owner's manual and a dispenser training page"));
        }
        for (GasFlame flame : flames) {
            String name = flame.appliance().name();
            inputs.add(Input.described(name + ", gas input", power(flame.input())));
            flame.mild().ifPresent(hours -> inputs.add(Input.described(name + ", hours on a mild day", hours(hours))));
            flame.frost()
                    .filter(not(flame.mild().orElse(new Seconds(-1))::equals))
                    .ifPresent(hours -> inputs.add(Input.described(name + ", hours in frost", hours(hours))));
        }
        return inputs;
    }

    private List<String> steps() {
        LpGas gas = LpGas.of(coach.unit().region());
        List<String> steps = new ArrayList<>();
        for (GasStore store : stores) {
            steps.add(store.tank().name() + ": "
                    + store.holds(coach.unit().region().first()) + " × "
                    + Rounding.NEAREST.print(store.usable()) + " × " + worth(store) + " = "
                    + energy(store.energy(gas), Rounding.DOWN) + ".");
        }
        together(GasFlame::mild).ifPresent(daily -> steps.add("Mild day: " + sum(GasFlame::mild, daily)));
        together(GasFlame::frost).ifPresent(daily -> steps.add("Day of frost: " + sum(GasFlame::frost, daily)));
        GasFlame hungry = hungriest();
        steps.add(hungry.appliance().name() + " without pause: " + energy(held, Rounding.DOWN) + " / "
                + power(hungry.input()) + " = " + lasts(hungry.input()) + ".");
        return steps;
    }

    private String sum(Function<GasFlame, Optional<Seconds>> hours, WattHours daily) {
        String sum = flames.stream()
                .flatMap(flame ->
                        hours.apply(flame).map(it -> flame.appliance().name() + " " + energy(flame.daily(it))).stream())
                .collect(Collectors.joining(" + "));
        String total = sum.contains(" + ") ? sum + " = " + energy(daily) : sum;
        return daily.value() > 0
                ? total + "; " + energy(held, Rounding.DOWN) + " / " + energy(daily) + " = " + days(daily) + "."
                : total + ".";
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add("The gas is full at the start.");
        if (stores.stream().anyMatch(store -> store.each().isEmpty())) {
            assumed.add("A full tank holds liquid only to its fill limit. The rest is room for heat.");
        }
        List<String> shore = burning(coach).stream()
                .filter(appliance -> appliance.facts().all(Appliance.ENERGY).contains(Appliance.Energy.AC))
                .map(Appliance::name)
                .toList();
        if (!shore.isEmpty()) {
            assumed.add("On gas all the time: " + String.join(", ", shore) + ". On shore power the gas lasts longer.");
        }
        String unknown = burning(coach).stream()
                .filter(appliance -> GasFlame.of(appliance).isEmpty())
                .map(Appliance::name)
                .collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            assumed.add("Not counted, as the plate was not read: " + unknown + ".");
        }
        String idle = flames.stream()
                .filter(flame -> flame.mild().isEmpty() && flame.frost().isEmpty())
                .map(flame -> flame.appliance().name())
                .collect(Collectors.joining(", "));
        if (!idle.isEmpty()) {
            assumed.add("Not in the days of all together, as nobody knows the hours: " + idle + ".");
        }
        coach.unit()
                .facts()
                .find(Unit.GENERATOR)
                .flatMap(generator -> generator.facts().find(Generator.FUEL))
                .filter(fuel -> fuel == Generator.Fuel.LP_GAS)
                .ifPresent(fuel -> assumed.add("The generator is off. It burns this gas, too."));
        assumed.add("Hours are at full flame. A burner turned low counts for fewer.");
        assumed.add("In hard frost gas comes more slowly. A nearly empty tank may then fail early.");
        return assumed;
    }

    private String worth(GasStore store) {
        if (american) {
            return store.each().isPresent() ? "21,548 BTU a pound" : "91,502 BTU a gallon";
        }
        return store.each().isPresent() ? "12.87 kWh a kilogram" : "12.87 kWh a kilogram × 0.506 kg a liter";
    }

    private String energy(WattHours energy) {
        return energy(energy, Rounding.UP);
    }

    /** In one system only: gross and net figures must not stand for one another. */
    private String energy(WattHours energy, Rounding toward) {
        return american ? toward.print(energy.btu(), 0) + " BTU" : toward.print(energy.value() / 1000, 1) + " kWh";
    }

    private String power(Watts power) {
        return american
                ? Rounding.NEAREST.print(power.btuPerHour(), 0) + " BTU/h"
                : Rounding.NEAREST.print(power.value() / 1000, 1) + " kW";
    }

    private String hours(Seconds hours) {
        return hours.both(coach.unit().region().first());
    }
}
