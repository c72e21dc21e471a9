package bayfolio.model;

import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** All kinds of equipment that a fleet knows, and the features that they give. */
public final class EquipmentKinds {
    public static final EquipmentKinds NONE = new EquipmentKinds(List.of(), true, finding -> {});

    private static final String ACCESS = "access";

    private final List<Equipment> all;
    private final boolean whole;
    private final Map<String, Equipment> byId = new LinkedHashMap<>();
    /** A coach has a feature where one of these holds. */
    private final Map<String, List<Condition<Presence>>> when = new LinkedHashMap<>();

    private final FeatureWords words;
    private final Map<String, Device> devices;
    /** Kinds that a role belongs to, and to nothing else. */
    private final Map<String, List<String>> byRole = new LinkedHashMap<>();

    /**
     * @param all in the order of their files; of two with one id, which is told elsewhere, the first counts
     * @param whole whether all files could be read
     */
    public EquipmentKinds(List<Equipment> all, boolean whole, Consumer<Finding> findings) {
        this.all = List.copyOf(all);
        this.whole = whole;
        this.all.forEach(kind -> byId.putIfAbsent(kind.id(), kind));
        Set<String> known = new LinkedHashSet<>(byId.keySet());
        byId.values()
                .forEach(kind -> kind.facts().ifRead(Equipment.FEATURES).stream()
                        .flatMap(given -> given.value().stream())
                        .flatMap(given -> given.value().facts().ifRead(GivenFeature.ID).stream())
                        .forEach(id -> known.add(id.value())));
        this.words = new FeatureWords(known, whole);
        for (Equipment kind : byId.values()) {
            Condition<Presence> its = read(kind.facts().ifRead(Equipment.THERE_WHEN), findings);
            gives(kind.id(), its);
            kind.facts().ifRead(Equipment.FEATURES).stream()
                    .flatMap(given -> given.value().stream())
                    .map(Located::value)
                    .forEach(given -> given.facts()
                            .ifRead(GivenFeature.ID)
                            .ifPresent(id -> gives(
                                    id.value(),
                                    given.facts().read(GivenFeature.THERE_WHEN)
                                                    && !given.facts().has(GivenFeature.THERE_WHEN)
                                            ? its
                                            : read(given.facts().ifRead(GivenFeature.THERE_WHEN), findings))));
        }
        byId.values()
                .forEach(kind -> kind.facts().ifRead(Equipment.MUST_TELL).stream()
                        .flatMap(needs -> needs.value().stream())
                        .forEach(need -> told(need.value(), findings)));
        this.devices = Device.of(List.copyOf(byId.values()));
        byId.values()
                .forEach(kind -> kind.facts()
                        .all(Equipment.ROLES)
                        .forEach(role -> byRole.computeIfAbsent(role, it -> new ArrayList<>())
                                .add(kind.id())));
        circles(findings);
    }

    private Condition<Presence> read(Optional<Located<String>> written, Consumer<Finding> findings) {
        return written.map(it -> ConditionReader.read(it, new PresenceWords(words), findings))
                .orElseGet(Condition.Unread::new);
    }

    private void gives(String word, Condition<Presence> its) {
        when.computeIfAbsent(word, it -> new ArrayList<>()).add(its);
    }

    /** A feature that hangs on itself. */
    private void circles(Consumer<Finding> findings) {
        for (Equipment kind : byId.values()) {
            if (hangsOn(kind.id(), kind.id(), new LinkedHashSet<>())) {
                findings.accept(Finding.error(
                                "feature-of-itself",
                                kind.facts().at(Equipment.THERE_WHEN),
                                "whether a coach has `" + kind.id() + "` hangs on itself")
                        .mend("Begin with facts of the description."));
            }
        }
    }

    private boolean hangsOn(String word, String wanted, Set<String> seen) {
        return when.getOrDefault(word, List.of()).stream()
                .flatMap(condition -> java.util.stream.Stream.concat(condition.leaves(true), condition.leaves(false)))
                .filter(Presence.OfFeature.class::isInstance)
                .map(leaf -> ((Presence.OfFeature) leaf).word())
                .anyMatch(next -> next.equals(wanted) || seen.add(next) && hangsOn(next, wanted, seen));
    }

    public List<Equipment> all() {
        return List.copyOf(byId.values());
    }

    /** As they were read, of two with one id both. */
    public List<Equipment> files() {
        return all;
    }

    public Optional<Equipment> named(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** The words of conditions. */
    public FeatureWords words() {
        return words;
    }

    /** All features that there are, in the order of the files. */
    public List<String> features() {
        return List.copyOf(when.keySet());
    }

    /** What an appliance may be, by the word that descriptions write. */
    public Map<String, Device> devices() {
        return devices;
    }

    /** Whether all files could be read. */
    public boolean whole() {
        return whole;
    }

    /** Kinds of equipment that a role belongs to, and to nothing else; any one of them will do. */
    public List<String> belongsTo(String role) {
        return List.copyOf(byRole.getOrDefault(role, List.of()));
    }

    /** Turns that things have at a site, in the order of the files. */
    public List<String> turns() {
        return all().stream()
                .flatMap(kind -> kind.facts().ifRead(Equipment.TURN).stream())
                .map(Located::value)
                .distinct()
                .toList();
    }

    /** Whether a coach has a feature, if that is known. */
    boolean has(Unit unit, String word) {
        return has(unit, word, new ArrayDeque<>());
    }

    private boolean has(Unit unit, String word, Deque<String> asked) {
        if (asked.contains(word)) {
            return false;
        }
        asked.push(word);
        try {
            for (Condition<Presence> condition : when.getOrDefault(word, List.of())) {
                if (condition.holds(leaf -> leaf.of(unit, other -> has(unit, other, asked)))) {
                    return true;
                }
            }
            return false;
        } finally {
            asked.pop();
        }
    }

    /** What a coach has, as far as that is known. */
    Features of(Unit unit) {
        Set<String> had = new LinkedHashSet<>();
        Set<String> unread = new LinkedHashSet<>();
        for (String word : when.keySet()) {
            try {
                if (has(unit, word)) {
                    had.add(word);
                }
            } catch (UnreadException nobodyKnows) {
                unread.add(word);
            }
        }
        return new Features(had, unread);
    }

    /** Kinds that a coach is known to have, in the order of the files. */
    public List<Equipment> on(Unit unit) {
        return byId.values().stream()
                .filter(kind -> unit.features().had().contains(kind.id()))
                .toList();
    }

    /**
     * Kinds that are on a coach and not for renters: all that works them has the access {@code staff}. To renters it is as if
     * they were not there, but that their pages say so.
     */
    Set<String> outOfBounds(Unit unit) {
        return on(unit).stream()
                .filter(kind -> forStaff(kind, unit))
                .map(Equipment::id)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** What could not be read is not taken away from anybody. */
    private boolean forStaff(Equipment kind, Unit unit) {
        Set<String> roles = working(kind);
        try {
            List<Access> works = unit.things()
                    .filter(thing -> thing.holdsOneOf(roles))
                    .flatMap(thing -> thing.facts().find(ACCESS, Access.class).stream())
                    .toList();
            return !works.isEmpty() && works.stream().allMatch(Access.STAFF::equals);
        } catch (UnreadException nobodyKnows) {
            return false;
        }
    }

    /** Roles of what works it; of one that says nothing of that, the roles by which a coach has it. */
    public Set<String> working(Equipment kind) {
        List<String> said = kind.facts().all(Equipment.WORKED_BY);
        return said.isEmpty()
                ? when.getOrDefault(kind.id(), List.of()).stream()
                        .flatMap(condition -> condition.leaves(true))
                        .filter(Presence.OfThings.class::isInstance)
                        .flatMap(leaf ->
                                ((Presence.OfThings) leaf).roles().stream().flatMap(Set::stream))
                        .collect(Collectors.toSet())
                : Set.copyOf(said);
    }

    /** Features that a coach has by nothing but what is out of bounds there. */
    Set<String> withheld(Unit unit) {
        Set<String> out = unit.outOfBounds();
        Set<String> free = new LinkedHashSet<>();
        Set<String> withheld = new LinkedHashSet<>();
        on(unit).forEach(kind -> {
            Set<String> those = out.contains(kind.id()) ? withheld : free;
            those.add(kind.id());
            kind.facts()
                    .all(Equipment.FEATURES)
                    .forEach(given -> given.facts().find(GivenFeature.ID).ifPresent(those::add));
        });
        withheld.removeAll(free);
        return withheld;
    }

    /** Where it stands in a description that it has a feature: the last fact that this was derived from. */
    public Optional<Place> at(Unit unit, String word) {
        List<Place> asked = new ArrayList<>();
        Unit watched = unit.with(unit.facts()
                .watched((record, key) -> record.ifRead(key).ifPresent(fact -> asked.add(fact.at()))));
        // What is asked for while a description is put together says nothing of the feature.
        asked.clear();
        return has(watched, word) && !asked.isEmpty() ? Optional.of(asked.get(asked.size() - 1)) : Optional.empty();
    }

    /** What must tell a fact: things, {@code bank[chemistry = lithium]}, or a record of the coach, {@code generator}. */
    public Optional<Presence> meant(MustTell need) {
        return need.facts()
                .ifRead(MustTell.OF)
                .map(it -> it.value().contains("[") ? it : it.map(word -> word + "[]"))
                .flatMap(it -> new PresenceWords(words).read(it, finding -> {}));
    }

    /** Whether a fact must be told by a coach that has the kind. */
    public boolean holds(Unit unit, MustTell need) {
        return need.facts()
                .located(MustTell.WHEN)
                .map(it -> read(Optional.of(it), finding -> {}).holds(leaf -> leaf.of(unit, word -> has(unit, word))))
                .orElse(true);
    }

    /** What is wrong with those. */
    private void told(MustTell need, Consumer<Finding> findings) {
        need.facts().ifRead(MustTell.WHEN).ifPresent(it -> read(Optional.of(it), findings));
        Optional<Presence> of = need.facts()
                .ifRead(MustTell.OF)
                .map(it -> it.value().contains("[") ? it : it.map(word -> word + "[]"))
                .flatMap(it -> new PresenceWords(words).read(it, findings));
        need.facts()
                .ifRead(MustTell.FACT)
                .filter(fact ->
                        of.isPresent() && of.get().shape().key(fact.value()).isEmpty())
                .ifPresent(fact -> findings.accept(Finding.error(
                                "unknown-key",
                                fact.at(),
                                "a " + of.orElseThrow().shape().name() + " has no key `" + fact.value() + "`")
                        .near(NearNames.to(
                                fact.value(), of.orElseThrow().shape().keyNames()))));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof EquipmentKinds kinds && kinds.all.equals(all) && kinds.whole == whole;
    }

    @Override
    public int hashCode() {
        return all.hashCode();
    }
}
