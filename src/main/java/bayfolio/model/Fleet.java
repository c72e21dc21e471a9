package bayfolio.model;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A fleet: its coaches and what they share.
 *
 * @param units in the order of their ids
 */
public record Fleet(
        FleetFacts facts, List<Unit> units, List<Role> roles, List<Word> words, List<PublishedSource> sources) {
    public Fleet {
        units = List.copyOf(units);
        roles = List.copyOf(roles);
        words = List.copyOf(words);
        sources = List.copyOf(sources);
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
        return roles.stream().filter(role -> role.id().equals(id)).findFirst();
    }

    public Optional<PublishedSource> source(String id) {
        return sources.stream().filter(source -> source.id().equals(id)).findFirst();
    }

    public Optional<Word> word(String id) {
        return words.stream().filter(word -> word.id().equals(id)).findFirst();
    }
}
