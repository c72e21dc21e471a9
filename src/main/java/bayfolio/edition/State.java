package bayfolio.edition;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Stream;

/** One of two states that are compared: what the description states, with what it is of, and the parts of the handbook. */
public final class State {
    private final SortedMap<String, List<String>> facts;
    private final Map<String, Part> parts;
    private final Map<String, Change.Thing> things = new LinkedHashMap<>();
    private final List<Reference> references = new ArrayList<>();

    /**
     * A fact that names other things.
     *
     * @param way to it
     * @param of the thing that it is of; empty where it is of the coach or the fleet
     * @param kinds of things that it may name
     */
    public record Reference(String way, Optional<Change.Thing> of, Set<String> kinds, List<String> ids) {
        /** Whether it names a thing. */
        public boolean leadsTo(Change.Thing thing) {
            return kinds.contains(thing.kind()) && ids.contains(thing.id());
        }
    }

    State(SortedMap<String, List<String>> facts, Map<String, Part> parts) {
        this.facts = Collections.unmodifiableSortedMap(facts);
        this.parts = Collections.unmodifiableMap(parts);
        Renaming.things(facts).forEach((way, one) -> things.put(way, one.thing()));
        facts.forEach((way, values) -> {
            Set<String> kinds = Declared.of(way).kinds();
            if (!kinds.isEmpty()) {
                references.add(new Reference(way, around(way), kinds, values));
            }
        });
    }

    /** Each by the way to it: {@code switches / pump-switch / plate}. */
    public SortedMap<String, List<String>> facts() {
        return facts;
    }

    /** By their names, in reading order; none where there was no handbook. */
    public Map<String, Part> parts() {
        return parts;
    }

    /** Whether there was a handbook: nothing was wrong with the coach. */
    public boolean composed() {
        return !parts.isEmpty();
    }

    /** All facts that name things. */
    public List<Reference> references() {
        return Collections.unmodifiableList(references);
    }

    public boolean has(Change.Thing thing) {
        return way(thing).isPresent();
    }

    /** The thing of a kind and an id. */
    public Optional<Change.Thing> thing(String kind, String id) {
        return things(kind).filter(it -> it.id().equals(id)).findFirst();
    }

    /** All things of a kind. */
    public Stream<Change.Thing> things(String kind) {
        return things.values().stream().filter(it -> it.kind().equals(kind));
    }

    /** The thing to which a way leads, of those that have an id. */
    Optional<Change.Thing> thing(String way) {
        return Optional.ofNullable(things.get(way)).filter(it -> !it.id().isEmpty());
    }

    /** The thing that a fact is of: the innermost around it. */
    public Optional<Change.Thing> around(String way) {
        for (int end = way.lastIndexOf(StatedFacts.BETWEEN);
                end > 0;
                end = way.lastIndexOf(StatedFacts.BETWEEN, end - 1)) {
            Change.Thing thing = things.get(way.substring(0, end));
            if (thing != null) {
                return Optional.of(thing);
            }
        }
        return Optional.empty();
    }

    /** A fact of a thing in the words of its writer; empty where it states none. */
    public Optional<String> value(Change.Thing thing, String key) {
        return way(thing).flatMap(way -> value(way + StatedFacts.BETWEEN + key));
    }

    /** A fact by the way to it. */
    public Optional<String> value(String way) {
        return Optional.ofNullable(facts.get(way)).map(values -> String.join(", ", values));
    }

    /** A day by the way to it. */
    public Optional<LocalDate> day(String way) {
        try {
            return value(way).map(LocalDate::parse);
        } catch (DateTimeException notADay) {
            return Optional.empty();
        }
    }

    /** A day that a thing states. */
    public Optional<LocalDate> day(Change.Thing thing, String key) {
        return way(thing).flatMap(way -> day(way + StatedFacts.BETWEEN + key));
    }

    /** The name under which translations know a fact that is in words: {@code switch/pump-switch/on-look}. */
    public static Optional<String> text(String way) {
        return Optional.of(Declared.of(way)).filter(Declared::translated).map(Declared::text);
    }

    /** The way through records of which there is one each, to a key in the last of them. */
    public static String way(String... keys) {
        return String.join(StatedFacts.BETWEEN, keys);
    }

    /** The way to another key of the same record. */
    public static String beside(String way, String key) {
        return way.substring(0, way.length() - key(way).length()) + key;
    }

    /** The last of a way: {@code plate}. */
    public static String key(String way) {
        int last = way.lastIndexOf(StatedFacts.BETWEEN);
        return last < 0 ? way : way.substring(last + StatedFacts.BETWEEN.length());
    }

    private Optional<String> way(Change.Thing thing) {
        return things.entrySet().stream()
                .filter(it -> it.getValue().is(thing))
                .map(Map.Entry::getKey)
                .findFirst();
    }
}
