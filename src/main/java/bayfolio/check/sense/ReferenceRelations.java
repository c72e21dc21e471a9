package bayfolio.check.sense;

import static bayfolio.check.sense.Relation.error;
import static bayfolio.check.sense.Relation.note;
import static bayfolio.check.sense.Relation.warning;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.model.Adapter;
import bayfolio.model.Appliance;
import bayfolio.model.Awning;
import bayfolio.model.Bank;
import bayfolio.model.Circuit;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Gauge;
import bayfolio.model.Item;
import bayfolio.model.Jacks;
import bayfolio.model.Load;
import bayfolio.model.Note;
import bayfolio.model.Slide;
import bayfolio.model.Spot;
import bayfolio.model.Step;
import bayfolio.model.Supply;
import bayfolio.model.Switch;
import bayfolio.model.Tank;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What refers to what: a reference that names another thing than is meant names one that is there. It is seen by the
 * reference back, by the wiring, or by words that the two have in common.
 */
final class ReferenceRelations {
    /** How things are made, which tells none from the other. */
    private static final Set<String> PARTS = Set.of(
            "switch", "control", "breaker", "button", "key", "knob", "valve", "circuit", "load", "system", "coach");

    /** What so much of the wiring has in its names that it does not tell either. */
    private static final Set<String> COMMON = Set.of(
            "water",
            "battery",
            "power",
            "motor",
            "electric",
            "main",
            "house",
            "front",
            "rear",
            "left",
            "right",
            "tank",
            "ac",
            "dc",
            "v",
            "12",
            "24",
            "230",
            "120");

    /** How a thing is made or fits, which does not tell what it is for either. */
    private static final Set<String> FITTINGS =
            Subjects.words("spout hose inlet outlet fill filler port cap cord adapter unit roof 230v gauge lamp");

    /** So many words tell what a thing is. */
    private static final int ENOUGH = 6;

    private static final Set<String> FEEDING_AC = Set.of(
            "coach-main-breaker",
            "rcd",
            "generator-control",
            "generator-breaker",
            "generator-autostart-switch",
            "surge-protector",
            "site-breaker",
            "inverter-control");

    private static final Set<String> FEEDING_DC = Set.of(
            "house-battery-switch", "chassis-battery-switch", "battery-boost-switch", "dc-fuse-panel", "dc-breaker");

    private static final Set<String> GAS =
            Set.of("lp-main-valve", "gas-cylinder-valve", "gas-safety-reset", "gas-isolation-tap");

    /** What feeds all of its kind. */
    private static final Set<String> WHOLE =
            Set.of("coach-main-breaker", "rcd", "generator-control", "generator-breaker", "house-battery-switch");

    /** What the one current keeps awake, and that gives the other. */
    private static final Set<String> GO_BETWEENS = Set.of("generator-control", "inverter-control");

    private static final Set<String> OF_BATTERIES = Set.of("house-battery-switch", "chassis-battery-switch");

    private static final Set<String> WINDING = Set.of("crank", "rod", "pole", "winder", "hook", "handle");

    private static final Set<String> OF_THE_LOCKER = Set.of("lp-main-valve", "gas-cylinder-valve");

    /** Words of a circuit that passes on what it is fed. */
    private static final Set<String> THROUGH = Set.of("inverter", "feed", "pass", "panel", "sub", "through");

    /** What stands before a whole part of the coach, and is no control of one appliance. */
    private static final Set<String> BEFORE_ALL = Set.of(
            "house-battery-switch",
            "chassis-battery-switch",
            "battery-boost-switch",
            "coach-main-breaker",
            "rcd",
            "generator-control",
            "generator-breaker",
            "surge-protector",
            "dc-fuse-panel",
            "lp-main-valve",
            "gas-cylinder-valve");

    /** What guards or drains a thing and works it not; controls need not name it. */
    private static final Set<String> GUARDING = Set.of(
            "branch-breaker",
            "dc-breaker",
            "gfci-outlet",
            "gas-safety-reset",
            "gas-isolation-tap",
            "low-point-drain",
            "water-heater-bypass",
            "inverter-control");

    /** Openings into which something goes, and hitches. */
    private static final Set<String> NO_DRAINS = Set.of(
            "shore-inlet",
            "generator-outlet",
            "city-water-inlet",
            "fresh-fill-port",
            "tank-flush-inlet",
            "fuel-filler",
            "def-filler",
            "lp-fill-port",
            "tow-hitch");

    static final List<Relation<?, ?>> ALL = List.of(
            warning(
                    "breaker-of-another-circuit",
                    Pairs.toOne(Circuit.SHAPE, Circuit.SWITCH, Switch.SHAPE).given(ReferenceRelations::known),
                    (circuit, it) -> !it.facts().has(Switch.FEEDS)
                            || it.facts().all(Switch.FEEDS).contains(circuit.id()),
                    "{about} names {2} as its switch, and that one does not feed it",
                    "Look which breaker or fuse it hangs on; `feeds` of that one names the circuit."),
            warning(
                    "circuit-of-another-breaker",
                    circuits().given(ReferenceRelations::known),
                    (it, circuit) -> circuit.facts()
                            .find(Circuit.SWITCH)
                            .map(it.id()::equals)
                            .orElse(true),
                    "{about} feeds {2}, which names another one as its switch",
                    "Look which breaker or fuse it hangs on."),
            note(
                    "feeds-something-else",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS).with(Feeding::new),
                    ReferenceRelations::feeds,
                    "{about} is said to feed {2}, which does not name it and has no word in common with it",
                    "Try it, and name what goes off with it; or say so under `stops`."),
            note(
                    "feeds-all-but-one",
                    leftOut().given(ReferenceRelations::known),
                    (it, circuit) -> false,
                    "{about} is said to feed all circuits of its kind but {2}",
                    "Name it under `feeds`, or say under `accept` how that one is fed."),
            warning(
                    "circuit-of-another-battery",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Circuit.SHAPE)
                            .where((it, circuit) -> it.holdsOneOf(OF_BATTERIES)),
                    ReferenceRelations::ofItsBank,
                    "{about} is said to feed {2}, which hangs on other batteries or past it",
                    "Look at `bank` and `past-battery-switch` of the circuit, and try it."),
            note(
                    "fed-through-something-else",
                    Pairs.toOne(Circuit.SHAPE, Circuit.FED_THROUGH, Circuit.SHAPE),
                    (circuit, feed) -> !feed.facts().has(Circuit.SERVES) || share(saying(feed), THROUGH),
                    "{about} is said to be fed through {2}, which passes nothing on by its words",
                    "Name the circuit that feeds the inverter or the sub-panel; or say so under `serves` of it."),
            controls(Appliance.SHAPE, Appliance.CONTROLS, ReferenceRelations::works),
            controls(Slide.SHAPE, Slide.CONTROLS, ReferenceRelations::moves),
            controls(Awning.SHAPE, Awning.CONTROLS, ReferenceRelations::moves),
            controls(Step.SHAPE, Step.CONTROLS, ReferenceRelations::moves),
            note(
                    "control-of-something-else",
                    Pairs.toEach(Jacks.SHAPE, Jacks.CONTROLS, Switch.SHAPE),
                    (jacks, it) ->
                            it.roles().contains("jack-control") || naming(it).contains("jack"),
                    "{about} are worked by {2}, which is no control of jacks",
                    "Look which switch works them."),
            note(
                    "control-of-something-else",
                    Pairs.toEach(Awning.SHAPE, Awning.CONTROLS, Item.SHAPE),
                    (awning, item) -> share(naming(item), WINDING),
                    "{about} is worked by {2}, which winds nothing by its name",
                    "Name the crank or the rod that goes into it."),
            note(
                    "gas-outside-its-locker",
                    gasThings(),
                    (thing, bay) -> bay.roles().contains("gas-locker"),
                    "{about} belongs to the gas, and is said to be in {2}, which is no gas locker",
                    "Look where it is; gas has a locker of its own that is open at the bottom."),
            note(
                    "gauge-of-something-else",
                    Pairs.toEach(Gauge.SHAPE, Gauge.OF),
                    ReferenceRelations::shows,
                    "{about} is said to show {2}, and has no word in common with it",
                    "Look what it shows."),
            note(
                    "goes-onto-something-else",
                    Pairs.toEach(Connection.SHAPE, Connection.FITS, Item.SHAPE),
                    ReferenceRelations::fits,
                    "{about} is said to take {2}, which goes onto something else or has no word in common with it",
                    "Try it; `goes-on` of the item names the connection."),
            note(
                    "load-of-another-appliance",
                    Pairs.toOne(Load.SHAPE, Load.APPLIANCE, Appliance.SHAPE),
                    ReferenceRelations::drawnBy,
                    "{about} is said to be that of {2}, and has no word in common with it",
                    "Name the appliance that draws it."),
            namedAfterAnother(
                    Pairs.toOne(Load.SHAPE, Load.APPLIANCE, Appliance.SHAPE).where(ReferenceRelations::drawnBy),
                    load -> load.facts().find(Load.APPLIANCE).stream().toList(),
                    "Name the appliance that draws it."),
            namedAfterAnother(
                    Pairs.toEach(Item.SHAPE, Item.GOES_ON, Connection.SHAPE),
                    item -> item.facts().all(Item.GOES_ON),
                    "Try it."),
            namedAfterAnother(
                    Pairs.toEach(Gauge.SHAPE, Gauge.OF)
                            .where((gauge, shown) -> !(shown instanceof Tank) && shows(gauge, shown)),
                    gauge -> gauge.facts().all(Gauge.OF),
                    "Look what it shows."),
            namedAfterAnother(
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Switch.SHAPE)
                            .where((it, fed) -> it.roles().contains("branch-breaker")),
                    it -> it.facts().all(Switch.FEEDS),
                    "Press its test key with the breaker off, and look."),
            note(
                    "fed-from-the-other-current",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Switch.SHAPE).with(Feeding::new),
                    (feeding, fed) -> {
                        Set<Circuit.Current> one = feeding.currents(feeding.it);
                        Set<Circuit.Current> other = feeding.currents(fed);
                        return one.size() != 1 || other.size() != 1 || one.equals(other) || fed.holdsOneOf(GO_BETWEENS);
                    },
                    "{about} feeds circuits of one current and is said to feed {2}, which feeds those of the other",
                    "Name what goes dark with it; a charger or an inverter stands between the two."),
            note(
                    "fed-from-the-other-current",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Appliance.SHAPE)
                            .where((it, fed) -> fed.facts().has(Appliance.ENERGY) && !it.holdsOneOf(BEFORE_ALL))
                            .with(Feeding::new),
                    (feeding, fed) -> {
                        Set<Circuit.Current> one = feeding.currents(feeding.it);
                        return one.size() != 1
                                || one.stream()
                                        .map(Energies::from)
                                        .anyMatch(fed.facts().all(Appliance.ENERGY)::contains);
                    },
                    "{about} feeds circuits of one current and is said to feed {2}, which does not run on it",
                    "Name what goes dark with it."),
            note(
                    "gas-fed-by-power",
                    Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Switch.SHAPE),
                    (it, fed) -> fed.roles().stream().noneMatch(GAS::contains)
                            || it.roles().stream().anyMatch(GAS::contains)
                            || it.roles().isEmpty(),
                    "{about} is said to feed {2}, which is a valve for gas",
                    "Name what goes dark with it."),
            note(
                    "load-on-another-circuit",
                    Pairs.toOne(Load.SHAPE, Load.CIRCUIT, Circuit.SHAPE).with(Wired::new),
                    (wired, circuit) -> wired.fits(circuit),
                    "{about} is said to hang on {2}, which serves something else by its words",
                    "Switch the breaker off and look; or say so under `serves` of the circuit."),
            note(
                    "note-about-something-else",
                    Pairs.toOne(Note.SHAPE, Note.ABOUT)
                            .where((note, thing) -> note.facts().has(Note.TEXT))
                            .with(Spoken::new),
                    ReferenceRelations::speaksOf,
                    "{about} is said to be about {2}, and speaks of something else",
                    "Name the thing on whose page it should stand."),
            note(
                    "blocked-by-something-else",
                    Pairs.toEach(Compartment.SHAPE, Compartment.BLOCKED_BY),
                    (bay, thing) -> !bay.facts().has(Compartment.CLEARANCE)
                            || share(Subjects.of(bay.facts().get(Compartment.CLEARANCE)), naming(thing)),
                    "{about} is said to be blocked by {2}, of which its `clearance` does not speak",
                    "Look what stands in front of it."),
            note(
                    "in-another-bay",
                    Bays::ofThings,
                    (bay, it) -> bay.fits(it),
                    "{about} is said to be in a bay that has no word in common with it, or far fewer than another one: {1}",
                    "Look where it is; or say under `inside` of that bay what is in it."),
            note(
                    "goes-onto-something-else",
                    Pairs.toEach(Item.SHAPE, Item.GOES_ON, Connection.SHAPE),
                    (item, connection) -> scarce(saying(item))
                            || scarce(saying(connection))
                            || connection.facts().all(Connection.FITS).contains(item.id())
                            || share(saying(item), known(connection))
                            || share(naming(item), saying(connection)),
                    "{about} is said to go onto {2}, which has no word in common with it",
                    "Try it."),
            note(
                    "tank-of-something-else",
                    Pairs.toOne(Connection.SHAPE, Connection.TANK, Tank.SHAPE),
                    (connection, tank) -> scarce(saying(connection)) || share(saying(connection), contents(tank)),
                    "{about} is said to belong to {2}, and has no word in common with it",
                    "Name the tank that it really fills or empties."),
            error(
                    "drains-through-an-inlet",
                    Pairs.toEach(Tank.SHAPE, Tank.DRAINS, Connection.SHAPE),
                    (tank, outlet) -> outlet.roles().stream().noneMatch(NO_DRAINS::contains),
                    "{about} is said to drain through {2}, into which something goes",
                    "Name the outlet that it drains through."),
            note(
                    "drains-through-something-else",
                    Pairs.toEach(Tank.SHAPE, Tank.DRAINS, Connection.SHAPE),
                    (tank, outlet) -> scarce(saying(outlet)) || share(saying(outlet), contents(tank)),
                    "{about} is said to drain through {2}, and the two have no word in common",
                    "Look where it drains."),
            error(
                    "charged-by-the-inverter",
                    Pairs.toEach(Bank.SHAPE, Bank.CHARGED_BY, Supply.SHAPE),
                    (bank, supply) -> supply.source() != Supply.Source.INVERTER,
                    "{about} is said to be charged by {2}, which takes its power from batteries",
                    "Name what charges it."),
            note(
                    "charger-charges-nothing",
                    chargers(),
                    (charger, named) -> named.contains(charger.id()),
                    "{about} is a charger, and no bank names it under `charged-by`",
                    "Name it at the batteries that it charges."),
            note(
                    "adapter-for-nothing",
                    Pairs.onCoach(Item.SHAPE, Item.SHAPE.key("roles").orElseThrow())
                            .where((item, coach) -> item.roles().contains("supply-adapter")
                                    && coach.unit().idsRead(Adapter.SHAPE.name())),
                    (item, coach) -> coach.unit().facts().all(Unit.ADAPTERS).stream()
                            .anyMatch(it -> it.facts().find(Adapter.ITEM).equals(Optional.of(item.id()))),
                    "{about} is an adapter of the cord, and no adapter names it: nobody is told what it is for",
                    "Describe under `adapters` which outlet it is for."),
            note(
                    "draw-that-is-not-told",
                    Pairs.onCoach(Appliance.SHAPE, Appliance.ENERGY)
                            .where((appliance, coach) ->
                                    appliance.facts().all(Appliance.ENERGY).contains(Appliance.Energy.AC)
                                            && coach.unit().idsRead(Load.SHAPE.name())
                                            && !coach.unit().loads().isEmpty()),
                    (appliance, coach) -> coach.unit().loads().stream()
                            .anyMatch(load -> load.facts().find(Load.APPLIANCE).equals(Optional.of(appliance.id()))),
                    "{about} runs on AC, and no load names it: what it draws is missing in all that is reckoned",
                    "Name it as `appliance` of its load, with the figures of its plate."),
            error(
                    "charged-by-no-charger",
                    Pairs.toEach(Bank.SHAPE, Bank.CHARGED_BY, Appliance.SHAPE),
                    (bank, appliance) -> appliance
                            .facts()
                            .find(Appliance.WHAT)
                            .map(what -> what.charges() || what.unnamed())
                            .orElse(true),
                    "{about} is said to be charged by {2}, which is no charger",
                    "Name what charges it."));

    private ReferenceRelations() {}

    private static <T extends Thing> Relation<?, ?> controls(
            Shape<T> shape, Key<List<Located<String>>> key, BiPredicate<Worked<T>, Switch> works) {
        return note(
                "control-of-something-else",
                Pairs.toEach(shape, key, Switch.SHAPE).with(Worked::new),
                works,
                "{about} is worked by {2}, which feeds nothing of it and has no word in common with it",
                "Look which switch works it.");
    }

    /** Each with the ids of all that charge something. */
    private static Pairs<Appliance, Set<String>> chargers() {
        return records -> {
            Set<String> named = records.of(Bank.SHAPE)
                    .flatMap(bank -> bank.facts().all(Bank.CHARGED_BY).stream())
                    .collect(Collectors.toSet());
            return named.isEmpty()
                    ? Stream.of()
                    : records.of(Appliance.SHAPE)
                            .filter(it -> it.facts().get(Appliance.WHAT).charges())
                            .map(it -> new Pairs.Pair<>(
                                    Records.naming(it), new Located<>(it, it.at()), new Located<>(named, it.at())));
        };
    }

    /** Whether it is known which breaker and which circuit is which. */
    private static boolean known(Records records) {
        Unit unit = records.coach().unit();
        return unit.idsRead(Circuit.SHAPE.name()) && unit.idsRead(Switch.SHAPE.name());
    }

    /** Of breakers and fuses that circuits name as theirs, each circuit that they feed. */
    private static Pairs<Switch, Circuit> circuits() {
        return records -> {
            Set<String> named = records.of(Circuit.SHAPE)
                    .flatMap(circuit -> circuit.facts().find(Circuit.SWITCH).stream())
                    .collect(Collectors.toSet());
            return Pairs.toEach(Switch.SHAPE, Switch.FEEDS, Circuit.SHAPE)
                    .where((it, circuit) -> named.contains(it.id()))
                    .of(records);
        };
    }

    private static <T extends Thing, O extends Thing> Relation<?, ?> namedAfterAnother(
            Pairs<T, O> pairs, Function<T, List<String>> all, String mend) {
        return note(
                "named-after-another",
                pairs.with((thing, records) -> new Named(thing, all.apply(thing), records)),
                Named::meant,
                "{about} names {2}, and is named after another one of that kind",
                mend);
    }

    /** What names others by their ids, and whether one of them is one that it is named after. */
    private record Named(Thing thing, List<String> all, Records records) {
        boolean meant(Thing named) {
            Set<String> words = own(thing);
            Set<String> of = own(named);
            if (of.isEmpty() || common(words, of) > 0) {
                return true;
            }
            return records.coach()
                    .unit()
                    .things()
                    .filter(other -> other != thing && other.kind().equals(named.kind()) && !all.contains(other.id()))
                    .filter(other -> named.roles().isEmpty() || !Collections.disjoint(other.roles(), named.roles()))
                    .noneMatch(other -> common(words, own(other)) > 0);
        }

        private static Set<String> own(Thing it) {
            return without(FITTINGS, telling(naming(it)));
        }
    }

    private record Feeding(Switch it, Records records) {
        /** Of the circuits that it feeds at once. */
        Set<Circuit.Current> currents(Switch of) {
            return of.facts().all(Switch.FEEDS).stream()
                    .flatMap(id -> records.named(Circuit.SHAPE, id).stream())
                    .flatMap(circuit -> circuit.facts().find(Circuit.CURRENT).stream())
                    .collect(Collectors.toSet());
        }

        boolean feeds(String id) {
            return it.facts().all(Switch.FEEDS).contains(id);
        }
    }

    /** Tanks and valves of gas that are in a bay, on a coach with a gas locker. */
    private static Pairs<Thing, Compartment> gasThings() {
        return records ->
                records.of(Compartment.SHAPE).noneMatch(bay -> bay.roles().contains("gas-locker"))
                        ? Stream.of()
                        : Stream.concat(
                                        records.of(Tank.SHAPE).filter(tank -> tank.contents() == Tank.Contents.LP_GAS),
                                        records.of(Switch.SHAPE).filter(it -> it.holdsOneOf(OF_THE_LOCKER)))
                                .map(Thing.class::cast)
                                .filter(thing -> thing.spot().flatMap(Spot::in).isPresent())
                                .flatMap(thing -> records.coach().around(thing).stream()
                                        .map(bay -> Pairs.Pair.of(
                                                thing,
                                                thing.facts()
                                                        .at(thing.spot()
                                                                .orElseThrow()
                                                                .keys()
                                                                .in()),
                                                bay)));
    }

    private static boolean feeds(Feeding feeding, Thing thing) {
        Switch it = feeding.it;
        if (!it.holdsOneOf(BEFORE_ALL) && !it.holdsOneOf(GUARDING) && namesOthers(it, thing)) {
            return scarce(working(it));
        }
        return namesBack(feeding, thing)
                || (ofItsPart(it, thing) || inCommon(it, thing)) && !another(feeding, thing)
                || scarce(working(it));
    }

    private static boolean inCommon(Switch it, Thing thing) {
        return share(telling(working(it)), thing instanceof Tank tank ? contents(tank) : telling(known(thing)))
                || share(telling(naming(it)), told(thing));
    }

    /** Whether what is fed names its controls, and this is none of them. */
    private static boolean namesOthers(Switch it, Thing thing) {
        return named(thing).filter(ids -> !ids.contains(it.id())).isPresent();
    }

    /** The ids of its controls, where it has any. */
    private static Optional<List<String>> named(Thing thing) {
        return thing.facts()
                .shape()
                .key("controls")
                .filter(thing.facts()::has)
                .map(key -> ((List<?>) thing.facts().get(key))
                        .stream()
                                .map(each -> ((Located<?>) each).value().toString())
                                .toList());
    }

    /** Whether one of its kind that is not fed has more words in common with the switch. */
    private static boolean another(Feeding feeding, Thing thing) {
        Set<String> words = naming(feeding.it);
        long own = common(words, naming(thing));
        return !(thing instanceof Switch)
                && Stream.of(BEFORE_ALL, FEEDING_AC, FEEDING_DC).noneMatch(roles -> feeding.it.holdsOneOf(roles))
                && feeding.records
                        .coach()
                        .unit()
                        .things()
                        .filter(other -> other.kind().equals(thing.kind()) && !feeding.feeds(other.id()))
                        .anyMatch(other -> other != feeding.it && common(words, naming(other)) > own);
    }

    private static long common(Set<String> one, Set<String> other) {
        return one.stream().filter(other::contains).count();
    }

    /** Whether what is fed says so itself. */
    private static boolean namesBack(Feeding feeding, Thing thing) {
        String id = feeding.it.id();
        if (thing instanceof Load load) {
            return load.facts().find(Load.CIRCUIT).filter(feeding::feeds).isPresent()
                    || load.facts().find(Load.APPLIANCE).stream()
                            .flatMap(appliance -> feeding.records.named(Appliance.SHAPE, appliance).stream())
                            .anyMatch(appliance ->
                                    appliance.facts().all(Appliance.CONTROLS).contains(id));
        }
        return thing instanceof Circuit circuit
                ? circuit.facts().find(Circuit.SWITCH).filter(id::equals).isPresent()
                : named(thing).filter(ids -> ids.contains(id)).isPresent();
    }

    /** Whether it belongs to the part of the coach before which the switch stands. */
    private static boolean ofItsPart(Switch it, Thing thing) {
        Optional<Circuit.Current> current =
                thing instanceof Circuit circuit ? circuit.facts().find(Circuit.CURRENT) : Optional.empty();
        boolean another = thing instanceof Switch;
        return it.holdsOneOf(FEEDING_AC) && (another || current.equals(Optional.of(Circuit.Current.AC)))
                || it.holdsOneOf(FEEDING_DC)
                        && (another || thing instanceof Bank || current.equals(Optional.of(Circuit.Current.DC)))
                || it.holdsOneOf(GAS)
                        && (thing instanceof Tank
                                || thing instanceof Appliance appliance
                                        && appliance
                                                .facts()
                                                .all(Appliance.ENERGY)
                                                .contains(Appliance.Energy.GAS))
                || it.roles().contains("low-point-drain")
                        && (thing instanceof Tank
                                || thing.facts().find(Appliance.CAPACITY).isPresent());
    }

    /** Circuits that a switch before a whole part of the coach does not feed, though it feeds others of that part. */
    private static Pairs<Switch, Circuit> leftOut() {
        return records -> records.of(Switch.SHAPE)
                .filter(it -> it.holdsOneOf(WHOLE) && feedsSeveral(it, records))
                .filter(it -> sharesItsRole(it, records) <= 1 || it.roles().contains("generator-control"))
                .flatMap(it -> records.of(Circuit.SHAPE)
                        .filter(circuit -> behind(it, circuit)
                                && !it.facts().all(Switch.FEEDS).contains(circuit.id()))
                        .map(circuit -> Pairs.Pair.of(it, it.facts().at(Switch.FEEDS), circuit)));
    }

    private static long sharesItsRole(Switch it, Records records) {
        return records.of(Switch.SHAPE)
                .filter(other -> !Collections.disjoint(other.roles(), it.roles()))
                .count();
    }

    private static boolean behind(Switch it, Circuit circuit) {
        boolean ac = circuit.carries(Circuit.Current.AC);
        return it.roles().contains("house-battery-switch")
                ? !ac
                        && !circuit.facts().has(Circuit.BANK)
                        && !circuit.facts().find(Circuit.PAST_BATTERY_SWITCH).orElse(false)
                : ac && !circuit.facts().find(Circuit.BY_INVERTER).orElse(false);
    }

    /** Only a list of two or more is meant to be whole. */
    private static boolean feedsSeveral(Switch it, Records records) {
        return it.facts().all(Switch.FEEDS).stream()
                        .flatMap(id -> records.named(Circuit.SHAPE, id).stream())
                        .filter(circuit -> behind(it, circuit))
                        .count()
                > 1;
    }

    private static boolean ofItsBank(Switch it, Circuit circuit) {
        return it.roles().contains("chassis-battery-switch") == circuit.facts().has(Circuit.BANK)
                && !(it.roles().contains("house-battery-switch")
                        && circuit.facts().find(Circuit.PAST_BATTERY_SWITCH).orElse(false));
    }

    private record Worked<T extends Thing>(T thing, Records records) {
        /** The ids of itself, its loads and their circuits. */
        Set<String> belongings() {
            Set<String> ids = new HashSet<>(Set.of(thing.id()));
            records.referring(Load.SHAPE, Load.APPLIANCE, thing).forEach(load -> {
                ids.add(load.id());
                load.facts().find(Load.CIRCUIT).ifPresent(ids::add);
            });
            return ids;
        }
    }

    private static boolean works(Worked<Appliance> worked, Switch it) {
        return !it.holdsOneOf(BEFORE_ALL)
                && !worksAnother(worked, it)
                && (!Collections.disjoint(worked.belongings(), it.facts().all(Switch.FEEDS))
                        || share(saying(worked.thing), naming(it)));
    }

    private static boolean moves(Worked<? extends Thing> worked, Switch it) {
        return !it.holdsOneOf(BEFORE_ALL)
                && (it.facts().all(Switch.FEEDS).contains(worked.thing.id())
                        || share(naming(worked.thing), naming(it))
                        || share(naming(worked.thing), working(it)));
    }

    private static boolean shows(Gauge gauge, Thing thing) {
        Set<String> words = saying(gauge);
        if (!(thing instanceof Tank)) {
            gauge.spot().flatMap(Spot::where).ifPresent(where -> words.removeAll(Subjects.of(where)));
            words.addAll(naming(gauge));
        }
        return thing instanceof Bank && gauge.roles().contains("battery-monitor")
                || scarce(words)
                || share(words, thing instanceof Tank tank ? contents(tank) : known(thing));
    }

    private static boolean fits(Connection connection, Item item) {
        return item.facts().has(Item.GOES_ON)
                ? item.facts().all(Item.GOES_ON).contains(connection.id()) || share(known(item), naming(connection))
                : scarce(saying(item))
                        || share(saying(item), known(connection))
                        || share(saying(connection), naming(item));
    }

    private record Wired(Load load, Records records) {
        /** What is plugged in hangs on any circuit with outlets. */
        boolean fits(Circuit circuit) {
            Set<String> controls = controls();
            boolean byBreaker = circuit.facts()
                    .find(Circuit.SWITCH)
                    .filter(controls::contains)
                    .isPresent();
            boolean plugged = !load.facts().has(Load.APPLIANCE)
                    && Subjects.of(circuit.facts().find(Circuit.SERVES).orElse("outlet"))
                            .contains("outlet");
            return plugged
                    || byBreaker && controls.size() == 1
                    || !circuit.facts().has(Circuit.SERVES)
                    || (byBreaker || share(telling(known(circuit)), telling(known(load)))) && !another(circuit);
        }

        /** Those of its appliance. */
        private Set<String> controls() {
            return load.facts().find(Load.APPLIANCE).stream()
                    .flatMap(id -> records.named(Appliance.SHAPE, id).stream())
                    .flatMap(appliance -> appliance.facts().all(Appliance.CONTROLS).stream())
                    .collect(Collectors.toSet());
        }

        private boolean another(Circuit circuit) {
            long own = common(naming(load), known(circuit));
            return records.of(Circuit.SHAPE)
                    .anyMatch(it -> it.facts()
                                    .find(Circuit.CURRENT)
                                    .equals(circuit.facts().find(Circuit.CURRENT))
                            && common(naming(load), known(it)) > own);
        }
    }

    private static boolean speaksOf(Spoken spoken, Thing thing) {
        Set<String> words = Subjects.of(spoken.note.facts().get(Note.TEXT));
        long own = common(words, naming(thing));
        return scarce(words)
                || (share(words, known(thing)) || common(words, saying(thing)) > 1)
                        && spoken.records
                                .coach()
                                .unit()
                                .things()
                                .filter(other -> other.kind().equals(thing.kind()))
                                .noneMatch(other -> common(words, naming(other)) > own + 1);
    }

    private record Spoken(Note note, Records records) {}

    private static boolean share(Set<String> one, Set<String> other) {
        return !Collections.disjoint(one, other);
    }

    /** Words by which a thing is called. */
    /** Whether all that it feeds belongs to other appliances. */
    private static boolean worksAnother(Worked<Appliance> worked, Switch it) {
        List<String> fed = it.facts().all(Switch.FEEDS);
        Set<String> own = worked.belongings();
        if (fed.isEmpty()
                || it.roles().contains("inverter-control")
                || own.size() < 2
                || !Collections.disjoint(own, fed)) {
            return false;
        }
        Records records = worked.records;
        return records.of(Appliance.SHAPE)
                .filter(other -> other != worked.thing)
                .anyMatch(other -> !Collections.disjoint(new Worked<>(other, records).belongings(), fed));
    }

    private static boolean drawnBy(Load load, Appliance appliance) {
        return scarce(told(appliance)) || share(telling(naming(load)), told(appliance));
    }

    private static Set<String> naming(Thing it) {
        return without(PARTS, Subjects.naming(it));
    }

    /** Words by which it is called or that say what it is. */
    private static Set<String> known(Thing it) {
        Set<String> words = naming(it);
        it.facts().find(Circuit.SERVES).ifPresent(serves -> words.addAll(subjects(serves)));
        it.facts().find(Appliance.WHAT).ifPresent(what -> words.addAll(subjects(what.word())));
        return words;
    }

    /** Words of a switch that tell what it is for. */
    private static Set<String> working(Switch it) {
        Set<String> words = naming(it);
        Stream.of(Switch.PLATE, Switch.STOPS, Switch.WORK, Switch.WORK_OFF)
                .flatMap(key -> it.facts().find(key).stream())
                .forEach(text -> words.addAll(subjects(text)));
        return words;
    }

    /** Words of all that is said of it. */
    private static Set<String> saying(Described it) {
        StringBuilder texts = new StringBuilder(it instanceof Thing thing ? thing.id() : "");
        it.facts().each((key, value) -> {
            if (Type.ofWords(key.type())) {
                texts.append(' ').append(value.value());
            }
        });
        return subjects(texts.toString());
    }

    /** What a tank holds, as people say it. */
    private static Set<String> contents(Tank tank) {
        Set<String> words = new HashSet<>(telling(naming(tank)));
        words.addAll(
                switch (tank.contents()) {
                    case FRESH -> Set.of("fresh", "drinking", "city", "cold", "tap", "fill");
                    case GRAY -> Set.of("gray", "grey", "sink", "shower", "waste", "sewer");
                    case BLACK -> Set.of("black", "toilet", "waste", "sewer");
                    case CASSETTE -> Set.of("cassette", "toilet", "waste");
                    case GASOLINE -> Set.of("gasoline", "petrol", "fuel");
                    case DIESEL -> Set.of("diesel", "fuel");
                    case EXHAUST_FLUID -> Set.of("def", "exhaust");
                    case LP_GAS -> Set.of("lp", "gas");
                });
        return words;
    }

    /** What is hardly described is not judged by its words. */
    private static boolean scarce(Set<String> words) {
        return words.size() < ENOUGH;
    }

    /** Words of all that is said of it that tell it from others. */
    private static Set<String> told(Described it) {
        return telling(saying(it));
    }

    private static Set<String> subjects(String text) {
        return without(PARTS, Subjects.of(text));
    }

    private static Set<String> telling(Set<String> words) {
        return without(COMMON, words);
    }

    private static Set<String> without(Set<String> these, Set<String> words) {
        Set<String> left = new HashSet<>(words);
        left.removeAll(these);
        return left;
    }
}
