package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.fact.UnreadException;
import bayfolio.source.Located;
import bayfolio.source.Once;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One coach as its {@code unit.yaml} describes it.
 *
 * <p>What the description leaves out is absent here and in the handbook; nothing is made up in its
 * place.
 */
public final class Unit implements Described {
    /** How a coach is built. */
    public enum Body {
        BUS_STYLE,
        CAB_OVER,
        LOW_PROFILE,
        VAN
    }

    private static final Shape.Draft<Unit> DRAFT = Shape.draft("unit", "One coach of the fleet.");
    public static final Key<String> ID =
            DRAFT.required("id", Type.ID, "Its name in addresses; the name of its folder, too.");
    public static final Key<String> NAME = DRAFT.required("name", Type.NAME, "What the fleet calls it.");
    public static final Key<String> NUMBER =
            DRAFT.optional("number", Type.PLATE, "The coach number painted on it, to be told on the phone.");
    public static final Key<String> MODEL = DRAFT.optional(
            "model",
            Type.ID,
            "What it shares with its sisters: the name of a folder in `units/models`. Here stands only what differs.");
    public static final Key<String> NUMBER_SHOWN = DRAFT.optional(
            "number-shown", Type.PLACE, "Where the number stands on the coach: `on the front and the door`.");
    public static final Key<Body> BODY = DRAFT.required("body", Type.choice(Body.class), "How it is built.");
    public static final Key<Region> REGION = DRAFT.required(
            "region",
            Type.choice(Region.class),
            "Where it was built for: decides words, supplies and which measures come first.");
    public static final Key<String> COUNTRY =
            DRAFT.optional("country", Type.ID, "Where it is hired out, if not where the fleet is.");
    public static final Key<DriveSide> DRIVE_SIDE =
            DRAFT.required("drive-side", Type.choice(DriveSide.class), "The side that the driver sits on.");
    public static final Key<Integer> MODEL_YEAR = DRAFT.optional(
            "model-year",
            Type.whole(1950, 2100),
            "Model year of the coach.",
            Range.of("1950", "as-of + 2 years")
                    .usual("as-of - 25 years", "as-of + 1 years")
                    .because("a model year runs up to two years ahead of the calendar"));
    public static final Key<List<Located<String>>> LANGUAGES = DRAFT.optional(
            "languages", Type.list(Type.LANGUAGE), "Languages of its handbook; the fleet's where left out.");
    public static final Key<String> WRITTEN_IN = DRAFT.optional(
            "written-in",
            Type.LANGUAGE,
            "Language of the texts in this description, where that is not the one of its handbook.");
    public static final Key<List<Located<String>>> FORMERLY =
            DRAFT.optional("formerly", Type.list(Type.ID), "Ids that it had before, so that old addresses lead on.");
    public static final Key<List<Located<Acceptance>>> ACCEPT = DRAFT.forStaff(
            "accept",
            Type.list(Type.nested(Acceptance.SHAPE)),
            "Warnings and notes about the coach as a whole that you live with, each with its reason.");
    public static final Key<List<Located<Service>>> SERVICES =
            DRAFT.forStaff("services", Type.list(Type.nested(Service.SHAPE)), "Work that comes round again.");
    public static final Key<List<Located<Refit>>> REFITS = DRAFT.forStaff(
            "refits",
            Type.list(Type.nested(Refit.SHAPE)),
            "What was changed on it. What hangs on that and was not looked at since is asked for.");
    public static final Key<List<Located<String>>> NOT_ON_THIS_COACH = DRAFT.forStaff(
            "not-on-this-coach",
            Type.list(Type.anyRole()),
            "Roles that most coaches have something for, and this one has not, so that nobody asks: `[leveling-ramp]`.");
    public static final Key<LocalDate> CHECKED_ON = DRAFT.forStaff(
            "checked-on",
            Type.DAY,
            "When somebody last walked the whole coach with this description in hand.",
            Thing.Identity.CHECKED);
    public static final Key<String> CHECKED_BY = DRAFT.forStaff("checked-by", Type.TEXT, "Who that was.");
    public static final Key<Counted> COUNTED = DRAFT.optional(
            "counted",
            Type.nested(Counted.SHAPE),
            "How many of each somebody counted on that walk: `{switches: 41, items: 38}`.");
    public static final Key<Size> SIZE = DRAFT.required("size", Type.nested(Size.SHAPE), "Outer measures.");
    public static final Key<Weights> WEIGHTS =
            DRAFT.optional("weights", Type.nested(Weights.SHAPE), "Limits and weighing.");
    public static final Key<People> PEOPLE = DRAFT.optional("people", Type.nested(People.SHAPE), "Seats and beds.");
    public static final Key<Tires> TIRES = DRAFT.optional("tires", Type.nested(Tires.SHAPE), "Tires and wheels.");
    public static final Key<Engine> ENGINE =
            DRAFT.optional("engine", Type.nested(Engine.SHAPE), "Engine, fuel and driving.");
    public static final Key<Hire> HIRE = DRAFT.optional(
            "hire",
            Type.nested(Hire.SHAPE),
            "What the hire allows. While it is not stated the coach is a draft, and what it lacks for renters is not told.");
    public static final Key<Setup> SETUP =
            DRAFT.optional("setup", Type.nested(Setup.SHAPE), "The order in which it is set up.");
    public static final Key<List<Located<Compartment>>> COMPARTMENTS = DRAFT.optional(
            "compartments", Type.list(Type.nested(Compartment.SHAPE)), "Spaces with a door of their own.");
    public static final Key<List<Located<Tray>>> TRAYS =
            DRAFT.optional("trays", Type.list(Type.nested(Tray.SHAPE)), "Sliding floors in compartments.");
    public static final Key<List<Located<Door>>> DOORS =
            DRAFT.optional("doors", Type.list(Type.nested(Door.SHAPE)), "Ways in and out.");
    public static final Key<List<Located<Step>>> STEPS =
            DRAFT.optional("steps", Type.list(Type.nested(Step.SHAPE)), "Entry steps.");
    public static final Key<List<Located<Switch>>> SWITCHES = DRAFT.optional(
            "switches",
            Type.list(Type.nested(Switch.SHAPE)),
            "All that is operated: switches, breakers, valves, taps, buttons, panels.");
    public static final Key<List<Located<Gauge>>> GAUGES =
            DRAFT.optional("gauges", Type.list(Type.nested(Gauge.SHAPE)), "All that is read: gauges, lamps, alarms.");
    public static final Key<List<Located<Connection>>> CONNECTIONS = DRAFT.optional(
            "connections", Type.list(Type.nested(Connection.SHAPE)), "Inlets, outlets, fills and drains.");
    public static final Key<List<Located<Tank>>> TANKS =
            DRAFT.optional("tanks", Type.list(Type.nested(Tank.SHAPE)), "Tanks for water, waste, fuel and gas.");
    public static final Key<Water> WATER =
            DRAFT.optional("water", Type.nested(Water.SHAPE), "How the water system is worked.");
    public static final Key<Gas> GAS = DRAFT.optional("gas", Type.nested(Gas.SHAPE), "LP gas.");
    public static final Key<List<Located<Supply>>> SUPPLIES = DRAFT.optional(
            "supplies",
            Type.list(Type.nested(Supply.SHAPE)),
            "What gives power: shore power at the coach's own size, generator, inverter.");
    public static final Key<List<Located<Adapter>>> ADAPTERS =
            DRAFT.optional("adapters", Type.list(Type.nested(Adapter.SHAPE)), "Adapters on board for other outlets.");
    public static final Key<Cord> CORD = DRAFT.optional("cord", Type.nested(Cord.SHAPE), "The coach's own power cord.");
    public static final Key<Transfer> TRANSFER =
            DRAFT.optional("transfer", Type.nested(Transfer.SHAPE), "The change between shore power and generator.");
    public static final Key<Boolean> SURGE_PROTECTION =
            DRAFT.optional("surge-protection", Type.YES_NO, "Whether the supply is tested and guarded.");
    public static final Key<Boolean> LOAD_MANAGEMENT =
            DRAFT.optional("load-management", Type.YES_NO, "Whether the coach sheds loads by itself.");
    public static final Key<String> AC_SHOWN = DRAFT.optional(
            "ac-shown",
            Type.LOOK,
            "How the coach shows that AC comes in, and where: `the top line of the wall panel reads AC IN`.");
    public static final Key<List<Located<Circuit>>> CIRCUITS = DRAFT.optional(
            "circuits", Type.list(Type.nested(Circuit.SHAPE)), "Lines with a breaker or fuse of their own.");
    public static final Key<List<Located<Load>>> LOADS =
            DRAFT.optional("loads", Type.list(Type.nested(Load.SHAPE)), "What draws power.");
    public static final Key<List<Located<Bank>>> BANKS =
            DRAFT.optional("banks", Type.list(Type.nested(Bank.SHAPE)), "Batteries.");
    public static final Key<Inverter> INVERTER =
            DRAFT.optional("inverter", Type.nested(Inverter.SHAPE), "The inverter.");
    public static final Key<Charger> CHARGER = DRAFT.optional("charger", Type.nested(Charger.SHAPE), "The charger.");
    public static final Key<Solar> SOLAR = DRAFT.optional("solar", Type.nested(Solar.SHAPE), "Solar charging.");
    public static final Key<Generator> GENERATOR =
            DRAFT.optional("generator", Type.nested(Generator.SHAPE), "The generator.");
    public static final Key<List<Located<Appliance>>> APPLIANCES = DRAFT.optional(
            "appliances",
            Type.list(Type.nested(Appliance.SHAPE)),
            "Heaters, fridge, cooker, air conditioners and other built-in devices.");
    public static final Key<List<Located<Slide>>> SLIDES =
            DRAFT.optional("slides", Type.list(Type.nested(Slide.SHAPE)), "Slide-outs.");
    public static final Key<Jacks> JACKS = DRAFT.optional("jacks", Type.nested(Jacks.SHAPE), "Leveling jacks.");
    public static final Key<List<Located<Awning>>> AWNINGS =
            DRAFT.optional("awnings", Type.list(Type.nested(Awning.SHAPE)), "Awnings.");
    public static final Key<List<Located<Item>>> ITEMS =
            DRAFT.optional("items", Type.list(Type.nested(Item.SHAPE)), "What is carried on board.");
    public static final Key<List<Located<Photo>>> PHOTOS =
            DRAFT.optional("photos", Type.list(Type.nested(Photo.SHAPE)), "Pictures in the photos folder.");
    public static final Key<List<Located<Film>>> FILMS =
            DRAFT.optional("films", Type.list(Type.nested(Film.SHAPE)), "Films in the films folder.");
    public static final Key<String> COVER =
            DRAFT.optional("cover", Type.reference("photo"), "The picture that stands for it in the list of coaches.");
    public static final Key<List<Located<Note>>> NOTES =
            DRAFT.optional("notes", Type.list(Type.nested(Note.SHAPE)), "What no other key takes.");
    public static final Key<List<Located<Notice>>> NOTICES = DRAFT.optional(
            "notices",
            Type.list(Type.nested(Notice.SHAPE)),
            "What is wrong meanwhile, or to be done. It stands first wherever that is used.");
    public static final Key<List<Located<TakenOut>>> TAKEN_OUT = DRAFT.optional(
            "taken-out",
            Type.list(Type.nested(TakenOut.SHAPE)),
            "What it had and has no more, so that the address of its page stays.");
    public static final Shape<Unit> SHAPE = DRAFT.ofEachCoach(
                    ID, NAME, NUMBER, MODEL, FORMERLY, REFITS, CHECKED_ON, CHECKED_BY, COUNTED)
            .done(Unit::new);

    /** Keys whose lists hold things that can be referred to, in the order of the declaration. */
    private static final List<Key<?>> THINGS = List.of(
            COMPARTMENTS,
            TRAYS,
            DOORS,
            STEPS,
            SWITCHES,
            GAUGES,
            CONNECTIONS,
            TANKS,
            SUPPLIES,
            ADAPTERS,
            CIRCUITS,
            LOADS,
            BANKS,
            APPLIANCES,
            SLIDES,
            AWNINGS,
            ITEMS,
            PHOTOS,
            FILMS);

    private final Facts facts;
    private final EquipmentKinds equipment;
    private final Once<Unit> once = new Once<>();
    // Asked for again and again.
    private final List<Thing> things;
    private final Set<String> roles;
    /** Kinds of things one of which has the id of another. */
    private final Set<String> ambiguous;

    private final Set<String> openIds;
    private final Set<String> openRoles;

    /** One of which nobody knows what its equipment is. */
    public Unit(Facts facts) {
        this(facts, EquipmentKinds.NONE);
    }

    /** @param equipment all kinds that there are */
    public Unit(Facts facts, EquipmentKinds equipment) {
        this.facts = facts;
        this.equipment = equipment;
        List<Thing> written = THINGS.stream()
                .flatMap(key -> facts.ifRead(key).map(Located::value).map(list -> (List<?>) list).stream())
                .flatMap(List::stream)
                .map(located -> (Thing) ((Located<?>) located).value())
                .toList();
        this.things = written.stream()
                .filter(thing -> thing.facts().read(thing.identity().id()))
                .toList();
        this.roles = written.stream()
                .flatMap(thing -> thing.facts().ifRead(thing.identity().roles()).stream())
                .flatMap(list -> list.value().stream())
                .map(Located::value)
                .collect(Collectors.toUnmodifiableSet());
        Set<String> ids = new HashSet<>();
        Set<String> twice =
                things.stream().map(Thing::id).filter(id -> !ids.add(id)).collect(Collectors.toSet());
        this.ambiguous = kinds(Set.of(), things, thing -> twice.contains(thing.id()));
        Set<String> lists =
                THINGS.stream().filter(key -> !facts.read(key)).map(Unit::kind).collect(Collectors.toSet());
        this.openIds = kinds(
                lists, written, thing -> !thing.facts().read(thing.identity().id()) || twice.contains(thing.id()));
        this.openRoles = kinds(
                lists,
                written,
                thing -> !thing.facts().read(thing.identity().id())
                        || !thing.facts().read(thing.identity().roles()));
    }

    /** The kind of the things in a list. */
    static String kind(Key<?> list) {
        Type.ListOf<?> type = (Type.ListOf<?>) list.type();
        return ((Type.Nested<?>) type.element()).shape().name();
    }

    private static Set<String> kinds(Set<String> lists, List<Thing> written, Predicate<Thing> open) {
        return Stream.concat(lists.stream(), written.stream().filter(open).map(Thing::kind))
                .collect(Collectors.toUnmodifiableSet());
    }

    @Override
    public Facts facts() {
        return facts;
    }

    /** The same with other facts. */
    public Unit with(Facts others) {
        return new Unit(others, equipment);
    }

    /** The same, of which it is known what its equipment is. */
    public Unit equipped(EquipmentKinds kinds) {
        return new Unit(facts, kinds);
    }

    /** All kinds of equipment that there are. */
    public EquipmentKinds equipment() {
        return equipment;
    }

    /** What it has. */
    public Features features() {
        return once(equipment, (unit, kinds) -> kinds.of(unit));
    }

    /** Kinds of equipment that it has and that only staff may use. */
    public Set<String> outOfBounds() {
        return once(equipment, (unit, kinds) -> kinds.outOfBounds(unit));
    }

    /** Whether a thing works equipment of it that only staff may use. */
    public boolean worksWhatIsOutOfBounds(Thing thing) {
        Set<String> out = outOfBounds();
        return !out.isEmpty()
                && equipment.all().stream()
                        .anyMatch(kind -> out.contains(kind.id()) && thing.holdsOneOf(equipment.working(kind)));
    }

    /** What it has for renters: without what is out of bounds. */
    public Features featuresForRenters() {
        return once(equipment, (unit, kinds) -> {
            Set<String> had = new HashSet<>(unit.features().had());
            had.removeAll(kinds.withheld(unit));
            return new Features(had, unit.features().unread());
        });
    }

    /**
     * Whether it has a feature.
     *
     * @throws UnreadException when that is not known
     */
    public boolean has(String feature) {
        Features known = features();
        return known.had().contains(feature) || known.unread().contains(feature) && equipment.has(this, feature);
    }

    /**
     * What is found in a description does not change while it stays the same.
     *
     * @param given all that the result depends on besides the description
     */
    public <G, T> T once(G given, BiFunction<? super Unit, ? super G, T> find) {
        return once.find(this, given, find);
    }

    public String id() {
        return facts.get(ID);
    }

    /** What it shares with its sisters. */
    public Optional<String> model() {
        return facts.ifRead(MODEL).map(Located::value);
    }

    public String name() {
        return facts.get(NAME);
    }

    public Region region() {
        return facts.get(REGION);
    }

    public Size size() {
        return facts.get(SIZE);
    }

    /** All that can be referred to, kind by kind; nothing can without an id. */
    public Stream<Thing> things() {
        return things.stream();
    }

    /** Whether it is known which ids things of a kind have: all could be read, and none is given to two things. */
    public boolean idsRead(String kind) {
        return !openIds.contains(kind);
    }

    /** Whether it is known which roles things of a kind hold. */
    public boolean rolesRead(String kind) {
        return !openRoles.contains(kind);
    }

    public List<Compartment> compartments() {
        return all(COMPARTMENTS);
    }

    public List<Switch> switches() {
        return all(SWITCHES);
    }

    public List<Gauge> gauges() {
        return all(GAUGES);
    }

    public List<Tank> tanks() {
        return all(TANKS);
    }

    public List<Supply> supplies() {
        return all(SUPPLIES);
    }

    public List<Circuit> circuits() {
        return all(CIRCUITS);
    }

    public List<Load> loads() {
        return all(LOADS);
    }

    public List<Bank> banks() {
        return all(BANKS);
    }

    public List<Appliance> appliances() {
        return all(APPLIANCES);
    }

    public List<Slide> slides() {
        return all(SLIDES);
    }

    public List<Awning> awnings() {
        return all(AWNINGS);
    }

    public List<Door> doors() {
        return all(DOORS);
    }

    public List<Step> steps() {
        return all(STEPS);
    }

    public List<Item> items() {
        return all(ITEMS);
    }

    public List<Tray> trays() {
        return all(TRAYS);
    }

    public List<Connection> connections() {
        return all(CONNECTIONS);
    }

    public List<Photo> photos() {
        return all(PHOTOS);
    }

    public List<Film> films() {
        return all(FILMS);
    }

    /** Whether anything holds a role. */
    public boolean holds(String role) {
        if (!roles.contains(role) && !openRoles.isEmpty()) {
            throw new UnreadException("it could not be read whether anything holds the role " + role);
        }
        return roles.contains(role);
    }

    /**
     * Whether it is no coach for renters yet: nothing tells what its hire allows. What a draft still
     * lacks is no fault.
     */
    public boolean draft() {
        return !facts.has(HIRE);
    }

    public Optional<Generator> generator() {
        return facts.find(GENERATOR);
    }

    /**
     * All things of a kind.
     *
     * @throws UnreadException when it is not known which there are
     */
    public List<? extends Thing> all(String kind) {
        return THINGS.stream()
                .filter(key -> kind(key).equals(kind))
                .flatMap(key -> {
                    if (ambiguous.contains(kind)) {
                        throw new UnreadException("nobody knows which of two with one id is meant");
                    }
                    return facts.find(key).stream();
                })
                .flatMap(list -> ((List<?>) list).stream())
                .map(each -> (Thing) ((Located<?>) each).value())
                .toList();
    }

    private <T> List<T> all(Key<List<Located<T>>> key) {
        if (ambiguous.contains(kind(key))) {
            throw new UnreadException("nobody knows which of two with one id is meant");
        }
        return facts.all(key);
    }
}
