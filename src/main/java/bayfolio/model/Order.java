package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What of the equipment of one coach comes before what, when it is set up or when it is taken back.
 *
 * <p>What the files of equipment say must be so, and what the coach says of itself, holds whatever else. What is merely
 * better gives way: to those, and to what was said before it.
 */
public final class Order {
    /** Turns of what a coach itself says what must come before. */
    private static final String JACKS = "jacks";

    private static final String SLIDES = "slide-outs";

    private final Map<String, Set<String>> after = new HashMap<>();
    private final Map<String, List<Rule>> rules = new HashMap<>();
    private final List<Conflict> conflicts = new ArrayList<>();

    /**
     * One kind before another.
     *
     * @param at where it is said
     * @param why in one sentence; empty where the coach itself says it
     */
    public record Rule(String first, String then, Place at, String why) {}

    /** What a coach says, and the rules that lead the other way round. */
    public record Conflict(Rule said, List<Rule> against) {
        public Conflict {
            against = List.copyOf(against);
        }
    }

    private Order(List<Equipment> kinds, boolean back) {
        musts(kinds, back);
    }

    private Order(Unit unit, boolean back) {
        List<Equipment> kinds = unit.equipment().on(unit);
        List<Rule> better = musts(kinds, back);
        unit.facts().find(Unit.JACKS).ifPresent(jacks -> said(jacks.facts(), Jacks.AFTER, JACKS, kinds, back));
        unit.slides().forEach(slide -> said(slide.facts(), Slide.AFTER, SLIDES, kinds, back));
        // Left from the end, as far as what must be so allows it.
        own(unit, kinds, back).forEach(back ? this::soft : this::hard);
        better.forEach(this::soft);
        if (back) {
            // What nothing else decides is left from the end.
            rules(kinds, Equipment.SET_UP_AFTER)
                    .forEach(each -> soft(new Rule(each.rule.then, each.rule.first, each.rule.at, each.rule.why)));
        }
    }

    /** Keeps what must be so, and gives what is merely better. */
    private List<Rule> musts(List<Equipment> kinds, boolean back) {
        List<Written> all = rules(kinds, back ? Equipment.UNDONE_AFTER : Equipment.SET_UP_AFTER);
        all.stream().filter(Written::must).map(Written::rule).forEach(this::hard);
        return all.stream().filter(each -> !each.must).map(Written::rule).toList();
    }

    private record Written(Rule rule, boolean must) {}

    /** What the files say of these kinds. */
    private static List<Written> rules(List<Equipment> kinds, Key<List<Located<After>>> key) {
        List<Written> rules = new ArrayList<>();
        for (Equipment kind : kinds) {
            for (After rule : kind.facts().all(key)) {
                for (Equipment first : kinds) {
                    if (first != kind && rule.names(first)) {
                        Place at = rule.facts().at();
                        String why = rule.facts().find(After.WHY).orElse("");
                        rules.add(new Written(new Rule(first.id(), kind.id(), at, why), rule.must()));
                    }
                }
            }
        }
        return rules;
    }

    /** Of all kinds that there are, as if one coach had them all. */
    public static Order ofAll(EquipmentKinds equipment, boolean back) {
        return new Order(equipment.all(), back);
    }

    /** The order in which a coach is set up, or that in which all is taken back. */
    public static Order of(Unit unit, boolean back) {
        return unit.once(back, Order::new);
    }

    private void said(Facts facts, Key<List<Located<String>>> key, String turn, List<Equipment> kinds, boolean back) {
        for (Located<String> before : facts.find(key).orElse(List.of())) {
            pairs(before, turn, kinds, before.at(), back).forEach(this::hard);
        }
    }

    /** What {@code order} of the setup says, each of two turns. */
    private static List<Rule> own(Unit unit, List<Equipment> kinds, boolean back) {
        List<Located<String>> turns = unit.facts()
                .find(Unit.SETUP)
                .flatMap(setup -> setup.facts().find(Setup.ORDER))
                .orElse(List.of());
        List<Rule> rules = new ArrayList<>();
        for (int i = 0; i < turns.size(); i++) {
            for (int j = i + 1; j < turns.size(); j++) {
                rules.addAll(pairs(
                        turns.get(i), turns.get(j).value(), kinds, turns.get(j).at(), back));
            }
        }
        return rules;
    }

    private static List<Rule> pairs(Located<String> first, String then, List<Equipment> kinds, Place at, boolean back) {
        List<Rule> rules = new ArrayList<>();
        for (Equipment one : kinds) {
            for (Equipment two : kinds) {
                if (one != two && one.isOneOf(List.of(first.value())) && two.isOneOf(List.of(then))) {
                    rules.add(back ? new Rule(two.id(), one.id(), at, "") : new Rule(one.id(), two.id(), at, ""));
                }
            }
        }
        return rules;
    }

    private void hard(Rule rule) {
        List<Rule> way = way(rule.then, rule.first);
        if (way.isEmpty()) {
            put(rule);
        } else {
            conflicts.add(new Conflict(rule, way));
        }
    }

    private void soft(Rule rule) {
        if (way(rule.then, rule.first).isEmpty()) {
            put(rule);
        }
    }

    private void put(Rule rule) {
        after.computeIfAbsent(rule.first, it -> new LinkedHashSet<>()).add(rule.then);
        rules.computeIfAbsent(rule.first, it -> new ArrayList<>()).add(rule);
    }

    /** The rules by which one comes before another, so far; empty where there are none. */
    private List<Rule> way(String from, String to) {
        Map<String, Rule> cameBy = new HashMap<>();
        List<String> open = new ArrayList<>(List.of(from));
        while (!open.isEmpty()) {
            String here = open.remove(open.size() - 1);
            for (Rule rule : rules.getOrDefault(here, List.of())) {
                if (!rule.then.equals(from) && cameBy.putIfAbsent(rule.then, rule) == null) {
                    open.add(rule.then);
                }
            }
        }
        List<Rule> way = new ArrayList<>();
        for (Rule rule = cameBy.get(to); rule != null; rule = cameBy.get(rule.first)) {
            way.add(0, rule);
        }
        return way;
    }

    /** What cannot be, since two of what must be so contradict each other. */
    public List<Conflict> conflicts() {
        return List.copyOf(conflicts);
    }

    /**
     * Things of these kinds one after the other: as they must be, then so that one stays where one stands, from the first
     * place to the last.
     *
     * @param kind of a thing
     * @param place where one stands for it, from 0
     * @param among what decides among several that are free at one place
     */
    public <T> List<T> sorted(
            List<T> things,
            java.util.function.Function<T, String> kind,
            java.util.function.ToIntFunction<T> place,
            Comparator<T> among) {
        List<T> open = new ArrayList<>(things.stream().sorted(among).toList());
        Map<String, Set<String>> before = before(open.stream().map(kind).toList());
        List<T> sorted = new ArrayList<>();
        int here = 0;
        while (!open.isEmpty()) {
            Set<String> waiting = new HashSet<>(open.stream().map(kind).toList());
            List<T> free = open.stream()
                    .filter(it -> before.getOrDefault(kind.apply(it), Set.of()).stream()
                            .noneMatch(first -> waiting.contains(first) && !first.equals(kind.apply(it))))
                    .toList();
            int stays = here;
            T next = free.stream()
                    .filter(it -> place.applyAsInt(it) == stays)
                    .findFirst()
                    .or(() -> free.stream().min(Comparator.comparingInt(place)))
                    .orElse(open.get(0));
            open.remove(next);
            sorted.add(next);
            here = place.applyAsInt(next);
        }
        return sorted;
    }

    /** For each of these kinds those of them that come before it, by however many others between. */
    private Map<String, Set<String>> before(List<String> kinds) {
        Map<String, Set<String>> before = new HashMap<>();
        for (String kind : Set.copyOf(kinds)) {
            Set<String> reached = new HashSet<>();
            List<String> open = new ArrayList<>(List.of(kind));
            while (!open.isEmpty()) {
                for (String next : after.getOrDefault(open.remove(open.size() - 1), Set.of())) {
                    if (reached.add(next)) {
                        open.add(next);
                    }
                }
            }
            reached.forEach(
                    then -> before.computeIfAbsent(then, it -> new HashSet<>()).add(kind));
        }
        return before;
    }

    /** Where one stands for a kind of equipment. */
    public static Standpoint place(Equipment kind, Optional<Standpoint> otherwise) {
        return otherwise.or(() -> kind.facts().find(Equipment.STANDS)).orElse(Standpoint.INSIDE);
    }
}
