package bayfolio.edition;

import bayfolio.fact.Key;
import bayfolio.fact.Type;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What is otherwise in one state of a coach's handbook than in another one, by meaning: first what the description says, then
 * what of the pages does not follow from that. Each part that is otherwise belongs to at least one change.
 */
public final class Comparison {
    private static final Set<String> PLACE =
            Set.of("in", "where", "side", "from-front", "height", "panel", "row", "column");
    private static final Set<String> LABELS = Set.of("name", "plate", "label", "number", "code");

    /** What a description keeps of itself, and no reader is told. */
    private static final Set<String> OF_RECORDS = Set.of("accept", "checked-on", "checked-by", "formerly");

    /** A shorter text stands in many places by chance. */
    private static final int TELLING = 3;

    private static final Predicate<Part> STEPS = part -> part.sort() == Part.Sort.STEP;

    /** What has its turn on a page; the order of pages is none of them. */
    private static final Predicate<Part> PARTS = part -> part.sort() != Part.Sort.STEP && part.sort() != Part.Sort.PAGE;

    private final Renaming renaming;
    private final Snapshot before;
    private final Snapshot after;

    /** In the names that things have in the later one. */
    private final State earlier;

    private final State later;
    private final Map<String, Part> was;
    private final Map<String, Part> is;

    /** Ids of all parts that are otherwise, with whether some change has them already. */
    private final Map<String, Boolean> otherwise = new LinkedHashMap<>();

    /** Lists of parts other than steps. */
    private final List<Reordered> turned;

    private final Editorial editorial;
    private final List<Changed> changes = new ArrayList<>();

    private Comparison(Snapshot before, Snapshot after) {
        this.before = before;
        this.after = after;
        this.renaming = new Renaming(before, after);
        this.earlier = new State(renaming.facts(before), renaming.parts(before.parts()));
        this.later = new State(after.facts(), after.parts());
        boolean both = earlier.composed() && later.composed();
        this.was = both ? said(earlier.parts()) : Map.of();
        this.is = both ? said(later.parts()) : Map.of();
        this.editorial = new Editorial(is.values().stream().map(Part::text).toList());
        Set<String> all = new LinkedHashSet<>(is.keySet());
        all.addAll(was.keySet());
        for (String id : all) {
            Part one = was.get(id);
            Part other = is.get(id);
            if (one == null || other == null || !one.reads(other)) {
                otherwise.put(id, false);
            }
        }
        this.turned = reordered(PARTS);
        turned.stream().flatMap(list -> list.atAnotherTurn().stream()).forEach(id -> otherwise.putIfAbsent(id, false));
    }

    /** In the order in which they are told. */
    public static List<Changed> of(Snapshot before, Snapshot after) {
        return between(before, after).changes();
    }

    /** The same, with the two states beside it. */
    public static Compared between(Snapshot before, Snapshot after) {
        Comparison comparison = new Comparison(before, after);
        comparison.things();
        comparison.facts();
        comparison.pages();
        comparison.steps();
        comparison.numbers();
        comparison.pointers();
        comparison.texts();
        return new Compared(comparison.earlier, comparison.later, rewritten(before, after), comparison.changes);
    }

    private static Set<String> rewritten(Snapshot before, Snapshot after) {
        Set<String> texts = new TreeSet<>(after.scripts().keySet());
        texts.removeIf(text ->
                Objects.equals(before.scripts().get(text), after.scripts().get(text)));
        return texts;
    }

    /** What says nothing is left out: a heading of which a reader sees nothing. */
    private static Map<String, Part> said(Map<String, Part> parts) {
        Map<String, Part> said = new LinkedHashMap<>(parts);
        said.values().removeIf(part -> part.text().isBlank() && part.links().isEmpty());
        return said;
    }

    // The description.

    private void things() {
        renaming.removed().forEach(one -> add(new Change.Removed(one.thing(), values(one)), true, about(one)));
        renaming.added().forEach(one -> add(new Change.Added(one.thing(), values(one)), true, about(one)));
        // A reader is sent to the same thing by another address.
        renaming.pairs()
                .forEach(pair -> add(
                        new Change.Renamed(
                                pair.after().thing(), pair.before().thing().id(), pair.by()),
                        false,
                        Set.of()));
    }

    private List<Change.Value> values(Renaming.One one) {
        return ways().stream()
                .filter(way -> way.startsWith(one.way() + StatedFacts.BETWEEN))
                .map(this::value)
                .toList();
    }

    /** To all facts of either state. */
    private SortedSet<String> ways() {
        SortedSet<String> ways = new TreeSet<>(earlier.facts().keySet());
        ways.addAll(later.facts().keySet());
        return ways;
    }

    private List<String> before(String way) {
        return earlier.facts().getOrDefault(way, List.of());
    }

    private List<String> after(String way) {
        return later.facts().getOrDefault(way, List.of());
    }

    private Change.Value value(String way) {
        return new Change.Value(way, String.join(", ", before(way)), String.join(", ", after(way)));
    }

    /** Parts that are otherwise and are of a thing: its page, what came from it, what sends there or names it. */
    private Set<String> about(Renaming.One one) {
        String link = one.thing().kind() + ":" + one.thing().id();
        String source = one.thing().kind() + "/" + one.thing().id();
        return otherwise.keySet().stream()
                .filter(id -> either(
                        id,
                        part -> part.page().equals(source)
                                || part.links().contains(link)
                                || from(part, "thing:" + source)
                                || from(part, "fact:" + source)
                                || follows(part)
                                        && part.text().contains(one.thing().name())))
                .collect(Collectors.toSet());
    }

    private static boolean from(Part part, String source) {
        return part.from().stream().anyMatch(from -> from.equals(source) || from.startsWith(source + "/"));
    }

    private boolean either(String id, Predicate<Part> wanted) {
        Part one = was.get(id);
        Part other = is.get(id);
        return one != null && wanted.test(one) || other != null && wanted.test(other);
    }

    private void facts() {
        Set<String> things = new HashSet<>();
        renaming.removed().forEach(one -> things.add(one.way()));
        renaming.added().forEach(one -> things.add(one.way()));
        Map<Change.Thing, List<Change.Value>> moved = new LinkedHashMap<>();
        for (String way : ways()) {
            if (before(way).equals(after(way))
                    || things.stream().anyMatch(it -> way.startsWith(it + StatedFacts.BETWEEN))) {
                continue;
            }
            Declared declared = Declared.of(way);
            String key = declared.key().map(Key::name).orElse("");
            if (key.equals("id") || key.equals("formerly") && isOfARenaming(way)) {
                continue;
            }
            Change.Value value = value(way);
            Optional<Change.Thing> thing = later.thing(declared.way());
            if (thing.isPresent() && PLACE.contains(key)) {
                moved.computeIfAbsent(thing.get(), it -> new ArrayList<>()).add(value);
            } else {
                add(change(value, thing, key), technical(declared, way), hit(value, declared));
            }
        }
        moved.forEach((thing, values) -> {
            Set<String> parts = new HashSet<>();
            boolean technical = false;
            for (Change.Value value : values) {
                Declared declared = Declared.of(value.way());
                parts.addAll(hit(value, declared));
                technical |= technical(declared, value.way());
            }
            add(new Change.Moved(thing, values), technical, parts);
        });
    }

    /** @param thing that the fact is of itself */
    private Change change(Change.Value value, Optional<Change.Thing> thing, String key) {
        if (thing.isPresent() && LABELS.contains(key)) {
            return new Change.Relabelled(thing.get(), value);
        }
        return thing.isPresent() && key.equals("at-pickup")
                ? new Change.AtPickup(thing.get(), value)
                : new Change.ValueChanged(of(value.way()), value);
    }

    private boolean isOfARenaming(String way) {
        return renaming.pairs().stream()
                .anyMatch(pair -> way.startsWith(pair.after().way() + StatedFacts.BETWEEN));
    }

    /** What a fact is of, for people. */
    private String of(String way) {
        String record = Declared.of(way).way();
        return later.around(way)
                .map(Change.Thing::toString)
                .orElse(record.isEmpty() ? "coach" : record.replace(StatedFacts.BETWEEN, " "));
    }

    private boolean technical(Declared declared, String way) {
        List<String> one = before(way);
        List<String> other = after(way);
        boolean words = declared.key()
                .map(Key::type)
                .filter(type ->
                        Type.ofWords(type) || type instanceof Type.ListOf<?> list && Type.ofWords(list.element()))
                .isPresent();
        return !declared.key().map(Key::name).filter(OF_RECORDS::contains).isPresent()
                && !declared.same(one, other)
                && !(words
                        && !one.isEmpty()
                        && !other.isEmpty()
                        && editorial.is(String.join(" ", one), String.join(" ", other)));
    }

    /** Parts that are otherwise and have to do with a fact: they came from it, or say what it said or says. */
    private Set<String> hit(Change.Value value, Declared declared) {
        String fact = "fact:" + declared.source();
        Optional<String> thing = later.around(value.way()).map(it -> it.kind() + ":" + it.id());
        String shownBefore = shown(value.before());
        String shownAfter = shown(value.after());
        return otherwise.keySet().stream()
                .filter(id -> either(
                                id,
                                part -> part.from().contains(fact)
                                        || thing.filter(it -> part.links().contains(it)
                                                                && (follows(part) || part.sort() == Part.Sort.POINTER)
                                                        || from(part, "thing:" + it.replace(':', '/')))
                                                .isPresent())
                        || says(was.get(id), shownBefore)
                        || says(is.get(id), shownAfter))
                .collect(Collectors.toSet());
    }

    private boolean says(@Nullable Part part, String text) {
        return part != null
                && text.length() >= TELLING
                && follows(part)
                && part.text().replace('\u00a0', ' ').contains(text);
    }

    private static String shown(String value) {
        return value.replaceFirst("[.!?]$", "");
    }

    /** Whether its writer's text is the same in both states, so that what is otherwise in it follows from facts. */
    private boolean follows(Part part) {
        return part.from().stream()
                .filter(from -> from.startsWith("text:"))
                .map(from -> from.substring("text:".length()))
                .allMatch(text -> Objects.equals(
                        before.scripts().get(text), after.scripts().get(text)));
    }

    // The pages.

    private void pages() {
        for (Map.Entry<String, Part> each : is.entrySet()) {
            if (isNewPage(each.getValue(), was)) {
                add(new Change.PageAdded(each.getKey(), each.getValue().text()), true, inside(each.getKey()));
            }
        }
        for (Map.Entry<String, Part> each : was.entrySet()) {
            if (isNewPage(each.getValue(), is)) {
                add(new Change.PageRemoved(each.getKey(), each.getValue().text()), true, inside(each.getKey()));
            }
        }
    }

    /** Not where it is the page of a thing that is told anyway. */
    private boolean isNewPage(Part part, Map<String, Part> others) {
        return part.sort() == Part.Sort.PAGE && !others.containsKey(part.id()) && !taken(part.id());
    }

    private boolean taken(String id) {
        return otherwise.getOrDefault(id, false);
    }

    /** The page and what is in it, and what leads there. */
    private Set<String> inside(String page) {
        String name = page.substring(page.indexOf('/') + 1);
        return otherwise.keySet().stream()
                .filter(id -> either(id, part -> part.page().equals(page))
                        || either(
                                id,
                                part -> part.sort() == Part.Sort.POINTER
                                        && part.links().stream().anyMatch(link -> link.endsWith(":" + name))))
                .collect(Collectors.toSet());
    }

    private void steps() {
        otherwise.keySet().forEach(id -> {
            Part one = was.get(id);
            Part other = is.get(id);
            if (other != null && one == null && was.containsKey(other.page())) {
                added(other);
            } else if (one != null && other == null && is.containsKey(one.page())) {
                removed(one);
            }
        });
        for (Reordered list : reordered(STEPS)) {
            Set<String> parts =
                    was.containsKey(list.id()) || is.containsKey(list.id()) ? Set.of(list.id()) : list.atAnotherTurn();
            add(new Change.StepsReordered(list.id(), list.before(), list.after()), true, parts);
        }
    }

    /**
     * A list of which the parts that stay come in another order.
     *
     * @param id of the part that they are in
     */
    private record Reordered(String id, List<String> before, List<String> after) {
        /** All but those that each longest run in the same order has: the one that was moved, both of two that swap. */
        Set<String> atAnotherTurn() {
            int size = after.size();
            int[] turns = after.stream().mapToInt(before::indexOf).toArray();
            int[] until = new int[size];
            int[] from = new int[size];
            int longest = 0;
            for (int i = 0; i < size; i++) {
                until[i] = 1;
                for (int j = 0; j < i; j++) {
                    until[i] = turns[j] < turns[i] ? Math.max(until[i], until[j] + 1) : until[i];
                }
                longest = Math.max(longest, until[i]);
            }
            for (int i = size - 1; i >= 0; i--) {
                from[i] = 1;
                for (int j = i + 1; j < size; j++) {
                    from[i] = turns[i] < turns[j] ? Math.max(from[i], from[j] + 1) : from[i];
                }
            }
            int[] sameTurn = new int[longest + 1];
            int all = longest + 1;
            for (int i = 0; i < size; i++) {
                sameTurn[until[i]] += until[i] + from[i] == all ? 1 : 0;
            }
            return IntStream.range(0, size)
                    .filter(i -> until[i] + from[i] != all || sameTurn[until[i]] > 1)
                    .mapToObj(after::get)
                    .collect(Collectors.toSet());
        }
    }

    private List<Reordered> reordered(Predicate<Part> wanted) {
        Map<String, List<String>> now = lists(is, wanted);
        List<Reordered> reordered = new ArrayList<>();
        lists(was, wanted).forEach((list, earlier) -> {
            List<String> later = new ArrayList<>(now.getOrDefault(list, List.of()));
            List<String> stayed = new ArrayList<>(earlier);
            stayed.retainAll(new HashSet<>(later));
            later.retainAll(new HashSet<>(stayed));
            if (!stayed.equals(later)) {
                reordered.add(new Reordered(list, stayed, later));
            }
        });
        return reordered;
    }

    private void added(Part part) {
        if (part.sort() == Part.Sort.STEP) {
            add(new Change.StepAdded(part.id(), part.text()), true, within(part.id()));
        } else if (part.sort() == Part.Sort.HAZARD && was.containsKey(part.around())) {
            add(new Change.HazardAdded(part.id(), part.text()), true, Set.of(part.id()));
        }
    }

    private void removed(Part part) {
        if (part.sort() == Part.Sort.STEP) {
            add(new Change.StepRemoved(part.id(), part.text()), true, within(part.id()));
        } else if (part.sort() == Part.Sort.HAZARD && is.containsKey(part.around())) {
            add(new Change.HazardRemoved(part.id(), part.text()), true, Set.of(part.id()));
        }
    }

    private Set<String> within(String id) {
        return otherwise.keySet().stream()
                .filter(it -> it.equals(id) || it.startsWith(id + "."))
                .collect(Collectors.toSet());
    }

    /** Ids by the list that they are in. */
    private static Map<String, List<String>> lists(Map<String, Part> parts, Predicate<Part> wanted) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        parts.values().stream()
                .filter(wanted)
                .forEach(part -> lists.computeIfAbsent(part.around(), it -> new ArrayList<>())
                        .add(part.id()));
        return lists;
    }

    private void numbers() {
        Map<String, List<String>> pages = new TreeMap<>();
        for (String id : otherwise.keySet()) {
            String page = Objects.requireNonNull(either(id)).page();
            if (page.startsWith("worked-out/") && was.containsKey(page) && is.containsKey(page)) {
                pages.computeIfAbsent(page.substring("worked-out/".length()), it -> new ArrayList<>())
                        .add(id);
            }
        }
        pages.forEach((question, parts) -> {
            Set<String> hangsOn = new HashSet<>(before.answers().getOrDefault(question, new TreeSet<>()));
            hangsOn.addAll(after.answers().getOrDefault(question, new TreeSet<>()));
            List<String> because =
                    new TreeSet<>(hangsOn).stream().filter(this::isOtherwise).toList();
            Part first = Objects.requireNonNull(either(parts.get(0)));
            add(
                    new Change.NumberChanged(question, text(was.get(first.id())), text(is.get(first.id())), because),
                    true,
                    new HashSet<>(parts));
        });
    }

    private boolean isOtherwise(String way) {
        return !Declared.of(way).same(before(way), after(way));
    }

    private @Nullable Part either(String id) {
        Part other = is.get(id);
        return other == null ? was.get(id) : other;
    }

    private static String text(@Nullable Part part) {
        return part == null ? "" : part.text();
    }

    private static String lines(@Nullable Part part) {
        return part == null ? "" : part.lines().replace("\n", " \u00b6 ");
    }

    /** What leads to a page of which a change is told follows from that, such as how long a procedure takes. */
    private void pointers() {
        Map<String, Set<Integer>> byPage = new HashMap<>();
        for (int i = 0; i < changes.size(); i++) {
            for (String page : changes.get(i).pages()) {
                byPage.computeIfAbsent(page.substring(page.indexOf('/') + 1), it -> new TreeSet<>())
                        .add(i);
            }
        }
        Map<Integer, SortedSet<String>> more = new TreeMap<>();
        for (String id : left()) {
            Part part = Objects.requireNonNull(either(id));
            if (part.sort() == Part.Sort.POINTER) {
                part.links().stream()
                        .flatMap(link -> byPage.getOrDefault(link.substring(link.indexOf(':') + 1), Set.of()).stream())
                        .forEach(change -> more.computeIfAbsent(change, it -> new TreeSet<>())
                                .add(id));
            }
        }
        more.forEach((change, parts) -> {
            Changed changed = changes.get(change);
            parts.addAll(changed.parts());
            changes.set(change, changed(changed.change(), changed.technical(), parts));
        });
    }

    private List<String> left() {
        return otherwise.entrySet().stream()
                .filter(each -> !each.getValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** What nothing else explains; last what only leads somewhere. */
    private void texts() {
        left().stream()
                .filter(id -> either(id, part -> part.sort() != Part.Sort.POINTER))
                .forEach(this::text);
        pointers();
        left().stream().filter(id -> !readsAlike(id)).forEach(this::text);
        for (Reordered list : turned) {
            Set<String> parts = list.atAnotherTurn();
            if (!parts.stream().allMatch(this::taken)) {
                add(new Change.PartsReordered(list.id(), list.before(), list.after()), false, parts);
            }
        }
    }

    private boolean readsAlike(String id) {
        Part one = was.get(id);
        Part other = is.get(id);
        return one != null && other != null && one.reads(other);
    }

    private void text(String id) {
        String one = text(was.get(id));
        String other = text(is.get(id));
        if (one.equals(other)) {
            one = lines(was.get(id));
            other = lines(is.get(id));
        }
        add(
                new Change.TextChanged(id, one, other),
                !links(id) || !one.equals(other) && !editorial.is(one, other),
                Set.of(id));
    }

    /** Whether both lead to the same. */
    private boolean links(String id) {
        Part one = was.get(id);
        Part other = is.get(id);
        return one != null && other != null && one.links().equals(other.links());
    }

    private void add(Change change, boolean technical, Set<String> parts) {
        changes.add(changed(change, technical, new TreeSet<>(parts)));
    }

    private Changed changed(Change change, boolean technical, SortedSet<String> parts) {
        parts.forEach(id -> otherwise.replace(id, true));
        SortedSet<String> pages = new TreeSet<>();
        parts.forEach(id -> {
            Stream.of(was, is)
                    .flatMap(it -> Optional.ofNullable(it.get(id)).stream())
                    .forEach(it -> pages.add(it.page()));
        });
        SortedSet<String> said = parts.stream()
                .filter(id -> either(id, part -> part.sort() != Part.Sort.POINTER))
                .collect(Collectors.toCollection(TreeSet::new));
        return new Changed(
                change, technical, parts, said, pages, parts.stream().allMatch(id -> either(id, Part::forStaff)));
    }
}
