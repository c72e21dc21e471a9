package bayfolio.check.sense;

import bayfolio.fact.Key;
import bayfolio.model.Compartment;
import bayfolio.model.Kinds;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which bay a thing goes with by its words: those of a bay are what is said of it and the names of what else is in it.
 * Anything may be in a storage bay, unless much more speaks for another.
 */
final class Bays {
    /** Words that nearly every bay or thing has. */
    private static final Set<String> COMMON = Set.of(
            "switch",
            "control",
            "button",
            "key",
            "knob",
            "compartment",
            "bay",
            "door",
            "locker",
            "box",
            "coach",
            "house",
            "main");

    /** How a bay opens and shuts, and what must not be in it. */
    private static final Set<Key<String>> NOT_OF_ITS_CONTENTS = Set.of(
            Compartment.NEVER_STORE,
            Compartment.SHUT_LOOK,
            Compartment.LOCKS,
            Compartment.STAYS_OPEN,
            Compartment.OPENS,
            Compartment.LIGHT,
            Compartment.CLIMATE,
            Compartment.WHEN);

    /** Keys of a thing in it by which it is known. */
    private static final Set<String> OF_A_THING = Set.of("name", "where", "what", "note");

    /** A bay of which less is said is not judged. */
    private static final int ENOUGH = 12;

    /** So many words more make another bay the likelier one. */
    private static final int MANY = 4;

    private final Map<String, Set<String>> said = new HashMap<>();
    private final Map<String, List<Thing>> within;
    private final Map<Thing, Set<String>> names = new IdentityHashMap<>();
    private final Set<String> storage = new HashSet<>();

    private Bays(Records records, List<Thing> inBays) {
        this.within =
                inBays.stream().collect(Collectors.groupingBy(thing -> in(thing).orElseThrow()));
        inBays.forEach(thing -> names.put(thing, telling(Subjects.naming(thing))));
        records.of(Compartment.SHAPE).forEach(bay -> {
            said.put(bay.id(), words(bay));
            if (bay.roles().contains("storage-bay")) {
                storage.add(bay.id());
            }
        });
    }

    /** A bay of a coach, among all others. */
    record Bay(Bays all, String id) {
        boolean fits(Thing thing) {
            return all.fit(thing, id);
        }

        @Override
        public String toString() {
            return id;
        }
    }

    /** Each thing that is in a bay, with that; told where its bay is named. None while much is not yet said. */
    static Stream<Pairs.Pair<Bay, Thing>> ofThings(Records records) {
        Unit unit = records.coach().unit();
        // The name of what could not be read is one of the words of its bay.
        if (unit.draft() || !Kinds.names().stream().allMatch(unit::idsRead)) {
            return Stream.of();
        }
        List<Thing> inBays =
                unit.things().filter(thing -> in(thing).isPresent()).toList();
        Bays bays = new Bays(records, inBays);
        return inBays.stream()
                .map(thing -> new Pairs.Pair<>(
                        Records.naming(thing),
                        new Located<>(
                                new Bay(bays, in(thing).orElseThrow()),
                                thing.facts()
                                        .at(thing.spot().orElseThrow().keys().in())),
                        new Located<>(thing, thing.at())));
    }

    private boolean fit(Thing thing, String in) {
        if (said.getOrDefault(in, Set.of()).size() < ENOUGH) {
            return true;
        }
        Set<String> words = words(thing);
        long own = common(words, in, thing);
        return (own > 0 || storage.contains(in))
                && said.keySet().stream().noneMatch(bay -> common(words, bay, thing) - own >= MANY);
    }

    private long common(Set<String> words, String bay, Thing thing) {
        Set<String> there = said.getOrDefault(bay, Set.of());
        return words.stream()
                .filter(word -> there.contains(word)
                        || within.getOrDefault(bay, List.of()).stream()
                                .anyMatch(other -> other != thing
                                        && names.getOrDefault(other, Set.of()).contains(word)))
                .count();
    }

    private static Optional<String> in(Thing thing) {
        return thing.spot().flatMap(Spot::in);
    }

    private static Set<String> words(Thing it) {
        StringBuilder texts = new StringBuilder(it.id() + " " + String.join(" ", it.roles()));
        it.facts().each((key, value) -> {
            if (NOT_OF_ITS_CONTENTS.contains(key)) {
                return;
            }
            if (value.value() instanceof String text
                    && (it instanceof Compartment || OF_A_THING.contains(key.name()))) {
                texts.append(' ').append(text);
            } else if (key == Compartment.INSIDE) {
                ((List<?>) value.value()).forEach(each -> texts.append(' ').append(((Located<?>) each).value()));
            }
        });
        return telling(Subjects.of(texts.toString()));
    }

    private static Set<String> telling(Set<String> words) {
        Set<String> left = new HashSet<>(words);
        left.removeAll(COMMON);
        return left;
    }
}
