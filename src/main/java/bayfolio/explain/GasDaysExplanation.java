package bayfolio.explain;

import static java.util.function.Predicate.not;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Key;
import bayfolio.measure.Amount;
import bayfolio.measure.Rounding;
import bayfolio.measure.Seconds;
import bayfolio.measure.Symbol;
import bayfolio.measure.WattHours;
import bayfolio.measure.Watts;
import bayfolio.model.Appliance;
import bayfolio.model.Coach;
import bayfolio.model.Region;
import bayfolio.reckon.Given;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.gas.GasDays;
import bayfolio.reckon.gas.GasFlame;
import bayfolio.reckon.gas.GasStore;
import bayfolio.reckon.gas.LpGas;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** How long the gas lasts. */
final class GasDaysExplanation {
    private final GasDays gas;
    private final Voice voice;
    private final boolean american;

    private GasDaysExplanation(GasDays gas, Voice voice) {
        this.gas = gas;
        this.voice = voice;
        this.american = voice.region() == Region.NORTH_AMERICA;
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.GAS_DAYS, coach.unit().region());
        return GasDays.of(coach)
                .map(gas -> new GasDaysExplanation(gas, voice).explanation())
                .orElseGet(() -> voice.lacking(GasDays.lacking(coach)));
    }

    private Explained explanation() {
        return new Explained.Explanation(
                Question.GAS_DAYS,
                voice.asked(),
                answer(),
                grids(),
                inputs(),
                voice.say("formula"),
                steps(),
                assumed(),
                voice.regional("source"),
                voice.say("error"),
                Optional.empty());
    }

    private String answer() {
        Optional<WattHours> mild = gas.mild().filter(daily -> daily.value() > 0);
        Optional<WattHours> frost = gas.frost().filter(daily -> daily.value() > 0);
        GasFlame hungry = gas.hungriest();
        String alone = voice.say("alone", "name", hungry.appliance().name(), "time", lasts(hungry.input()));
        if (mild.isEmpty() && frost.isEmpty()) {
            return alone;
        }
        List<String> tanks =
                gas.stores().stream().map(store -> store.tank().name()).toList();
        return mild.equals(frost)
                ? voice.say(
                        "answer.all",
                        "tanks",
                        tanks,
                        "days",
                        mild.map(this::days).orElseThrow(),
                        "alone",
                        alone)
                : voice.say(
                        "answer.weather",
                        "tanks",
                        tanks,
                        "mild",
                        mild.map(this::days).orElseGet(() -> voice.say("any-time")),
                        "frost",
                        frost.map(this::days).orElseGet(() -> voice.say("any-time")),
                        "alone",
                        alone);
    }

    private List<Grid> grids() {
        List<Grid> grids = new ArrayList<>();
        Optional<WattHours> mild = gas.mild();
        Optional<WattHours> frost = gas.frost();
        if (mild.isPresent() && frost.isPresent()) {
            grids.add(new Grid(
                    voice.say("table.all"),
                    voice.heads("weather", "daily", "lasts"),
                    List.of(
                            List.of(voice.say("mild"), energy(mild.get()), days(mild.get())),
                            List.of(voice.say("frost"), energy(frost.get()), days(frost.get())))));
        }
        grids.add(new Grid(
                voice.say("table.each"),
                voice.heads("appliance", "mild", "frost", "without-pause"),
                gas.flames().stream()
                        .map(flame -> List.of(
                                flame.appliance().name(),
                                alone(flame, flame.mild()),
                                alone(flame, flame.frost()),
                                lasts(flame.input())))
                        .toList()));
        return grids;
    }

    private String alone(GasFlame flame, Optional<Seconds> hours) {
        return hours.map(it -> days(flame.daily(it))).orElseGet(() -> voice.say("hours-unknown"));
    }

    private String days(WattHours daily) {
        return gas.days(daily)
                .map(time -> voice.amount(Rounding.DOWN.days(time)))
                .orElseGet(() -> voice.say("none"));
    }

    private String lasts(Watts input) {
        return voice.amount(Rounding.DOWN.hours(gas.lasts(input)));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        for (GasStore store : gas.stores()) {
            String name = store.tank().name();
            Given<Amount> holds = store.holds(voice.first());
            inputs.add(voice.input(
                    store.each().isPresent() ? "gas-when-full" : "capacity",
                    voice.times(store.count(), holds.value()),
                    holds.origin(),
                    "name",
                    name));
            inputs.add(voice.input("usable", store.usable().map(Rounding.NEAREST::print), "name", name));
        }
        for (GasFlame flame : gas.flames()) {
            String name = flame.appliance().name();
            inputs.add(voice.input(
                    "input", power(flame.input()), stated(flame.appliance(), Appliance.GAS_INPUT), "name", name));
            flame.mild()
                    .ifPresent(hours -> inputs.add(voice.input(
                            "hours-mild", hours(hours), stated(flame.appliance(), Appliance.GAS_HOURS), "name", name)));
            flame.frost()
                    .filter(not(flame.mild().orElse(new Seconds(-1))::equals))
                    .ifPresent(hours -> inputs.add(voice.input(
                            "hours-frost",
                            hours(hours),
                            stated(flame.appliance(), Appliance.GAS_HOURS_FROST),
                            "name",
                            name)));
        }
        return inputs;
    }

    private static Origin stated(Appliance appliance, Key<?> key) {
        return new Origin.Stated(appliance.facts(), key);
    }

    private List<String> steps() {
        LpGas worth = LpGas.of(voice.region());
        List<String> steps = new ArrayList<>();
        for (GasStore store : gas.stores()) {
            steps.add(voice.say(
                    "step.store",
                    "name",
                    store.tank().name(),
                    "holds",
                    voice.times(store.count(), store.holds(voice.first()).value()),
                    "usable",
                    Rounding.NEAREST.print(store.usable().value()),
                    "worth",
                    worth(store),
                    "energy",
                    energy(store.energy(worth), Rounding.DOWN)));
        }
        gas.mild().ifPresent(daily -> steps.add(day("step.mild", GasFlame::mild, daily)));
        gas.frost().ifPresent(daily -> steps.add(day("step.frost", GasFlame::frost, daily)));
        GasFlame hungry = gas.hungriest();
        steps.add(voice.say(
                "step.alone",
                "name",
                hungry.appliance().name(),
                "held",
                energy(gas.held(), Rounding.DOWN),
                "input",
                power(hungry.input()),
                "time",
                lasts(hungry.input())));
        return steps;
    }

    private String day(String key, Function<GasFlame, Optional<Seconds>> hours, WattHours daily) {
        List<String> parts = gas.flames().stream()
                .flatMap(flame -> hours
                        .apply(flame)
                        .map(it -> voice.say(
                                "step.part", "name", flame.appliance().name(), "energy", energy(flame.daily(it))))
                        .stream())
                .toList();
        String sum = String.join(" + ", parts);
        String total = parts.size() > 1 ? sum + " = " + energy(daily) : sum;
        return daily.value() > 0
                ? voice.say(
                        key,
                        "sum",
                        total + "; " + energy(gas.held(), Rounding.DOWN) + " / " + energy(daily) + " = " + days(daily))
                : voice.say(key, "sum", total);
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        assumed.add(voice.say("assumed.full"));
        if (gas.stores().stream().anyMatch(store -> store.each().isEmpty())) {
            assumed.add(voice.say("assumed.fill-limit"));
        }
        if (!gas.alsoOnShorePower().isEmpty()) {
            assumed.add(voice.say("assumed.always-on-gas", "names", row(gas.alsoOnShorePower())));
        }
        if (!gas.unread().isEmpty()) {
            assumed.add(voice.say("assumed.unread", "names", row(gas.unread())));
        }
        if (!gas.idle().isEmpty()) {
            assumed.add(voice.say(
                    "assumed.hours-unknown",
                    "names",
                    row(gas.idle().stream().map(GasFlame::appliance).toList())));
        }
        if (gas.generatorBurnsIt()) {
            assumed.add(voice.say("assumed.generator-off"));
        }
        assumed.add(voice.say("assumed.full-flame"));
        assumed.add(voice.say("assumed.hard-frost"));
        return assumed;
    }

    private String row(List<Appliance> appliances) {
        return voice.words().row(appliances.stream().map(Appliance::name).toList());
    }

    private String worth(GasStore store) {
        boolean cylinders = store.each().isPresent();
        if (american) {
            return cylinders
                    ? voice.say("worth.pound", "energy", btu(LpGas.BTU_PER_POUND.value(), Rounding.NEAREST))
                    : voice.say("worth.gallon", "energy", btu(LpGas.BTU_PER_GALLON.value(), Rounding.NEAREST));
        }
        Amount energy = Rounding.NEAREST.print(LpGas.KWH_PER_KILOGRAM.value(), 2, Symbol.KILOWATT_HOUR);
        return cylinders
                ? voice.say("worth.kilogram", "energy", energy)
                : voice.say(
                        "worth.liter",
                        "energy",
                        energy,
                        "weight",
                        Rounding.NEAREST.print(LpGas.DENSITY, 3, Symbol.KILOGRAM));
    }

    private String energy(WattHours energy) {
        return energy(energy, Rounding.UP);
    }

    /** In one system only: gross and net figures must not stand for one another. */
    private String energy(WattHours energy, Rounding toward) {
        return voice.amount(
                american ? btu(energy.btu(), toward) : toward.print(energy.value() / 1000, 1, Symbol.KILOWATT_HOUR));
    }

    private static Amount btu(double btu, Rounding toward) {
        return toward.print(btu, 0, Symbol.BTU);
    }

    private String power(Watts power) {
        return voice.amount(
                american
                        ? Rounding.NEAREST.print(power.btuPerHour(), 0, Symbol.BTU_PER_HOUR)
                        : Rounding.NEAREST.print(power.value() / 1000, 1, Symbol.KILOWATT));
    }

    private String hours(Seconds hours) {
        return voice.amount(hours.both(voice.first()));
    }
}
