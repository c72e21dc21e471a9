package bayfolio.edition;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.NotAQuantityException;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is declared of a fact that an edition tells by its way only; nothing of one that this version no longer knows.
 *
 * @param record the kind of the record that it stands in: {@code switch}
 * @param id of the record, empty where it has none
 * @param key the key; empty where it is no longer declared
 * @param way to its record
 * @param text the name under which translations know it: {@code switch/pump-switch/on-look}; of records without an id
 *     the keys that they stand under
 */
record Declared(String record, String id, Optional<Key<?>> key, String way, String text) {
    static Declared of(String way) {
        List<String> names = List.of(way.split(StatedFacts.BETWEEN));
        boolean ofFleet = names.get(0).equals(StatedFacts.FLEET);
        Shape<?> shape = ofFleet ? FleetFacts.SHAPE : Unit.SHAPE;
        String id = "";
        String text = shape.name();
        int at = ofFleet ? 1 : 0;
        while (at < names.size()) {
            Optional<Key<?>> key = shape.key(names.get(at));
            Optional<Shape<?>> inner = key.flatMap(it -> inner(it.type()));
            if (at == names.size() - 1 || inner.isEmpty()) {
                return new Declared(
                        shape.name(),
                        id,
                        key,
                        String.join(StatedFacts.BETWEEN, names.subList(0, at)),
                        text + "/" + names.get(at));
            }
            boolean list = key.get().type() instanceof Type.ListOf<?>;
            shape = inner.get();
            id = list && shape.key("id").isPresent() && at + 1 < names.size() ? names.get(at + 1) : "";
            text = id.isEmpty() ? text + "/" + names.get(at) : shape.name() + "/" + id;
            at += list ? 2 : 1;
        }
        return new Declared(shape.name(), id, Optional.empty(), way, text);
    }

    /** The record that a fact is of, where a coach has one such at most: {@code generator}. */
    static Optional<String> alone(String way) {
        int first = way.indexOf(StatedFacts.BETWEEN);
        return Optional.of(first < 0 ? "" : way.substring(0, first))
                .filter(name -> Unit.SHAPE
                        .key(name)
                        .filter(key -> key.type() instanceof Type.Nested<?>)
                        .isPresent());
    }

    private static Optional<Shape<?>> inner(Type<?> type) {
        return type instanceof Type.Nested<?> nested
                ? Optional.of(nested.shape())
                : type instanceof Type.ListOf<?> list ? inner(list.element()) : Optional.empty();
    }

    /** As the document names what a part came from: {@code switch/pump-switch/plate}. */
    String source() {
        return (id.isEmpty() ? record : record + "/" + id)
                + key.map(it -> "/" + it.name()).orElse("");
    }

    /** Whether its values are ids of things. */
    boolean refers() {
        return !kinds().isEmpty();
    }

    /** Kinds of the things whose ids its values are; none where they are no ids. */
    Set<String> kinds() {
        return each() instanceof Type.Reference reference ? reference.kinds() : Set.of();
    }

    /** Whether it is in words that are said otherwise in another language. */
    boolean translated() {
        Type<?> type = each();
        return type != null && Type.ofWords(type) && type != Type.PLATE;
    }

    private @Nullable Type<?> each() {
        Type<?> type = key.<Type<?>>map(Key::type).orElse(null);
        return type instanceof Type.ListOf<?> list ? list.element() : type;
    }

    /** Whether two texts of it mean the same: {@code 92 gal} and {@code 92.0 gal} do. */
    boolean same(List<String> one, List<String> other) {
        if (one.equals(other)) {
            return true;
        }
        if (one.size() != 1
                || other.size() != 1
                || !(key.map(Key::type).orElse(null) instanceof Type.Measured<?> measured)) {
            return false;
        }
        try {
            return Math.abs(measured.scale().parse(one.get(0)).value()
                            - measured.scale().parse(other.get(0)).value())
                    < 1e-9;
        } catch (NotAQuantityException unreadable) {
            return false;
        }
    }
}
