package bayfolio.model;

import java.util.List;

/**
 * What all coaches of a fleet share.
 *
 * @param equipment the kinds that they may have
 */
record Shared(
        List<Role> roles,
        List<Word> words,
        List<PublishedSource> sources,
        List<Country> countries,
        EquipmentKinds equipment) {
    Shared {
        roles = List.copyOf(roles);
        words = List.copyOf(words);
        sources = List.copyOf(sources);
        countries = List.copyOf(countries);
    }
}
