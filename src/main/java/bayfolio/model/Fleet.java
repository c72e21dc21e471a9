package bayfolio.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A fleet: its coaches and what they share. Looks up by id what texts refer to. */
public final class Fleet {
    private final FleetFacts facts;
    private final List<Unit> units;
    private final List<Role> roles;
    private final List<Word> words;
    private final List<PublishedSource> sources;
    private final List<Country> countries;
    private final Map<String, Role> roleById;
    private final Map<String, Word> wordById;
    private final Map<String, PublishedSource> sourceById;
    private final Map<String, Country> countryById;

    /**
     * @param units in the order of their ids
     */
    public Fleet(
            FleetFacts facts,
            List<Unit> units,
            List<Role> roles,
            List<Word> words,
            List<PublishedSource> sources,
            List<Country> countries) {
        this.facts = facts;
        this.units = List.copyOf(units);
        this.roles = List.copyOf(roles);
        this.words = List.copyOf(words);
        this.sources = List.copyOf(sources);
        this.countries = List.copyOf(countries);
        this.roleById = byId(roles, Role::id);
        this.wordById = byId(words, Word::id);
        this.sourceById = byId(sources, PublishedSource::id);
        this.countryById = byId(countries, Country::id);
    }

    /** Of two with one id, which is told elsewhere, the first. */
    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        return all.stream().collect(Collectors.toUnmodifiableMap(id, it -> it, (first, second) -> first));
    }

    public FleetFacts facts() {
        return facts;
    }

    public List<Unit> units() {
        return units;
    }

    public List<Role> roles() {
        return roles;
    }

    public List<Word> words() {
        return words;
    }

    public List<PublishedSource> sources() {
        return sources;
    }

    public List<Country> countries() {
        return countries;
    }

    public String name() {
        return facts.facts().get(FleetFacts.NAME);
    }

    public List<Phone> phones() {
        return facts.facts().all(FleetFacts.PHONES).stream()
                .filter(phone -> phone.facts().whole())
                .toList();
    }

    public List<Pitch> pitches() {
        return facts.facts().all(FleetFacts.PITCHES).stream()
                .filter(pitch -> pitch.facts().whole())
                .toList();
    }

    /** What stands at the site and not on a coach, described once. */
    public Stream<Thing> siteThings() {
        return Stream.<Thing>concat(
                        facts.facts().all(FleetFacts.SITE_SWITCHES).stream(),
                        facts.facts().all(FleetFacts.SITE_CONNECTIONS).stream())
                .filter(thing -> thing.facts().whole());
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

    public Optional<Word> word(String id) {
        return Optional.ofNullable(wordById.get(id));
    }
}
