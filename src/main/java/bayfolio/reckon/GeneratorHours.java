package bayfolio.reckon;

import bayfolio.measure.Liters;
import bayfolio.measure.LitersPerHour;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.Rounding;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.model.Coach;
import bayfolio.model.FleetFacts;
import bayfolio.model.FuelPrices;
import bayfolio.model.Generator;
import bayfolio.model.Region;
import bayfolio.model.Tank;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** How long the generator runs, what it gives at altitude, and what an hour costs. */
public final class GeneratorHours {
    private static final String ASKED = "How long does the generator run?";
    private static final double FOOT = 0.3048;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.US);

    private final Coach coach;
    private final Generator generator;
    private final MeasureSystem first;
    private final Watts power;
    private final PerLeg legs;
    private final List<Source> sources;
    private final List<Row> rows;
    private final Optional<FuelPrice> price;

    /**
     * What it draws from.
     *
     * @param full what it can burn of a full one
     * @param working how that comes about
     */
    private record Source(String name, Liters full, String working) {}

    private record Row(String load, LitersPerHour burned) {}

    private GeneratorHours(Coach coach, Generator generator) {
        this.coach = coach;
        this.generator = generator;
        this.first = coach.unit().region().first();
        this.power = generator.facts().get(Generator.POWER);
        this.legs = new PerLeg(
                generator.facts().get(Generator.VOLTS), generator.facts().get(Generator.LEGS));
        this.sources = sources();
        this.rows = rows();
        this.price = FuelPrice.of(coach.fleet(), fuel());
    }

    public static Reckoned of(Coach coach) {
        if (coach.unit().generator().isEmpty()) {
            return new Reckoned.Lacking(Question.GENERATOR_HOURS, ASKED, List.of());
        }
        Generator generator = coach.unit().generator().get();
        List<String> lacking = lacking(generator);
        return lacking.isEmpty()
                ? new GeneratorHours(coach, generator).reckoning()
                : new Reckoned.Lacking(Question.GENERATOR_HOURS, ASKED, lacking);
    }

    static List<String> lacking(Coach coach) {
        return coach.unit().generator().map(GeneratorHours::lacking).orElse(List.of());
    }

    private static List<String> lacking(Generator generator) {
        List<String> lacking = new ArrayList<>();
        if (generator.facts().find(Generator.POWER).map(Watts::value).orElse(0.0) <= 0) {
            lacking.add("rated output of the generator");
        }
        if (generator.facts().find(Generator.VOLTS).map(Volts::value).orElse(0.0) <= 0) {
            lacking.add("volts of the generator");
        }
        if (!generator.facts().has(Generator.LEGS)) {
            lacking.add("legs of the generator");
        }
        if (!generator.facts().has(Generator.FUEL)) {
            lacking.add("fuel of the generator");
        }
        return lacking;
    }

    private Generator.Fuel fuel() {
        return generator.facts().get(Generator.FUEL);
    }

    private Share level() {
        return generator.facts().find(Generator.PICK_UP).orElse(PickUp.USUAL);
    }

    private boolean gas() {
        return fuel() == Generator.Fuel.LP_GAS;
    }

    private List<Source> sources() {
        Stream<Source> all = gas()
                ? GasStore.all(coach).stream()
                        .map(store -> new Source(
                                store.tank().name(),
                                store.liquid(),
                                store.holds(first) + " × " + Rounding.NEAREST.print(store.usable())))
                : FuelTank.all(coach, fuel() == Generator.Fuel.DIESEL ? Tank.Contents.DIESEL : Tank.Contents.GASOLINE)
                        .stream()
                        .map(tank -> new Source(
                                tank.name(),
                                new PickUp(tank.capacity(), level()).above(tank.capacity()),
                                tank.capacity().both(first) + " less " + Rounding.NEAREST.print(level())));
        return all.filter(source -> source.full().value() > 0).toList();
    }

    private List<Row> rows() {
        Optional<LitersPerHour> half =
                generator.facts().find(Generator.BURN_HALF).filter(burned -> burned.value() > 0);
        Optional<LitersPerHour> full =
                generator.facts().find(Generator.BURN_FULL).filter(burned -> burned.value() > 0);
        List<Row> rows = new ArrayList<>();
        half.ifPresent(burned -> rows.add(new Row("half load", burned)));
        if (half.isPresent() && full.isPresent()) {
            rows.add(new Row(
                    "three quarters",
                    new ChargingFuel(power, half.get(), full.get()).at(new Watts(0.75 * power.value()))));
        }
        full.ifPresent(burned -> rows.add(new Row("full load", burned)));
        return rows;
    }

    private Reckoned reckoning() {
        List<Grid> grids = new ArrayList<>();
        fuelGrid().ifPresent(grids::add);
        grids.add(altitudes());
        return new Reckoned.Reckoning(
                Question.GENERATOR_HOURS,
                ASKED,
                answer(),
                grids,
                inputs(),
                "Amps on each leg = watts / volts / legs. Hours = fuel that it reaches / fuel use.",
                steps(),
                assumed(),
                "Amps: arithmetic. Altitude: a coach manual of 2004; generator manuals differ. Pick-up: an article on coach generators and a coach manual of 2002.",
                "A worn or dirty generator gives less and burns more. Fuel gauges are coarse.");
    }

    private String answer() {
        String amps = "It gives " + perLeg(power) + (legs.legs() > 1 ? " on each of two legs." : ".");
        if (sources.isEmpty() || rows.isEmpty()) {
            return amps;
        }
        String hours = rows.stream()
                .filter(row -> !row.load().startsWith("three"))
                .map(row -> hours(row) + " at " + row.load())
                .collect(Collectors.joining(", "));
        return names() + ", full: " + hours + ". " + amps;
    }

    private String names() {
        return sources.stream().map(Source::name).collect(Collectors.joining(" and "));
    }

    private Liters reached() {
        return sources.stream().map(Source::full).reduce(new Liters(0), Liters::plus);
    }

    private String hours(Row row) {
        return Rounding.DOWN.hours(Endurance.of(reached(), row.burned()));
    }

    private Optional<Grid> fuelGrid() {
        if (rows.isEmpty() || sources.isEmpty() && price.isEmpty()) {
            return Optional.empty();
        }
        List<String> head = new ArrayList<>(List.of("Load", "Burns"));
        if (!sources.isEmpty()) {
            head.add(gas() ? "Runs until empty" : "Runs until it stops");
        }
        price.ifPresent(it -> head.add("An hour costs"));
        return Optional.of(new Grid(
                sources.isEmpty() ? "Fuel" : "From full",
                head,
                rows.stream()
                        .map(row -> {
                            List<String> cells = new ArrayList<>(List.of(row.load(), flow(row.burned())));
                            if (!sources.isEmpty()) {
                                cells.add(hours(row));
                            }
                            price.ifPresent(it -> cells.add(it.hourly(row.burned())));
                            return cells;
                        })
                        .map(List::copyOf)
                        .toList()));
    }

    private Grid altitudes() {
        Derating derating = derating();
        return new Grid(
                "At altitude",
                List.of("Altitude", "Gives", legs.legs() > 1 ? "On each leg" : "Amps"),
                heights().stream()
                        .map(height -> {
                            Watts left = derating.at(height, power);
                            return List.of(altitude(height), side(left).print(left), perLeg(left));
                        })
                        .toList());
    }

    /** What the plate says is printed as it is; what is left of it as less. */
    private Rounding side(Watts left) {
        return left.equals(power) ? Rounding.NEAREST : Rounding.DOWN;
    }

    private String perLeg(Watts left) {
        return side(left).print(legs.amps(left));
    }

    private List<Meters> heights() {
        return (coach.unit().region() == Region.EUROPE
                        ? Stream.of(0.0, 750.0, 1500.0, 2250.0)
                        : Stream.of(0.0, 2500 * FOOT, 5000 * FOOT, 7500 * FOOT))
                .map(Meters::new)
                .toList();
    }

    private String altitude(Meters height) {
        if (height.value() == 0) {
            return "sea level";
        }
        String feet = Rounding.NEAREST.print(height.feet(), 0) + " ft";
        String meters = Rounding.NEAREST.print(height.value(), 0) + " m";
        return first == MeasureSystem.US ? feet + " (" + meters + ")" : meters + " (" + feet + ")";
    }

    private Derating derating() {
        return new Derating(
                generator.facts().find(Generator.ALTITUDE_LOSS).orElse(Derating.USUAL.loss()),
                generator
                        .facts()
                        .find(Generator.ALTITUDE_STEP)
                        .filter(step -> step.value() > 0)
                        .orElse(Derating.USUAL.step()),
                generator.facts().find(Generator.ALTITUDE_FROM).orElse(Derating.USUAL.from()));
    }

    private List<Input> inputs() {
        List<Input> inputs = new ArrayList<>();
        inputs.add(Input.described("Rated output", Rounding.NEAREST.print(power)));
        inputs.add(Input.described("Volts of one leg", legs.volts().in(first)));
        inputs.add(Input.described("Legs", String.valueOf(legs.legs())));
        generator
                .facts()
                .find(Generator.BREAKER)
                .ifPresent(breaker -> inputs.add(Input.described("Its breaker", breaker.in(first))));
        if (gas()) {
            GasStore.all(coach)
                    .forEach(store -> inputs.add(Input.described(store.tank().name(), store.holds(first))));
        } else {
            FuelTank.all(coach, fuel() == Generator.Fuel.DIESEL ? Tank.Contents.DIESEL : Tank.Contents.GASOLINE)
                    .forEach(tank -> inputs.add(Input.described(
                            tank.name() + ", capacity", tank.capacity().both(first))));
            if (!sources.isEmpty()) {
                String share = Rounding.NEAREST.print(level());
                inputs.add(
                        generator.facts().has(Generator.PICK_UP)
                                ? Input.described("Level at which it stops", share)
                                : Input.usual(
                                        "Level at which it stops",
                                        share,
                                        "article on coach generators; a coach's manual says an eighth to a quarter"));
            }
        }
        generator
                .facts()
                .find(Generator.BURN_HALF)
                .ifPresent(burned -> inputs.add(Input.described("Fuel use at half load", flow(burned))));
        generator
                .facts()
                .find(Generator.BURN_FULL)
                .ifPresent(burned -> inputs.add(Input.described("Fuel use at full load", flow(burned))));
        Derating derating = derating();
        String loss = Rounding.NEAREST.print(100 * derating.loss().value(), 1) + " %";
        inputs.add(
                generator.facts().has(Generator.ALTITUDE_LOSS)
                        ? Input.described("Loss with each step of altitude", loss)
                        : Input.usual("Loss with each step of altitude", loss, "coach manual of 2004"));
        inputs.add(
                generator.facts().has(Generator.ALTITUDE_STEP)
                        ? Input.described("Step of altitude", altitude(derating.step()))
                        : Input.usual("Step of altitude", altitude(derating.step()), "coach manual of 2004"));
        inputs.add(
                generator.facts().has(Generator.ALTITUDE_FROM)
                        ? Input.described("Nothing is lost up to", altitude(derating.from()))
                        : Input.usual("Nothing is lost up to", altitude(derating.from()), "coach manual of 2004"));
        price.ifPresent(it -> inputs.add(Input.described("Price of the fuel", it.print())));
        return inputs;
    }

    private List<String> steps() {
        List<String> steps = new ArrayList<>();
        steps.add(
                "Amps: " + Rounding.NEAREST.print(power) + " / " + legs.volts().in(first) + " / " + legs.legs() + " = "
                        + perLeg(power) + (legs.legs() > 1 ? " on each leg." : "."));
        for (Source source : sources) {
            steps.add(
                    source.name() + ": " + source.working() + " = " + Rounding.DOWN.print(source.full(), first) + ".");
        }
        for (Row row : sources.isEmpty() ? List.<Row>of() : rows) {
            steps.add("At " + row.load() + ": " + Rounding.DOWN.print(reached(), first) + " / " + flow(row.burned())
                    + " = " + hours(row) + ".");
        }
        Meters high = heights().get(2);
        Watts left = derating().at(high, power);
        steps.add("At " + altitude(high) + ": " + Rounding.NEAREST.print(power) + " less "
                + Rounding.NEAREST.print(100 * (1 - left.value() / power.value()), 1) + " % = "
                + side(left).print(left) + ".");
        return steps;
    }

    private List<String> assumed() {
        List<String> assumed = new ArrayList<>();
        if (sources.isEmpty()) {
            assumed.add("No tank of this fuel is known, so no hours are given.");
        } else if (rows.isEmpty()) {
            assumed.add("Nobody knows its fuel use, so no hours are given.");
        } else {
            assumed.add(
                    gas()
                            ? "The gas is full, and nothing else burns gas."
                            : "The tank is full, and you drive nowhere in between.");
        }
        if (!gas() && !sources.isEmpty()) {
            assumed.add("It stops by itself at its pick-up level. The rest is for the road.");
        }
        assumed.add("Thin air takes power evenly with altitude. Heat takes more.");
        price.flatMap(it -> coach.fleet().facts().facts().find(FleetFacts.FUEL_PRICES))
                .flatMap(prices -> prices.facts().find(FuelPrices.NOTED_ON))
                .ifPresent(day -> assumed.add("Fuel costs what it did near the depot on " + DAY.format(day) + "."));
        if (legs.legs() > 1) {
            assumed.add("Both legs are loaded alike. One leg gives no more than its own amps.");
        }
        return assumed;
    }

    /** {@code 0.53 gal/h (2.01 L/h)}: hundredths, as the plates have them. */
    private String flow(LitersPerHour flow) {
        String us = Rounding.UP.print(flow.gallons(), 2) + " gal/h";
        String metric = Rounding.UP.print(flow.value(), 1) + " L/h";
        return first == MeasureSystem.US ? us + " (" + metric + ")" : metric + " (" + us + ")";
    }
}
