package bayfolio.explain;

import bayfolio.catalog.Catalog;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.measure.Amount;
import bayfolio.measure.Meters;
import bayfolio.measure.Quantity;
import bayfolio.measure.Rounding;
import bayfolio.measure.Symbol;
import bayfolio.measure.Watts;
import bayfolio.model.Coach;
import bayfolio.model.FleetFacts;
import bayfolio.model.FuelPrices;
import bayfolio.model.Generator;
import bayfolio.model.Wording;
import bayfolio.reckon.Given;
import bayfolio.reckon.Origin;
import bayfolio.reckon.Question;
import bayfolio.reckon.fuel.FuelPrice;
import bayfolio.reckon.fuel.GeneratorHours;
import bayfolio.reckon.gas.GasStore;
import bayfolio.reckon.power.LegRating;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How long the generator runs, what it gives at altitude, and what an hour costs. */
final class GeneratorHoursExplanation {
    private final GeneratorHours hours;
    private final Voice voice;
    private final Watts power;
    private final LegRating legs;
    private final List<GeneratorHours.Source> sources;
    private final List<GeneratorHours.Burning> burning;
    private final Optional<FuelPrice> price;

    private GeneratorHoursExplanation(GeneratorHours hours, Voice voice) {
        this.hours = hours;
        this.voice = voice;
        this.power = hours.power();
        this.legs = hours.legs();
        this.sources = hours.sources();
        this.burning = hours.burning();
        this.price = hours.price();
    }

    static Explained of(Coach coach, Catalog words) {
        Voice voice = new Voice(words, Question.GENERATOR_HOURS, coach.unit().region());
        return GeneratorHours.of(coach)
                .map(hours -> new GeneratorHoursExplanation(hours, voice).explanation())
                .orElseGet(() -> voice.lacking(GeneratorHours.lacking(coach)));
    }

    private Explained explanation() {
        List<Grid> grids = new ArrayList<>();
        fuelGrid().ifPresent(grids::add);
        grids.add(altitudes());
        return new Explained.Explanation(
                Question.GENERATOR_HOURS,
                voice.asked(),
                answer(),
                grids,
                inputs(),
                voice.say("formula"),
                steps(),
                assumed(),
                voice.say("source"),
                voice.say("error"),
                Optional.empty());
    }

    private String answer() {
        String amps = voice.say(legs.legs() > 1 ? "gives.two" : "gives.one", "amps", perLeg(power));
        if (sources.isEmpty() || burning.isEmpty()) {
            return amps;
        }
        return voice.say(
                "answer",
                "tanks",
                sources.stream().map(GeneratorHours.Source::name).toList(),
                "hours",
                voice.words()
                        .row(burning.stream()
                                .filter(row -> row.load() != GeneratorHours.Load.THREE_QUARTERS)
                                .map(row -> voice.say("answer.at", "hours", lasts(row), "load", load(row)))
                                .toList()),
                "gives",
                amps);
    }

    private String load(GeneratorHours.Burning row) {
        return voice.say("load." + Type.word(row.load()));
    }

    private Amount lasts(GeneratorHours.Burning row) {
        return Rounding.DOWN.hours(hours.lasts(row));
    }

    private Optional<Grid> fuelGrid() {
        if (burning.isEmpty() || sources.isEmpty() && price.isEmpty()) {
            return Optional.empty();
        }
        List<String> head = new ArrayList<>(voice.heads("load", "burns"));
        if (!sources.isEmpty()) {
            head.add(voice.say(hours.gas() ? "head.until-empty" : "head.until-it-stops"));
        }
        price.ifPresent(it -> head.add(voice.say("head.hour-costs")));
        List<List<String>> rows = new ArrayList<>();
        for (GeneratorHours.Burning row : burning) {
            List<String> cells = new ArrayList<>(List.of(load(row), flow(row)));
            if (!sources.isEmpty()) {
                cells.add(voice.amount(lasts(row)));
            }
            price.ifPresent(it -> cells.add(money(it.hourly(row.burned()), it)));
            rows.add(List.copyOf(cells));
        }
        return Optional.of(new Grid(voice.say(sources.isEmpty() ? "table.fuel" : "table.from-full"), head, rows));
    }

    /** Never less than it costs. */
    private String money(double amount, FuelPrice price) {
        return voice.words().digits(Rounding.UP.print(amount, 2)) + " " + price.currency();
    }

    private Grid altitudes() {
        List<List<String>> rows = new ArrayList<>();
        for (Meters height : hours.heights()) {
            Watts left = hours.at(height);
            rows.add(List.of(altitude(height), voice.amount(side(left).print(left)), voice.amount(perLeg(left))));
        }
        return new Grid(
                voice.say("table.altitude"),
                voice.heads("altitude", "gives", legs.legs() > 1 ? "each-leg" : "amps"),
                rows);
    }

    /** What the plate says is printed as it is; what is left of it as less. */
    private Rounding side(Watts left) {
        return left.equals(power) ? Rounding.NEAREST : Rounding.DOWN;
    }

    private Amount perLeg(Watts left) {
        return side(left).print(legs.amps(left));
    }

    private String altitude(Meters height) {
        return height.value() == 0
                ? voice.say("sea-level")
                : voice.amount(Amount.both(
                        Rounding.NEAREST.print(height.feet(), 0, Symbol.FOOT),
                        Rounding.NEAREST.print(height.value(), 0, Symbol.METER),
                        voice.first()));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(voice.input("power", stated(Generator.POWER).map(Rounding.NEAREST::print)));
        inputs.add(voice.input("volts", shown(Generator.VOLTS)));
        inputs.add(
                voice.input("legs", String.valueOf(legs.legs()), new Origin.Stated(facts().facts(), Generator.LEGS)));
        if (facts().facts().has(Generator.BREAKER)) {
            inputs.add(voice.input("breaker", shown(Generator.BREAKER)));
        }
        if (hours.gas()) {
            for (GasStore store : GasStore.all(hours.coach())) {
                Given<Amount> holds = store.holds(voice.first());
                inputs.add(voice.input(
                        "gas",
                        voice.times(store.count(), holds.value()),
                        holds.origin(),
                        "name",
                        store.tank().name()));
            }
        } else {
            hours.tanks()
                    .forEach(tank -> inputs.add(voice.input(
                            "capacity", tank.capacity().map(it -> it.both(voice.first())), "name", tank.name())));
            if (!sources.isEmpty()) {
                inputs.add(voice.input("level", hours.level().map(Rounding.NEAREST::print)));
            }
        }
        for (GeneratorHours.Burning row : burning) {
            switch (row.load()) {
                case HALF -> inputs.add(flowInput("burns-half", row, Generator.BURN_HALF));
                case FULL -> inputs.add(flowInput("burns-full", row, Generator.BURN_FULL));
                case THREE_QUARTERS -> {}
            }
        }
        inputs.add(voice.input(
                "altitude-loss",
                hours.altitudeLoss().map(it -> Rounding.NEAREST.print(100 * it.value(), 1, Symbol.PERCENT))));
        inputs.add(altitudeInput("altitude-step", hours.altitudeStep()));
        inputs.add(altitudeInput("altitude-from", hours.altitudeFrom()));
        price.ifPresent(it -> inputs.add(voice.input(
                "price",
                voice.say(
                        it.per() == FuelPrice.Per.GALLON ? "price.gallon" : "price.liter",
                        "money",
                        money(it.amount(), it)),
                new Origin.Stated(prices().orElseThrow().facts(), FuelPrice.key(hours.fuel())))));
        return inputs;
    }

    private Generator facts() {
        return hours.generator();
    }

    private <T> Given<T> stated(Key<T> key) {
        return Given.stated(facts().facts(), key);
    }

    private <Q extends Quantity> Given<Amount> shown(Key<Q> key) {
        return voice.shown(stated(key));
    }

    private Input flowInput(String key, GeneratorHours.Burning row, Key<?> fact) {
        return voice.input(key, flow(row), new Origin.Stated(facts().facts(), fact));
    }

    private Input altitudeInput(String key, Given<Meters> height) {
        return voice.input(key, altitude(height.value()), height.origin());
    }

    private Optional<FuelPrices> prices() {
        return hours.coach().fleet().facts().facts().find(FleetFacts.FUEL_PRICES);
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        steps.add(voice.say(
                legs.legs() > 1 ? "step.amps.two" : "step.amps.one",
                "power",
                Rounding.NEAREST.print(power),
                "volts",
                legs.volts().amount(voice.first()),
                "legs",
                legs.legs(),
                "amps",
                perLeg(power)));
        for (GeneratorHours.Source source : sources) {
            steps.add(voice.say(
                    "step.source",
                    "name",
                    source.name(),
                    "working",
                    working(source),
                    "fuel",
                    Rounding.DOWN.print(source.full(), voice.first())));
        }
        for (GeneratorHours.Burning row : sources.isEmpty() ? List.<GeneratorHours.Burning>of() : burning) {
            steps.add(voice.say(
                    "step.hours",
                    "load",
                    load(row),
                    "fuel",
                    Rounding.DOWN.print(hours.reached(), voice.first()),
                    "flow",
                    flow(row),
                    "hours",
                    lasts(row)));
        }
        Meters high = hours.heights().get(2);
        Watts left = hours.at(high);
        steps.add(voice.say(
                "step.altitude",
                "altitude",
                altitude(high),
                "power",
                Rounding.NEAREST.print(power),
                "loss",
                Rounding.NEAREST.print(100 * (1 - left.value() / power.value()), 1, Symbol.PERCENT),
                "left",
                side(left).print(left)));
        return steps;
    }

    private String working(GeneratorHours.Source source) {
        if (source instanceof GeneratorHours.Source.OfGas gas) {
            return voice.say(
                    "working.gas",
                    "holds",
                    voice.times(
                            gas.store().count(),
                            gas.store().holds(voice.first()).value()),
                    "usable",
                    Rounding.NEAREST.print(gas.store().usable().value()));
        }
        GeneratorHours.Source.OfFuel fuel = (GeneratorHours.Source.OfFuel) source;
        return voice.say(
                "working.fuel",
                "capacity",
                fuel.tank().capacity().value().both(voice.first()),
                "level",
                Rounding.NEAREST.print(fuel.level()));
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        if (sources.isEmpty()) {
            assumed.add(voice.say("assumed.no-tank"));
        } else if (burning.isEmpty()) {
            assumed.add(voice.say("assumed.use-unknown"));
        } else {
            assumed.add(voice.say(hours.gas() ? "assumed.gas" : "assumed.tank"));
        }
        if (!hours.gas() && !sources.isEmpty()) {
            assumed.add(voice.say("assumed.pick-up"));
        }
        assumed.add(voice.say("assumed.thin-air"));
        price.flatMap(it -> prices())
                .flatMap(prices -> prices.facts().find(FuelPrices.NOTED_ON))
                .ifPresent(day -> assumed.add(voice.say(
                        "assumed.price", "day", new Wording(hours.coach(), voice.words()).of(Type.DAY, day))));
        if (legs.legs() > 1) {
            assumed.add(voice.say("assumed.legs"));
        }
        return assumed;
    }

    /** {@code 0.53 gal/h (2.1 L/h)}: hundredths, as the plates have them. */
    private String flow(GeneratorHours.Burning row) {
        return voice.amount(Rounding.UP.print(row.burned(), voice.first()));
    }
}
