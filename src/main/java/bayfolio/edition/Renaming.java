package bayfolio.edition;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which things of two states are the same under other ids; and the earlier state in the words of the later one. */
final class Renaming {
    private static final String ID = StatedFacts.BETWEEN + "id";

    /** A thing by the way to it. */
    record One(Change.Thing thing, String way, List<String> formerly, List<String> roles) {}

    /** A thing that has another id now. */
    record Pair(One before, One after, Change.By by) {}

    private final Map<String, One> before;
    private final Map<String, One> after;
    private final List<Pair> pairs = new ArrayList<>();

    Renaming(Snapshot before, Snapshot after) {
        this.before = things(before.facts());
        this.after = things(after.facts());
        List<One> gone = this.before.values().stream()
                .filter(one -> !this.after.containsKey(one.way))
                .toList();
        List<One> come = this.after.values().stream()
                .filter(one -> !this.before.containsKey(one.way))
                .toList();
        Set<String> paired = new HashSet<>();
        for (One one : gone) {
            same(one, come, other -> other.formerly.contains(one.thing.id()))
                    .ifPresent(it -> pair(one, it, Change.By.FORMERLY, paired));
        }
        for (One one : gone) {
            // Two things of one role, one after the other, are one thing for whoever follows a procedure.
            if (!one.roles.isEmpty() && !paired.contains(one.way)) {
                same(one, come, other -> !paired.contains(other.way) && other.roles.equals(one.roles))
                        .ifPresent(it -> pair(one, it, Change.By.ROLE, paired));
            }
        }
    }

    private void pair(One one, One other, Change.By by, Set<String> paired) {
        if (paired.add(other.way)) {
            paired.add(one.way);
            pairs.add(new Pair(one, other, by));
        }
    }

    /** The only one that it can be. */
    private static Optional<One> same(One one, List<One> come, Predicate<One> wanted) {
        List<One> all = come.stream()
                .filter(other -> other.thing.kind().equals(one.thing.kind()))
                .filter(wanted)
                .toList();
        return all.size() == 1 ? Optional.of(all.get(0)) : Optional.empty();
    }

    /** By the way to each. */
    static Map<String, One> things(SortedMap<String, List<String>> facts) {
        Map<String, One> things = new LinkedHashMap<>();
        facts.forEach((way, values) -> {
            Declared.alone(way)
                    .ifPresent(kind -> things.putIfAbsent(
                            kind, new One(new Change.Thing(kind, "", kind), kind, List.of(), List.of())));
            if (way.endsWith(ID)) {
                Declared declared = Declared.of(way);
                String at = declared.way();
                String id = values.get(0);
                String name = String.join(", ", facts.getOrDefault(at + StatedFacts.BETWEEN + "name", List.of(id)));
                things.put(
                        at,
                        new One(
                                new Change.Thing(declared.record(), id, name),
                                at,
                                facts.getOrDefault(at + StatedFacts.BETWEEN + "formerly", List.of()),
                                facts.getOrDefault(at + StatedFacts.BETWEEN + "roles", List.of())));
            }
        });
        return things;
    }

    List<Pair> pairs() {
        return List.copyOf(pairs);
    }

    /** Things that are no longer there under any id. */
    List<One> removed() {
        return before.values().stream()
                .filter(one -> !after.containsKey(one.way) && pairs.stream().noneMatch(it -> it.before.equals(one)))
                .toList();
    }

    List<One> added() {
        return after.values().stream()
                .filter(one -> !before.containsKey(one.way) && pairs.stream().noneMatch(it -> it.after.equals(one)))
                .toList();
    }

    /** The earlier facts under the ways that they have now, with references to the ids that things have now. */
    SortedMap<String, List<String>> facts(Snapshot earlier) {
        SortedMap<String, List<String>> facts = new TreeMap<>();
        earlier.facts().forEach((way, values) -> facts.put(way(way), now(way, values)));
        return facts;
    }

    private String way(String way) {
        for (Pair pair : pairs) {
            if (way.startsWith(pair.before.way + StatedFacts.BETWEEN)) {
                return pair.after.way + way.substring(pair.before.way.length());
            }
        }
        return way;
    }

    private List<String> now(String way, List<String> values) {
        if (pairs.isEmpty() || !Declared.of(way).refers()) {
            return values;
        }
        return values.stream().map(this::id).toList();
    }

    private String id(String id) {
        return pairs.stream()
                .filter(pair -> pair.before.thing.id().equals(id))
                .map(pair -> pair.after.thing.id())
                .findFirst()
                .orElse(id);
    }

    /** The earlier parts by the names that they have now. */
    Map<String, Part> parts(Map<String, Part> earlier) {
        if (pairs.isEmpty()) {
            return earlier;
        }
        Map<String, Part> parts = new LinkedHashMap<>();
        earlier.values().forEach(part -> {
            Part now = new Part(
                    part(part.id()),
                    part(part.page()),
                    part(part.around()),
                    part.sort(),
                    part.kind(),
                    part.lines(),
                    part.links().stream().map(link -> each(link, ":")).toList(),
                    part.from().stream().map(from -> each(from, "/")).toList(),
                    part.forStaff());
            parts.putIfAbsent(now.id(), now);
        });
        return parts;
    }

    private String each(String text, String between) {
        String now = text;
        for (Pair pair : pairs) {
            String was = pair.before.thing.kind() + between + pair.before.thing.id();
            String is = pair.after.thing.kind() + between + pair.after.thing.id();
            if (now.endsWith(was)) {
                now = now.substring(0, now.length() - was.length()) + is;
            } else {
                now = now.replace(was + "/", is + "/");
            }
        }
        return now;
    }

    private String part(String id) {
        int within = id.indexOf('#');
        String page = each(within < 0 ? id : id.substring(0, within), "/");
        if (within < 0) {
            return page;
        }
        return page + "#"
                + Stream.of(id.substring(within + 1).split("\\.")).map(this::id).collect(Collectors.joining("."));
    }
}
