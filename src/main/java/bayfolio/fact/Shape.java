package bayfolio.fact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The declaration of one kind of record: its keys in the order in which they are told.
 *
 * <pre>{@code
 * private static final Shape.Draft<Tank> DRAFT = Shape.draft("tank", "A tank for water, waste or fuel.");
 * public static final Key<Liters> CAPACITY = DRAFT.optional("capacity", Type.measured(Liters.SCALE), "Measured …");
 * public static final Shape<Tank> SHAPE = DRAFT.done(Tank::new);
 * }</pre>
 *
 * @param <T> what is made of the facts
 */
public final class Shape<T extends Described> {
    private final String name;
    private final String meaning;
    private final List<Key<?>> keys;
    private final Function<Facts, T> make;
    private final Map<String, Key<?>> byName;
    private final Map<String, Key<?>> renamed;
    private final Set<Key<?>> ofEachCoach;

    private Shape(
            String name,
            String meaning,
            List<Key<?>> keys,
            Map<String, Key<?>> renamed,
            Set<Key<?>> ofEachCoach,
            Function<Facts, T> make) {
        this.name = name;
        this.meaning = meaning;
        this.keys = List.copyOf(keys);
        this.renamed = Map.copyOf(renamed);
        this.ofEachCoach = Set.copyOf(ofEachCoach);
        this.make = make;
        this.byName = this.keys.stream().collect(Collectors.toMap(Key::name, Function.identity()));
    }

    public static <T extends Described> Draft<T> draft(String name, String meaning) {
        return new Draft<>(name, meaning);
    }

    /** What such a record is called: the scheme of references to it, too. */
    public String name() {
        return name;
    }

    public String meaning() {
        return meaning;
    }

    /** In the order in which they were declared. */
    public List<Key<?>> keys() {
        return keys;
    }

    /** Whether a key was declared here, and not by a shape that has one of the same name. */
    boolean declares(Key<?> key) {
        return key.index() < keys.size() && keys.get(key.index()) == key;
    }

    public Optional<Key<?>> key(String keyName) {
        return Optional.ofNullable(byName.get(keyName));
    }

    /** What is called otherwise now. */
    public Optional<Key<?>> renamed(String formerName) {
        return Optional.ofNullable(renamed.get(formerName));
    }

    /** Whether it is a coach's own, so that no model can say it for several: a weighing, the date on an alarm. */
    public boolean ofEachCoach(Key<?> key) {
        return ofEachCoach.contains(key);
    }

    public List<String> keyNames() {
        return keys.stream().<String>map(Key::name).toList();
    }

    public T make(Facts facts) {
        return make.apply(facts);
    }

    @Override
    public String toString() {
        return name;
    }

    /** A shape whose keys are being declared. */
    public static final class Draft<T extends Described> {
        private final String name;
        private final String meaning;
        private final List<Key<?>> keys = new ArrayList<>();
        private final Set<String> names = new LinkedHashSet<>();
        private final Map<String, Key<?>> renamed = new HashMap<>();
        private final Set<Key<?>> ofEachCoach = new HashSet<>();

        private Draft(String name, String meaning) {
            this.name = name;
            this.meaning = meaning;
        }

        public <V> Key<V> required(String keyName, Type<V> type, String keyMeaning) {
            return add(keyName, type, Key.Necessity.REQUIRED, keyMeaning, Optional.empty());
        }

        /** A required figure; see {@link Range}. */
        public <V> Key<V> required(String keyName, Type<V> type, String keyMeaning, Range range) {
            return add(keyName, type, Key.Necessity.REQUIRED, keyMeaning, Optional.of(range));
        }

        public <V> Key<V> optional(String keyName, Type<V> type, String keyMeaning) {
            return add(keyName, type, Key.Necessity.OPTIONAL, keyMeaning, Optional.empty());
        }

        /** An optional figure; see {@link Range}. */
        public <V> Key<V> optional(String keyName, Type<V> type, String keyMeaning, Range range) {
            return add(keyName, type, Key.Necessity.OPTIONAL, keyMeaning, Optional.of(range));
        }

        /** An optional fact that renters never read. */
        public <V> Key<V> forStaff(String keyName, Type<V> type, String keyMeaning) {
            return add(keyName, type, Key.Necessity.FOR_STAFF, keyMeaning, Optional.empty());
        }

        /** An optional figure that renters never read; see {@link Range}. */
        public <V> Key<V> forStaff(String keyName, Type<V> type, String keyMeaning, Range range) {
            return add(keyName, type, Key.Necessity.FOR_STAFF, keyMeaning, Optional.of(range));
        }

        /** A name that a key had once: whoever writes it is told the new one. */
        public Draft<T> formerly(String formerName, Key<?> key) {
            renamed.put(formerName, key);
            return this;
        }

        /** Facts that no model can say for several coaches. */
        public Draft<T> ofEachCoach(Key<?>... own) {
            ofEachCoach.addAll(List.of(own));
            return this;
        }

        private <V> Key<V> add(
                String keyName, Type<V> type, Key.Necessity necessity, String keyMeaning, Optional<Range> range) {
            return add(new Key<>(keyName, type, necessity, keyMeaning, range.map(it -> it.of(type)), keys.size()));
        }

        private <V> Key<V> add(Key<V> key) {
            if (!names.add(key.name())) {
                throw new IllegalArgumentException(name + " declares " + key.name() + " twice");
            }
            keys.add(key);
            return key;
        }

        public Shape<T> done(Function<Facts, T> make) {
            return new Shape<>(name, meaning, keys, renamed, ofEachCoach, make);
        }
    }
}
