package bayfolio.edition;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Type;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Quantity;
import bayfolio.model.Device;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All that a description states, each fact by the way to it: {@code switches / pump-switch / plate}. Elements of lists go by
 * their ids, others by what they begin with, so that one more moves none of the rest. Notices are none of it: they come and
 * go within an edition.
 */
public final class StatedFacts {
    /** Before the facts that all coaches share. */
    static final String FLEET = "fleet";

    static final String BETWEEN = " / ";

    private static final Set<Key<?>> LEFT_OUT = Set.of(Unit.NOTICES, FleetFacts.NOTICES);

    private final SortedMap<String, List<String>> values = new TreeMap<>();
    private final Map<Place, String> ways = new HashMap<>();

    private StatedFacts() {}

    public static StatedFacts of(Fleet fleet, Unit unit) {
        StatedFacts facts = new StatedFacts();
        facts.add("", unit);
        facts.add(FLEET, fleet.facts());
        return facts;
    }

    /** One text for a single value, one each for a list; in the order of the ways. */
    public SortedMap<String, List<String>> values() {
        return Collections.unmodifiableSortedMap(values);
    }

    /**
     * The way to a fact, or to one that is looked for and not stated.
     *
     * @param at where it stands, or the record that lacks it
     */
    Optional<String> way(Place at, String key, boolean stated) {
        return Optional.ofNullable(ways.get(at)).map(way -> stated ? way : then(way, key));
    }

    private void add(String way, Described record) {
        // A record and its first fact may begin at one place: the fact comes last and stays.
        ways.putIfAbsent(record.facts().at(), way);
        record.facts().each((key, fact) -> {
            if (!LEFT_OUT.contains(key)) {
                add(then(way, key.name()), key.type(), fact);
            }
        });
    }

    private void add(String way, Type<?> type, Located<?> fact) {
        if (fact.value() instanceof Described inner) {
            add(way, inner);
        } else if (fact.value() instanceof List<?> list && type instanceof Type.ListOf<?> of) {
            addAll(way, of, list.stream().map(it -> (Located<?>) it).toList(), fact.at());
        } else {
            ways.put(fact.at(), way);
            values.put(way, List.of(text(fact)));
        }
    }

    private void addAll(String way, Type.ListOf<?> type, List<? extends Located<?>> all, Place at) {
        ways.put(at, way);
        if (!(type.element() instanceof Type.Nested<?>)) {
            values.put(way, all.stream().map(StatedFacts::text).toList());
            return;
        }
        Set<String> names = new HashSet<>();
        for (Located<?> each : all) {
            Described record = (Described) each.value();
            String name = name(record.facts());
            String only = name;
            for (int again = 2; !names.add(only); again++) {
                only = name + " (" + again + ")";
            }
            add(then(way, only), record);
        }
    }

    /** By what a record is told from others of its list: its id, else the first text that it must have. */
    private static String name(Facts record) {
        return record.shape()
                .key("id")
                .or(() -> record.shape().keys().stream()
                        .filter(key -> key.required()
                                && !(key.type() instanceof Type.Nested<?>)
                                && !(key.type() instanceof Type.ListOf<?>))
                        .findFirst())
                .flatMap(record::ifRead)
                .map(fact -> text(fact).replace(BETWEEN, " "))
                .orElse("one");
    }

    private static String text(Located<?> fact) {
        Object value = fact.value();
        if (value instanceof Quantity quantity) {
            return fact.written().isBlank() ? quantity.in(MeasureSystem.METRIC) : fact.written();
        } else if (value instanceof Enum<?> word) {
            return Type.word(word);
        } else if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        } else if (value instanceof Device device) {
            return device.word();
        }
        return String.valueOf(value).strip().replaceAll("\\s+", " ");
    }

    private static String then(String way, String more) {
        return way.isEmpty() ? more : way + BETWEEN + more;
    }
}
