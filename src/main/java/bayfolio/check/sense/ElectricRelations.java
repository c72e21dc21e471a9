package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.error;
import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.fact.Facts;
import bayfolio.measure.Amps;
import bayfolio.measure.Quantity;
import bayfolio.measure.SquareMillimeters;
import bayfolio.model.Adapter;
import bayfolio.model.Appliance;
import bayfolio.model.Bank;
import bayfolio.model.Charger;
import bayfolio.model.Circuit;
import bayfolio.model.Coach;
import bayfolio.model.Connection;
import bayfolio.model.Cord;
import bayfolio.model.Gauge;
import bayfolio.model.Generator;
import bayfolio.model.Inverter;
import bayfolio.model.Item;
import bayfolio.model.Load;
import bayfolio.model.Region;
import bayfolio.model.Solar;
import bayfolio.model.Spot;
import bayfolio.model.Supply;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.reckon.power.Shore;
import bayfolio.source.Located;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Electric facts that must agree. */
final class ElectricRelations {
    /** In seconds; what tells that it has power by a lamp of its own may take so long. */
    private static final double AT_ONCE = 8;

    private static final Pattern COMPRESSOR = Pattern.compile(
            "(?i)\\b(?:air condition\\w*|heat pump|fridge|refrigerator|compressor|cool\\w*|roof unit|boiler|heater)s?\\b");

    private static final Pattern OF_THE_CHASSIS = Pattern.compile("(?i)\\b(?:engine|chassis|starter) batter");

    private static final Pattern OF_THE_HOUSE = Pattern.compile("(?i)\\b(?:house|living[ -]area) batter");

    private static final Pattern COUNTED =
            Pattern.compile("(?i)\\b(" + String.join("|", FigureAgainstFact.NUMBERS.subList(1, 9))
                    + ")(?: [0-9]+ ?[VA]h?)?(?: \\w+)? (?:batter|side by side|in a row)");

    private static final Pattern MILLIAMPS = Pattern.compile("\\b[0-9]+ ?mA\\b");

    private static final Pattern SHED =
            Pattern.compile("(?i)\\b(?:shed|sheds|drop|drops|dropped|manage[sd]?|management|held back)\\b");

    private static final String READ_BOTH = "Read both again, on the plates.";

    /** NEC article 551: 15, 20 and 30 A at 120 V, 50 A at 120/240 V on two legs. */
    private static final Set<Double> NORTH_AMERICAN = Set.of(15.0, 20.0, 30.0, 50.0);

    /** IEC 60364-7-708 and national annexes; the outlets are those of EN 60309-2. */
    private static final Set<Double> EUROPEAN = Set.of(3.0, 4.0, 6.0, 8.0, 10.0, 13.0, 16.0, 32.0);

    /** Of 240 V: the flat pins of AS/NZS 3112, and the round plugs of Europe. */
    private static final Set<Double> OF_240_VOLTS = Set.of(10.0, 15.0, 16.0, 32.0);

    /** Sizes of breakers: NEC 240.6 and IEC 60898, as far as coaches have them. */
    private static final Set<Double> BREAKERS = Set.of(10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0);

    private static final Set<Double> EUROPEAN_BREAKERS =
            Set.of(2.0, 3.0, 4.0, 6.0, 8.0, 10.0, 13.0, 16.0, 20.0, 25.0, 32.0);

    /** The thinnest copper of a cord by the size of its supply: NEC table 400.5(A), EN 60309 cords of H07RN-F. */
    private static final Map<Double, Double> THINNEST = Map.of(
            15.0, 2.08, 20.0, 3.31, 30.0, 5.26, 50.0, 13.3, 6.0, 1.5, 10.0, 1.5, 13.0, 1.5, 16.0, 2.5, 32.0, 6.0);

    private static final Pattern PAST_THE_SWITCH =
            Pattern.compile("(?i)\\b(?:straight from|ahead of|past) the (?:house )?batter");

    private static final Pattern AMPS = Pattern.compile("\\b([0-9]+(?:\\.[0-9]+)?) ?A\\b");

    static final List<Relation<?, ?>> ALL = List.of(
            warning(
                    "by-inverter-or-not",
                    inverterCircuits(),
                    (circuit, control) ->
                            circuit.facts().find(Circuit.BY_INVERTER).orElse(false)
                                    == control.facts().all(Switch.FEEDS).contains(circuit.id()),
                    "`by-inverter` of {about} does not go with what {2} is said to feed",
                    "Switch the inverter off without other power, and see what goes off."),
            warning(
                    "past-the-switch-by-its-words",
                    Pairs.own(Circuit.SHAPE, Circuit.SERVES)
                            .where((serves, circuit) ->
                                    PAST_THE_SWITCH.matcher(serves).find()),
                    (serves, circuit) ->
                            circuit.facts().find(Circuit.PAST_BATTERY_SWITCH).orElse(false),
                    "{about} is wired past the battery switch by its words, and `past-battery-switch` says no",
                    "Switch the house battery off, and see whether it goes on."),
            error(
                    "switch-of-another-battery",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Bank.SHAPE),
                    (it, bank) -> !(it.roles().contains("chassis-battery-switch")
                                    && bank.roles().contains("house-bank")
                            || it.roles().contains("house-battery-switch")
                                    && bank.roles().contains("chassis-bank")),
                    "{about} is said to connect {2}, which the role of the other switch does",
                    "Turn it, and see which battery is cut off."),
            warning(
                    "gauge-of-another-battery",
                    Pairs.toEach(Gauge.SHAPE, Gauge.OF, Bank.SHAPE),
                    (gauge, bank) -> gauge.facts().all(Gauge.OF).size() > 1
                            || !(bank.roles().contains("chassis-bank")
                                            && OF_THE_HOUSE
                                                    .matcher(gauge.facts().get(Gauge.SHOWS))
                                                    .find()
                                    || bank.roles().contains("house-bank")
                                            && OF_THE_CHASSIS
                                                    .matcher(gauge.facts().get(Gauge.SHOWS))
                                                    .find()),
                    "{about} is said to show {2}, and its words name the other battery",
                    "Look what it shows, or mend the name."),
            warning(
                    "inlet-without-its-cord",
                    Pairs.own(Connection.SHAPE, Connection.FITS)
                            .where((fits, inlet) -> inlet.roles().contains("shore-inlet"))
                            .with((fits, records) -> fits.stream()
                                    .flatMap(id -> records.named(Item.SHAPE, id.value()).stream())
                                    .toList()),
                    (items, inlet) -> items.isEmpty()
                            || items.stream().anyMatch(item -> item.roles().contains("shore-cord")),
                    "{about} is said to take no power cord",
                    "Name the cord that fits it."),
            warning(
                    "breaker-of-another-battery",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Switch.SHAPE),
                    (it, other) -> !(Subjects.called(it, "house")
                                    && other.roles().contains("chassis-battery-switch")
                            || Subjects.called(it, "chassis") && other.roles().contains("house-battery-switch")),
                    "{about} is named after one battery, and said to feed {2}, which is that of the other",
                    "Follow its cable, or mend the name."),
            warning(
                    "battery-by-its-words",
                    Pairs.toOne(Circuit.SHAPE, Circuit.BANK, Bank.SHAPE),
                    (circuit, bank) -> !bank.roles().contains("house-bank")
                            || !OF_THE_CHASSIS
                                    .matcher(
                                            circuit.facts().find(Circuit.SERVES).orElse(""))
                                    .find(),
                    "{about} is said to hang on {2}, and its words name the battery of the engine",
                    "Mend `bank`, or `serves`."),
            note(
                    "batteries-counted-otherwise",
                    Pairs.own(Bank.SHAPE, Bank.COUNT),
                    (count, bank) ->
                            counted(bank.spot().flatMap(Spot::where).orElse("")).allMatch(count::equals),
                    "`count` of {about} is {1}, and its `where` has another number of batteries",
                    "Count them again."),
            note(
                    "breaker-that-waits",
                    Pairs.own(Switch.SHAPE, Switch.DELAY).where((delay, it) -> it.make() == Switch.Make.BREAKER_HANDLE),
                    (delay, it) -> delay.value() <= AT_ONCE
                            || it.facts()
                                    .find(Switch.STOPS)
                                    .filter(COMPRESSOR.asPredicate())
                                    .isPresent(),
                    "the effect of {about} is seen after {1}, though nothing behind it has to wait",
                    "A compressor waits for minutes; everything else is there at once. Watch it."),
            note(
                    "milliamps-on-a-plate",
                    Pairs.onCoach(Switch.SHAPE, Switch.PLATE)
                            .where((it, coach) -> MILLIAMPS
                                    .matcher(it.facts().get(Switch.PLATE))
                                    .find()),
                    (it, coach) -> it.holdsOneOf(Set.of("rcd", "gfci-outlet")),
                    "the plate of {about} has a figure in mA, which stands on what watches for leaks, and its role is none of those",
                    "Read the plate again, or give it the role `rcd` or `gfci-outlet`."),
            note(
                    "load-management-by-nothing",
                    Pairs.onCoach(Unit.SHAPE, Unit.LOAD_MANAGEMENT)
                            .where((unit, coach) -> unit.facts().get(Unit.LOAD_MANAGEMENT)),
                    (unit, coach) -> unit.things()
                            .filter(it -> it instanceof Gauge && it.roles().contains("load-meter"))
                            .flatMap(it -> Stream.of(Gauge.SHOWS, Gauge.MEANS, Gauge.TRUTH)
                                    .flatMap(key -> it.facts().find(key).stream()))
                            .anyMatch(text -> SHED.matcher(text).find()),
                    "`load-management` is yes, and nothing that holds the role `load-meter` tells what is shed, and when",
                    "Describe its display, or say `no`."),
            error(
                    "supply-of-no-such-size",
                    Pairs.onCoach(Supply.SHAPE, Supply.AMPS)
                            .where((supply, coach) -> supply.source() == Supply.Source.SHORE),
                    (supply, coach) -> there(supply, coach.unit().region()),
                    "{about} is of a size that no site of this region has",
                    "Read the plug of the coach: 15, 20 or 30 A of 120 V on one leg or 50 A on two in North America, "
                            + "230 or 240 V on one leg elsewhere."),
            error(
                    "cord-too-thin",
                    Pairs.onCoach(Cord.SHAPE, Cord.CONDUCTOR),
                    (cord, coach) -> thickEnough(cord.facts().get(Cord.CONDUCTOR), coach),
                    "the cord is too thin for the supply of this coach",
                    "Read the print on its sheath: 14 AWG for 15 A, 12 for 20 A, 10 for 30 A, 6 for 50 A; 2.5 mm² for 16 A."),
            error(
                    "plug-of-another-size",
                    Pairs.onCoach(Cord.SHAPE, Cord.PLUG),
                    (cord, coach) -> figures(cord.facts().get(Cord.PLUG))
                            .allMatch(amps -> Shore.size(coach.unit())
                                    .map(size -> size.value() == amps)
                                    .orElse(true)),
                    "the plug of the cord is not of the size of the shore supply",
                    READ_BOTH),
            warning(
                    "adapter-to-the-same-size",
                    Pairs.within(Adapter.SHAPE, Adapter.FROM, Adapter.TO),
                    (from, to) -> from.value() != to.value(),
                    "{about} leads from {1} to {2} and so adapts nothing",
                    READ_BOTH),
            error(
                    "adapter-of-another-voltage",
                    Pairs.across(Adapter.SHAPE, Adapter.VOLTS, Supply.SHAPE, Supply.VOLTS),
                    (adapter, supply) -> adapter.value() == supply.value(),
                    "{about} is for {1} and the coach for {2}",
                    READ_BOTH),
            error(
                    "adapter-joins-nothing",
                    Pairs.onCoach(Adapter.SHAPE, Adapter.JOINS_LEGS),
                    (adapter, coach) -> joinsRightly(adapter.facts(), coach),
                    "{about} says wrongly whether it joins two legs",
                    "Say `yes` where the coach has two legs and the outlet one, and nowhere else."),
            error(
                    "inverter-and-its-supply",
                    Pairs.records(Inverter.SHAPE, Inverter.RATING, Supply.SHAPE, Supply.AMPS)
                            .where((inverter, supply) -> supply.source() == Supply.Source.INVERTER),
                    (inverter, supply) -> between(
                            power(supply.facts())
                                    / inverter.facts().get(Inverter.RATING).value(),
                            0.85,
                            1.06),
                    "the inverter has a rating that its supply does not agree with",
                    "Rating is amps times volts of the supply. " + READ_BOTH),
            error(
                    "generator-and-its-supply",
                    Pairs.onCoach(Generator.SHAPE, Generator.POWER),
                    (generator, coach) -> coach.unit().supplies().stream()
                            .filter(it -> it.source() == Supply.Source.GENERATOR)
                            .filter(it -> it.facts().has(Supply.AMPS))
                            .findFirst()
                            .map(it -> power(it.facts())
                                    >= 0.85
                                            * generator
                                                    .facts()
                                                    .get(Generator.POWER)
                                                    .value())
                            .orElse(true),
                    "the generator has a power that its supply does not agree with",
                    "Power is amps times volts times legs of the supply. " + READ_BOTH),
            error(
                    "fuse-below-inverter",
                    Pairs.records(Inverter.SHAPE, Inverter.RATING, Bank.SHAPE, Bank.FUSE)
                            .where((inverter, bank) -> bank.roles().contains("house-bank")),
                    (inverter, bank) -> inverter.facts().get(Inverter.RATING).value()
                                    / bank.facts().get(Bank.VOLTS).value()
                                    / inverter.facts()
                                            .find(Inverter.EFFICIENCY)
                                            .map(Quantity::value)
                                            .orElse(0.9)
                            <= bank.facts().get(Bank.FUSE).value(),
                    "at its full rating the inverter draws more than the main fuse of the batteries lets through",
                    READ_BOTH),
            warning(
                    "bank-small-for-inverter",
                    Pairs.records(Inverter.SHAPE, Inverter.RATING, Bank.SHAPE, Bank.AMP_HOURS)
                            .where((inverter, bank) -> bank.roles().contains("house-bank")),
                    (inverter, bank) -> inverter.facts().get(Inverter.RATING).value()
                                    / bank.facts().get(Bank.VOLTS).value()
                                    / 0.9
                                    / bank.facts().get(Bank.AMP_HOURS).value()
                            <= (lithium(bank) ? 1.1 : 0.7),
                    "the batteries are small for an inverter of this rating",
                    READ_BOTH),
            error(
                    "surge-below-rating",
                    Pairs.within(Inverter.SHAPE, Inverter.SURGE, Inverter.RATING),
                    (surge, rating) -> between(surge.value() / rating.value(), 1, 4),
                    "the inverter gives {1} for a moment and {2} on and on, which do not go together",
                    READ_BOTH),
            warning(
                    "idle-draw-of-an-inverter",
                    Pairs.within(Inverter.SHAPE, Inverter.IDLE_DRAW, Inverter.RATING),
                    (idle, rating) -> idle.value() <= 0.035 * rating.value(),
                    "the inverter takes {1} for itself, at a rating of {2}",
                    READ_BOTH),
            error(
                    "circuit-and-battery-voltage",
                    Pairs.referred(Circuit.SHAPE, Circuit.VOLTS, Circuit.BANK, Bank.SHAPE, Bank.VOLTS),
                    (circuit, bank) -> between(circuit.value() / bank.value(), 0.88, 1.12),
                    "{about} is of {1} and hangs on batteries of {2}",
                    READ_BOTH),
            warning(
                    "bank-of-no-such-voltage",
                    Pairs.own(Bank.SHAPE, Bank.VOLTS),
                    (volts, bank) -> (lithium(bank)
                                    ? Set.of(12.0, 12.8, 13.2, 24.0, 25.6, 26.4, 36.0, 38.4, 48.0, 51.2)
                                    : Set.of(12.0, 24.0, 36.0, 48.0))
                            .contains(volts.value()),
                    "{about} is of {1}, and no such batteries are made",
                    "Say the nominal voltage of the bank, such as 12 V, or 12.8 V for lithium."),
            warning(
                    "battery-of-unlikely-size",
                    Pairs.own(Bank.SHAPE, Bank.AMP_HOURS),
                    (hours, bank) -> between(
                            hours.value()
                                    * bank.facts().get(Bank.VOLTS).value()
                                    / bank.facts().find(Bank.COUNT).orElse(1),
                            390,
                            5700),
                    "{about} has {1}, which makes each of its batteries too small or too big",
                    "Say the capacity of the whole bank, and `count` as batteries are."),
            error(
                    "usable-share-of-the-chemistry",
                    Pairs.within(Bank.SHAPE, Bank.USABLE, Bank.CHEMISTRY),
                    (usable, chemistry) ->
                            chemistry == Bank.Chemistry.LITHIUM ? usable.value() >= 0.5 : usable.value() <= 0.61,
                    "{about} has {1} to be used, which batteries of {2} do not stand",
                    "Lead gives about half of what it holds, lithium 80 to 90 %."),
            note(
                    "frost-limit-of-lead",
                    Pairs.within(Bank.SHAPE, Bank.FROST_LIMIT, Bank.CHEMISTRY),
                    (limit, chemistry) -> chemistry == Bank.Chemistry.LITHIUM,
                    "{about} takes no charge below {1}, which is said of lithium and not of {2}",
                    READ_BOTH),
            warning(
                    "charger-and-bank",
                    Pairs.records(Charger.SHAPE, Charger.RATING, Bank.SHAPE, Bank.AMP_HOURS)
                            .where((charger, bank) -> bank.roles().contains("house-bank")),
                    (charger, bank) -> between(
                            charger.facts().get(Charger.RATING).value()
                                    / bank.facts().get(Bank.AMP_HOURS).value(),
                            0.04,
                            lithium(bank)
                                    ? 0.55
                                    : bank.facts().get(Bank.CHEMISTRY) == Bank.Chemistry.AGM ? 0.42 : 0.28),
                    "the charger gives too much or too little for these batteries",
                    READ_BOTH),
            error(
                    "charger-limit-above-rating",
                    Pairs.within(Charger.SHAPE, Charger.LIMIT, Charger.RATING),
                    (limit, rating) -> limit.value() <= rating.value(),
                    "the charger is limited to {1} and gives {2} at most, so the limit does nothing",
                    READ_BOTH),
            warning(
                    "more-sun-than-the-bank-takes",
                    Pairs.records(Solar.SHAPE, Solar.RATING, Bank.SHAPE, Bank.AMP_HOURS)
                            .where((solar, bank) -> bank.roles().contains("house-bank")),
                    (solar, bank) -> solar.facts().get(Solar.RATING).value()
                                    / (1.1 * bank.facts().get(Bank.VOLTS).value())
                            <= 0.5 * bank.facts().get(Bank.AMP_HOURS).value(),
                    "the solar panels give more than these batteries take",
                    READ_BOTH),
            error(
                    "half-load-against-full-load",
                    Pairs.within(Generator.SHAPE, Generator.BURN_HALF, Generator.BURN_FULL),
                    (half, full) -> between(half.value() / full.value(), 0.4, 0.85),
                    "the generator burns {1} at half load and {2} at full load, which do not go together",
                    READ_BOTH),
            warning(
                    "generator-burns-too-much-or-too-little",
                    Pairs.own(Generator.SHAPE, Generator.BURN_FULL),
                    (full, generator) -> burns(full.value(), generator.facts(), 0.45, 0.95, 0.24, 0.48, 0.6, 1.2),
                    "the generator burns {1} at full load, which does not go with its power",
                    READ_BOTH),
            warning(
                    "generator-burns-unlikely-at-half-load",
                    Pairs.own(Generator.SHAPE, Generator.BURN_HALF),
                    (half, generator) -> burns(half.value(), generator.facts(), 0.24, 0.58, 0.13, 0.32, 0.36, 0.82),
                    "the generator burns {1} at half load, which does not go with its power",
                    READ_BOTH),
            error(
                    "start-held-longer-than-allowed",
                    Pairs.records(Switch.SHAPE, Switch.HOLD, Generator.SHAPE, Generator.CRANK)
                            .where((control, generator) -> control.roles().contains("generator-control")),
                    (control, generator) -> control.facts().get(Switch.HOLD).value()
                            <= generator.facts().get(Generator.CRANK).value(),
                    "{about} is to be held longer than the starter of the generator may crank",
                    READ_BOTH),
            error(
                    "generator-of-more-legs-than-the-coach",
                    Pairs.onCoach(Generator.SHAPE, Generator.LEGS),
                    (generator, coach) -> Shore.of(coach.unit()).isEmpty()
                            || Shore.of(coach.unit()).stream()
                                    .anyMatch(it -> it.facts().get(Supply.LEGS)
                                            >= generator.facts().get(Generator.LEGS)),
                    "the generator has more legs than the coach takes from a site",
                    READ_BOTH),
            error(
                    "circuit-without-leg",
                    Pairs.onCoach(Circuit.SHAPE, Circuit.CURRENT)
                            .where((circuit, coach) -> circuit.facts().get(Circuit.CURRENT) == Circuit.Current.AC
                                    && Shore.of(coach.unit()).stream()
                                            .anyMatch(it -> it.facts().get(Supply.LEGS) > 1)),
                    (circuit, coach) -> circuit.facts().has(Circuit.LEG)
                            || circuit.facts().has(Circuit.FED_THROUGH)
                            || circuit.facts().find(Circuit.BY_INVERTER).orElse(false),
                    "{about} hangs on one of two legs, and does not say on which",
                    "State `leg`, as the panel has it."),
            warning(
                    "start-current-unlikely",
                    Pairs.within(Load.SHAPE, Load.START_AMPS, Load.AMPS),
                    (start, running) -> start.value() <= 8 * running.value(),
                    "{about} starts with {1} and runs with {2}, which hardly go together",
                    READ_BOTH),
            warning(
                    "breaker-of-no-such-size",
                    Pairs.onCoach(Circuit.SHAPE, Circuit.BREAKER)
                            .where((circuit, coach) -> circuit.facts().get(Circuit.CURRENT) == Circuit.Current.AC),
                    (circuit, coach) -> (coach.unit().region() == Region.NORTH_AMERICA ? BREAKERS : EUROPEAN_BREAKERS)
                            .contains(circuit.facts().get(Circuit.BREAKER).value()),
                    "{about} has a breaker of a size that is not made",
                    "Read the figure on its handle."),
            note(
                    "always-on-for-some-hours",
                    Pairs.own(Load.SHAPE, Load.A_NIGHT)
                            .where((hours, load) ->
                                    load.facts().find(Load.ALWAYS_ON).orElse(false)),
                    (hours, load) -> hours.value() >= 8 * 3600,
                    "{about} is always on, and for {1} of a night",
                    "Leave out `a-night`; or say under `accept` that it is the share of the time that it draws."),
            error(
                    "reach-beyond-the-cord",
                    Pairs.records(Item.SHAPE, Item.LENGTH, Cord.SHAPE, Cord.LENGTH)
                            .where((item, cord) -> item.roles().contains("shore-cord")),
                    (item, cord) -> between(
                            item.facts().get(Item.LENGTH).value()
                                    / cord.facts().get(Cord.LENGTH).value(),
                            0.98,
                            1.02),
                    "{about} has another length than `cord`",
                    "Measure it, and state it once."),
            error(
                    "energy-of-the-kind",
                    Pairs.within(Appliance.SHAPE, Appliance.ENERGY, Appliance.WHAT),
                    (energy, what) -> Energies.fit(
                            what, energy.stream().map(Located::value).toList()),
                    "{about} is a {2} and runs on what no such appliance runs on",
                    "A two-way fridge runs on gas and ac, a three-way one on dc, too; compressor and residential "
                            + "fridges, induction hobs and microwaves on no gas; gas hobs, ovens and furnaces on gas; "
                            + "beds, fans, toilets and pumps on no fuel."),
            error(
                    "energy-of-the-kind",
                    Pairs.own(Appliance.SHAPE, Appliance.ENERGY)
                            .where((energy, it) ->
                                    it.facts().get(Appliance.WHAT).charges()),
                    (energy, it) -> Energies.drivenAsCalled(
                            energy.stream().map(Located::value).toList(), it),
                    "{about} is a charger that runs on what its name does not say",
                    "An alternator, a booster or a relay charges from the engine, and no other charger does."),
            warning(
                    "load-without-its-energy",
                    Pairs.toOne(Load.SHAPE, Load.APPLIANCE, Appliance.SHAPE)
                            .where((load, appliance) -> appliance.facts().has(Appliance.ENERGY))
                            .with(Drawn::new),
                    (drawn, appliance) -> drawn.from()
                            .map(appliance.facts().all(Appliance.ENERGY)::contains)
                            .orElse(true),
                    "{about} draws from a circuit of the other current than {2} runs on",
                    "Look which circuit it hangs on, and what is named under `energy` of the appliance."));

    /** A load, and what its circuit carries. */
    private record Drawn(Load load, Records records) {
        Optional<Appliance.Energy> from() {
            return load.facts()
                    .find(Load.CIRCUIT)
                    .flatMap(id -> records.named(Circuit.SHAPE, id))
                    .flatMap(circuit -> circuit.facts().find(Circuit.CURRENT))
                    .map(Energies::from);
        }
    }

    private ElectricRelations() {}

    private static Stream<Integer> counted(String where) {
        return COUNTED.matcher(where)
                .results()
                .map(it -> FigureAgainstFact.NUMBERS.indexOf(it.group(1).toLowerCase(Locale.ROOT)));
    }

    /** AC circuits, each with the control of the inverter, if that names any. */
    private static Pairs<Circuit, Switch> inverterCircuits() {
        return records -> records.holders(Switch.SHAPE, "inverter-control")
                .filter(control -> control.facts().all(Switch.FEEDS).stream()
                        .anyMatch(id -> records.named(Circuit.SHAPE, id).isPresent()))
                .limit(1)
                .flatMap(control -> records.of(Circuit.SHAPE)
                        .filter(circuit -> circuit.carries(Circuit.Current.AC))
                        .map(circuit -> Pairs.Pair.of(
                                circuit,
                                circuit.facts().has(Circuit.BY_INVERTER)
                                        ? circuit.facts().at(Circuit.BY_INVERTER)
                                        : circuit.at(),
                                control)));
    }

    private static boolean there(Supply supply, Region region) {
        Facts facts = supply.facts();
        double amps = facts.get(Supply.AMPS).value();
        return region == Region.NORTH_AMERICA
                ? facts.get(Supply.VOLTS).value() == 120
                        && NORTH_AMERICAN.contains(amps)
                        && facts.get(Supply.LEGS) == (amps == 50 ? 2 : 1)
                : facts.get(Supply.LEGS) == 1
                        && (facts.get(Supply.VOLTS).value() == 230 && EUROPEAN.contains(amps)
                                || facts.get(Supply.VOLTS).value() == 240 && OF_240_VOLTS.contains(amps));
    }

    private static boolean thickEnough(SquareMillimeters conductor, Coach coach) {
        return Shore.size(coach.unit())
                .map(Amps::value)
                .map(THINNEST::get)
                .map(thinnest -> conductor.value() >= 0.97 * thinnest)
                .orElse(true);
    }

    private static Stream<Double> figures(String text) {
        return AMPS.matcher(text).results().map(it -> Double.valueOf(it.group(1)));
    }

    private static boolean joinsRightly(Facts adapter, Coach coach) {
        boolean two = Shore.of(coach.unit()).stream().anyMatch(it -> it.facts().get(Supply.LEGS) > 1);
        return adapter.get(Adapter.JOINS_LEGS)
                == (two && adapter.get(Adapter.FROM).value() < 50);
    }

    private static double power(Facts supply) {
        return supply.get(Supply.AMPS).value()
                * supply.get(Supply.VOLTS).value()
                * supply.find(Supply.LEGS).orElse(1);
    }

    private static boolean lithium(Bank bank) {
        return bank.facts().get(Bank.CHEMISTRY) == Bank.Chemistry.LITHIUM;
    }

    /** Liters an hour and kilowatt of rating, by manuals and consumption charts. */
    private static boolean burns(
            double liters,
            Facts generator,
            double leastGasoline,
            double mostGasoline,
            double leastDiesel,
            double mostDiesel,
            double leastGas,
            double mostGas) {
        double each = liters / (generator.get(Generator.POWER).value() / 1000);
        return switch (generator.get(Generator.FUEL)) {
            case GASOLINE -> between(each, leastGasoline, mostGasoline);
            case DIESEL -> between(each, leastDiesel, mostDiesel);
            case LP_GAS -> between(each, leastGas, mostGas);
        };
    }

    static boolean between(double figure, double least, double most) {
        return figure >= least - 1e-9 && figure <= most + 1e-9;
    }
}
