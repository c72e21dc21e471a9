package bayfolio.check.sense;

import bayfolio.fact.Described;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.model.Coach;
import bayfolio.model.Spot;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Everything that a coach is described by, record by record, found once for all that ask. */
final class Records {
    private final Coach coach;
    private final Map<Shape<?>, List<Described>> byShape = new HashMap<>();
    private final Set<String> ids = new HashSet<>();

    Records(Coach coach) {
        this.coach = coach;
        collect(coach.unit());
    }

    Coach coach() {
        return coach;
    }

    /** Whether the coach is described in full; one that is still being described is not asked for all of it. */
    boolean described() {
        return !coach.unit().draft();
    }

    /** All of one kind that are whole, in the order of the description. */
    @SuppressWarnings("unchecked") // a record is made by its own shape
    <R extends Described> Stream<R> of(Shape<R> shape) {
        return byShape.getOrDefault(shape, List.of()).stream().map(record -> (R) record);
    }

    /** The first thing that holds a role. */
    <T extends Thing> Stream<T> holders(Shape<T> shape, String role) {
        return of(shape).filter(thing -> thing.roles().contains(role));
    }

    /** What a reference of one kind names. */
    <T extends Thing> Optional<T> named(Shape<T> shape, String id) {
        return of(shape).filter(thing -> thing.id().equals(id)).findFirst();
    }

    /** What a reference names that may be to several kinds. */
    Optional<Thing> named(String id) {
        return coach.unit().things().filter(thing -> thing.id().equals(id)).findFirst();
    }

    /** All of one kind that refer to a thing. */
    <R extends Described> Stream<R> referring(Shape<R> shape, Key<String> reference, Thing thing) {
        return of(shape).filter(record -> record.facts().find(reference).equals(Optional.of(thing.id())));
    }

    /** The other switches in the bay of one; of one in no bay, those in none. */
    Stream<Switch> beside(Switch it) {
        return of(Switch.SHAPE)
                .filter(other -> other != it
                        && other.spot().flatMap(Spot::in).equals(it.spot().flatMap(Spot::in)));
    }

    /** For messages: {@code tank `gray`}, {@code the charger}. */
    static String naming(Described record) {
        return record instanceof Thing thing
                        && thing.facts().has(thing.identity().id())
                ? thing.kind() + " `" + thing.id() + "`"
                : "the " + record.facts().shape().name();
    }

    /** Of two things with one id, what is said of the second by its id is said of the first, too. */
    private boolean first(Described record) {
        return !(record instanceof Thing thing)
                || !thing.facts().has(thing.identity().id())
                || ids.add(thing.id());
    }

    private void collect(Described record) {
        if (record.facts().whole() && first(record)) {
            byShape.computeIfAbsent(record.facts().shape(), it -> new ArrayList<>())
                    .add(record);
        }
        record.facts().each((key, value) -> {
            if (value.value() instanceof Described inner) {
                collect(inner);
            } else if (value.value() instanceof List<?> list) {
                list.forEach(each -> {
                    if (((Located<?>) each).value() instanceof Described inner) {
                        collect(inner);
                    }
                });
            }
        });
    }
}
