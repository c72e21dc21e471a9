package bayfolio.model;

import java.util.List;

/**
 * What all coaches of a fleet share.
 *
 * @param equipment the kinds that they may have
 */
public record Shared(
        List<Role> roles,
        List<Word> words,
        List<PublishedSource> sources,
        List<Country> countries,
        EquipmentKinds equipment) {
    public Shared {
        roles = List.copyOf(roles);
        words = List.copyOf(words);
        sources = List.copyOf(sources);
        countries = List.copyOf(countries);
    }

    /** The same with other countries. */
    public Shared with(List<Country> others) {
        return new Shared(roles, words, sources, others, equipment);
    }
}
