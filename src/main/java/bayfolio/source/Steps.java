package bayfolio.source;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The way to a fact from the outermost record of a file, such as {@code switches / battery-switch / on-look}.
 *
 * @param all from the outside in
 */
public record Steps(List<Step> all) {
    public Steps {
        all = List.copyOf(all);
    }

    /** The outermost record itself. */
    public static final Steps NONE = new Steps(List.of());

    /** One of them. */
    public sealed interface Step {
        /** The name of the key, the id or the number. */
        @Override
        String toString();
    }

    /** A key of a record. */
    public record Key(String name) implements Step {
        @Override
        public String toString() {
            return name;
        }
    }

    /** An element of a list: the record of that id, or the text itself. */
    public record Id(String id) implements Step {
        @Override
        public String toString() {
            return id;
        }
    }

    /** An element without an id, by its number, from 1. */
    public record Nth(int number) implements Step {
        @Override
        public String toString() {
            return "#" + number;
        }
    }

    public static Steps of(String... keys) {
        return new Steps(List.of(keys).stream().<Step>map(Key::new).toList());
    }

    public Steps key(String name) {
        return then(new Key(name));
    }

    public Steps id(String id) {
        return then(new Id(id));
    }

    public Steps nth(int number) {
        return then(new Nth(number));
    }

    /** The last of them. */
    public Step last() {
        return all.get(all.size() - 1);
    }

    /** The way to the record or the list that this is in. */
    public Steps around() {
        return new Steps(all.subList(0, all.size() - 1));
    }

    /** Whether it is that way or goes on from its end. */
    public boolean within(Steps other) {
        return all.size() >= other.all.size()
                && all.subList(0, other.all.size()).equals(other.all);
    }

    private Steps then(Step step) {
        List<Step> longer = new ArrayList<>(all);
        longer.add(step);
        return new Steps(longer);
    }

    @Override
    public String toString() {
        return all.stream().map(Step::toString).collect(Collectors.joining(" / "));
    }
}
