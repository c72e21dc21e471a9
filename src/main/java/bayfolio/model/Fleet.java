package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.UnreadException;
import bayfolio.source.Lazy;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A fleet: its coaches and what they share. Looks up by id what texts refer to. */
public final class Fleet {
    /** Keys whose lists hold things that can be referred to. */
    private static final List<Key<?>> SITE = List.of(FleetFacts.SITE_SWITCHES, FleetFacts.SITE_CONNECTIONS);

    private final FleetFacts facts;
    private final Units units;
    private final Shared shared;
    private final Map<String, Role> roleById;
    private final Map<String, Word> wordById;
    private final Map<String, PublishedSource> sourceById;
    private final Map<String, Country> countryById;
    private final List<String> unread;
    private final Optional<LocalDate> asOf;
    private final Map<String, HireMarks> marks;
    private final Map<String, Difference> differences;
    private final Map<String, Set<String>> had;
    private final Supplier<Customs> customs;

    /**
     * @param units in the order of their ids
     */
    public Fleet(FleetFacts facts, List<Unit> units, Shared shared) {
        this(facts, units, shared, List.of());
    }

    /**
     * @param units those that could be read, in the order of their ids
     * @param unread names of the folders of the others
     */
    public Fleet(FleetFacts facts, List<Unit> units, Shared shared, List<String> unread) {
        this(facts, units, shared, unread, AsOf.of(facts, units, List.of()), Map.of(), Map.of(), Map.of());
    }

    private Fleet(
            FleetFacts facts,
            List<Unit> units,
            Shared shared,
            List<String> unread,
            Optional<LocalDate> asOf,
            Map<String, HireMarks> marks,
            Map<String, Difference> differences,
            Map<String, Set<String>> had) {
        this.had = Map.copyOf(had);
        this.differences = Map.copyOf(differences);
        this.unread = List.copyOf(unread);
        this.facts = facts;
        this.units = Units.of(units);
        this.shared = shared;
        this.roleById = byId(shared.roles(), Role::id);
        this.wordById = byId(shared.words(), Word::id);
        this.sourceById = byId(shared.sources(), PublishedSource::id);
        this.countryById = byId(shared.countries(), Country::id);
        this.asOf = asOf;
        this.marks = Map.copyOf(marks);
        this.customs = new Lazy<>(() -> Customs.of(this));
    }

    /** With one coach of another one; what all share is looked up there. */
    private Fleet(Fleet whole, Unit alone) {
        this.facts = whole.facts;
        this.units = Units.of(List.of(alone));
        this.shared = whole.shared;
        this.roleById = whole.roleById;
        this.wordById = whole.wordById;
        this.sourceById = whole.sourceById;
        this.countryById = whole.countryById;
        this.unread = whole.unread;
        this.asOf = whole.asOf;
        this.marks = of(alone, whole.marks);
        this.differences = of(alone, whole.differences);
        this.had = of(alone, whole.had);
        this.customs = whole.customs;
    }

    /** Of two with one id, which is told elsewhere, the first. */
    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        return all.stream().collect(Collectors.toUnmodifiableMap(id, it -> it, (first, second) -> first));
    }

    /** The day as of which it is looked at: the newest of its own; empty where no day is stated anywhere. */
    public Optional<LocalDate> asOf() {
        return asOf;
    }

    /** The same fleet as of another day. */
    public Fleet asOf(LocalDate day) {
        return new Fleet(facts, units, shared, unread, Optional.of(day), marks, differences, had);
    }

    /** The same with other facts of its own. */
    public Fleet with(FleetFacts other) {
        return new Fleet(other, units, shared, unread, asOf, marks, differences, had);
    }

    /** The same with what earlier hires left on its coaches, by their ids. */
    public Fleet marked(Map<String, HireMarks> hires) {
        return new Fleet(facts, units, shared, unread, AsOf.of(facts, units, hires.values()), hires, differences, had);
    }

    /** The same with how its coaches differ from their models, by their ids. */
    public Fleet layered(Map<String, Difference> layers) {
        return new Fleet(facts, units, shared, unread, asOf, marks, layers, had);
    }

    /** The same with which of the texts that it has taken out were given out of its coaches, by their ids: {@code procedure:fill-tank}. */
    public Fleet having(Map<String, Set<String>> given) {
        return new Fleet(facts, units, shared, unread, asOf, marks, differences, given);
    }

    /** A coach by its id; empty where there is none, or it could not be read. */
    public Optional<Unit> find(String id) {
        return units.find(id);
    }

    /** As a coach sees it, which knows of the others only what they have in common. */
    public Fleet alone(Unit unit) {
        return new Fleet(this, unit);
    }

    /** What its coaches have in common. */
    public Customs customs() {
        return customs.get();
    }

    private static <T> Map<String, T> of(Unit unit, Map<String, T> all) {
        return unit.facts()
                .find(Unit.ID)
                .flatMap(id -> Optional.ofNullable(all.get(id)).map(it -> Map.of(id, it)))
                .orElse(Map.of());
    }

    /** What all its coaches share. */
    public Shared shared() {
        return shared;
    }

    /** All kinds of equipment that it knows. */
    public EquipmentKinds equipment() {
        return shared.equipment();
    }

    /** How a coach differs from its model; empty for one that has none. */
    public Optional<Difference> difference(Unit unit) {
        return Optional.ofNullable(differences.get(unit.id()));
    }

    /** What earlier hires left on a coach. */
    public List<HireMark> marks(Unit unit) {
        return Optional.ofNullable(marks.get(unit.id())).stream()
                .flatMap(it -> it.facts().all(HireMarks.MARKS).stream())
                .toList();
    }

    /** Which of the texts that the fleet has taken out were given out of a coach. */
    public SortedSet<String> had(Unit unit) {
        return new TreeSet<>(had.getOrDefault(unit.id(), Set.of()));
    }

    /** What a coach had and has no more: what it says itself, then what is said for all that had it. */
    public List<TakenOut> takenOut(Unit unit) {
        List<TakenOut> own = unit.facts().all(Unit.TAKEN_OUT);
        Set<String> wanted = had(unit);
        own.forEach(it -> wanted.remove(it.facts().get(TakenOut.WAS)));
        return Stream.concat(
                        own.stream(),
                        facts.facts().all(FleetFacts.TAKEN_OUT).stream()
                                .filter(it -> wanted.contains(it.facts().get(TakenOut.WAS))))
                .toList();
    }

    /** What holds for a coach as of the day of the fleet: what all are told, then what it is told itself. */
    public List<Notice> notices(Unit unit) {
        return Stream.of(facts.facts().all(FleetFacts.NOTICES), unit.facts().all(Unit.NOTICES))
                .flatMap(List::stream)
                .filter(notice -> !notice.runOut(asOf) && notice.concerns(unit.id()))
                .toList();
    }

    /** All there are, each once, whether or not it is in force: those of the fleet, then those that coaches share or have. */
    public List<Notice> notices() {
        return notices(units);
    }

    /** The same of some coaches alone, since of others it may not be known. */
    public List<Notice> notices(List<Unit> units) {
        Map<Place, Notice> notices = new LinkedHashMap<>();
        Stream.concat(
                        facts.facts().all(FleetFacts.NOTICES).stream(),
                        units.stream().flatMap(unit -> unit.facts().all(Unit.NOTICES).stream()))
                .forEach(notice -> notices.putIfAbsent(notice.facts().at(), notice));
        return List.copyOf(notices.values());
    }

    /** All recalls, whether or not there is a coach left to be done. */
    public List<Notice> recalls() {
        return notices().stream().filter(notice -> notice.recall().isPresent()).toList();
    }

    public FleetFacts facts() {
        return facts;
    }

    public Units units() {
        return units;
    }

    public List<Role> roles() {
        return shared.roles();
    }

    public List<Word> words() {
        return shared.words();
    }

    public List<PublishedSource> sources() {
        return shared.sources();
    }

    public List<Country> countries() {
        return shared.countries();
    }

    public String name() {
        return facts.facts().get(FleetFacts.NAME);
    }

    public List<Phone> phones() {
        return facts.facts().all(FleetFacts.PHONES);
    }

    /** Whether it is known which phones there are. */
    public boolean phonesRead() {
        return facts.facts().read(FleetFacts.PHONES)
                && phones().stream().allMatch(phone -> phone.facts().read(Phone.ID));
    }

    /** The phone of an id, if that is known. */
    public Optional<Phone> phone(String id) {
        Optional<Phone> phone = phones().stream()
                .filter(it -> it.facts().read(Phone.ID) && it.id().equals(id))
                .findFirst();
        if (phone.isEmpty() && !phonesRead()) {
            throw new UnreadException("it could not be read whether there is a phone " + id);
        }
        return phone;
    }

    public List<Pitch> pitches() {
        return facts.facts().all(FleetFacts.PITCHES);
    }

    /** What stands at the site and not on a coach, described once; nothing can be referred to without an id. */
    public Stream<Thing> siteThings() {
        return SITE.stream()
                .flatMap(this::siteThings)
                .filter(thing -> thing.facts().read(thing.identity().id()));
    }

    private Stream<Thing> siteThings(Key<?> list) {
        return facts.facts().ifRead(list).map(Located::value).map(it -> (List<?>) it).stream()
                .flatMap(List::stream)
                .map(located -> (Thing) ((Located<?>) located).value());
    }

    /** Whether it is known which things of a kind stand at the site, and what their roles are. */
    public boolean siteRead(String kind) {
        return SITE.stream()
                .filter(list -> Unit.kind(list).equals(kind))
                .allMatch(list -> facts.facts().read(list)
                        && siteThings(list)
                                .allMatch(thing -> thing.facts()
                                                .read(thing.identity().id())
                                        && thing.facts().read(thing.identity().roles())));
    }

    /** Whether all coaches there are could be read. */
    public boolean coachesRead() {
        return unread.isEmpty();
    }

    /** Ids of all coaches there are, sorted; of those that could not be read, the names of their folders. */
    public List<String> coaches() {
        return Stream.concat(units.ids().stream(), unread.stream())
                .distinct()
                .sorted()
                .toList();
    }

    public Optional<Role> role(String id) {
        return Optional.ofNullable(roleById.get(id));
    }

    public Optional<PublishedSource> source(String id) {
        return Optional.ofNullable(sourceById.get(id));
    }

    /** Where a coach is hired out; empty where the description names a country that is not on the list. */
    public Optional<Country> country(Unit unit) {
        return unit.facts()
                .find(Unit.COUNTRY)
                .or(() -> facts.facts().find(FleetFacts.COUNTRY))
                .map(countryById::get);
    }

    /** Where else a coach may be taken, as the hire says; those of them that are on the list. */
    public List<Country> abroad(Unit unit) {
        Optional<Country> home = country(unit);
        return unit.facts().find(Unit.HIRE).map(hire -> hire.facts().all(Hire.ABROAD)).orElse(List.of()).stream()
                .distinct()
                .flatMap(id -> Optional.ofNullable(countryById.get(id)).stream())
                .filter(country -> home.filter(country::equals).isEmpty())
                .toList();
    }

    /** Where a coach is hired out, and where else it may be taken. */
    public Stream<Country> driven(Unit unit) {
        return Stream.concat(country(unit).stream(), abroad(unit).stream());
    }

    /** The same in other words. */
    Fleet worded(FleetFacts facts, List<Word> words, List<Country> countries) {
        return new Fleet(
                facts,
                units,
                new Shared(shared.roles(), words, shared.sources(), countries, shared.equipment()),
                unread,
                asOf,
                marks,
                differences,
                had);
    }

    public Optional<Word> word(String id) {
        return Optional.ofNullable(wordById.get(id));
    }

    /** Where the handbooks are published, with a slash at the end. */
    public String address() {
        return facts.facts().get(FleetFacts.BASE_ADDRESS).replaceFirst("/*$", "/");
    }

    /** The path of the folder at the host that the handbooks are published in: {@code /}, or {@code /handbooks/}. */
    public String basePath() {
        String path = facts.facts()
                .find(FleetFacts.BASE_ADDRESS)
                .map(address -> address.replaceFirst("^https://[^/]*", ""))
                .orElse("");
        return path.replaceFirst("/*$", "/");
    }

    /** Whether search engines may list the handbooks. */
    public boolean findable() {
        return facts.facts().find(FleetFacts.FINDABLE).orElse(false);
    }

    /** Languages of its handbooks, the default first. */
    public List<String> languages() {
        return languages(facts().facts(), FleetFacts.LANGUAGES);
    }

    static List<String> languages(Facts facts, Key<List<Located<String>>> key) {
        return facts.ifRead(key).stream()
                .flatMap(languages -> languages.value().stream())
                .map(Located::value)
                .toList();
    }
}
