package bayfolio.edition;

import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.NotAQuantityException;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import java.util.List;
import java.util.Optional;

/**
 * What is declared of a fact that an edition tells by its way only; nothing of one that this version no longer knows.
 *
 * @param record the kind of the record that it stands in: {@code switch}
 * @param id of the record, empty where it has none
 * @param key the key; empty where it is no longer declared
 * @param way to its record
 */
record Declared(String record, String id, Optional<Key<?>> key, String way) {
    static Declared of(String way) {
        List<String> names = List.of(way.split(StatedFacts.BETWEEN));
        boolean ofFleet = names.get(0).equals(StatedFacts.FLEET);
        Shape<?> shape = ofFleet ? FleetFacts.SHAPE : Unit.SHAPE;
        String id = "";
        int at = ofFleet ? 1 : 0;
        while (at < names.size()) {
            Optional<Key<?>> key = shape.key(names.get(at));
            Optional<Shape<?>> inner = key.flatMap(it -> inner(it.type()));
            if (at == names.size() - 1 || inner.isEmpty()) {
                return new Declared(shape.name(), id, key, String.join(StatedFacts.BETWEEN, names.subList(0, at)));
            }
            boolean list = key.get().type() instanceof Type.ListOf<?>;
            shape = inner.get();
            id = list && shape.key("id").isPresent() && at + 1 < names.size() ? names.get(at + 1) : "";
            at += list ? 2 : 1;
        }
        return new Declared(shape.name(), id, Optional.empty(), way);
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
        return key.map(Key::type)
                .filter(type -> type instanceof Type.Reference
                        || type instanceof Type.ListOf<?> list && list.element() instanceof Type.Reference)
                .isPresent();
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
