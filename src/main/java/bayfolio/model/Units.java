package bayfolio.model;

import bayfolio.source.Located;
import java.util.AbstractList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The coaches of a fleet, each read when it is asked for: what of them is in mind does not grow with the fleet. Which there
 * are, and of which models, is known without reading any.
 */
public final class Units extends AbstractList<Unit> implements RandomAccess {
    private final List<Name> names;
    private final IntFunction<Unit> read;
    private final Map<String, Integer> turns = new HashMap<>();

    /**
     * What is known of a coach that is not read.
     *
     * @param model that it names
     */
    public record Name(String id, Optional<String> model) {}

    /**
     * @param names in the order of the coaches
     * @param read gives the coach at a turn, each time the same one
     */
    public Units(List<Name> names, IntFunction<Unit> read) {
        this.names = List.copyOf(names);
        this.read = read;
        for (int i = 0; i < names.size(); i++) {
            turns.putIfAbsent(names.get(i).id(), i);
        }
    }

    /** Coaches that were read already. */
    static Units of(List<Unit> units) {
        if (units instanceof Units those) {
            return those;
        }
        List<Unit> all = List.copyOf(units);
        return new Units(
                all.stream()
                        .map(unit -> new Name(
                                unit.facts().ifRead(Unit.ID).map(Located::value).orElse(""), unit.model()))
                        .toList(),
                all::get);
    }

    @Override
    public Unit get(int index) {
        return read.apply(index);
    }

    @Override
    public int size() {
        return names.size();
    }

    /** The first of an id. */
    public Optional<Unit> find(String id) {
        return Optional.ofNullable(turns.get(id)).map(read::apply);
    }

    public List<String> ids() {
        return names.stream().map(Name::id).toList();
    }

    public boolean has(String id) {
        return turns.containsKey(id);
    }

    /** Those with some ids. */
    public Units only(Predicate<String> wanted) {
        return of(IntStream.range(0, names.size())
                .filter(turn -> wanted.test(names.get(turn).id()))
                .toArray());
    }

    /** Those that something was written for. */
    public Units of(Whose whose) {
        if (whose instanceof Whose.OfACoach one) {
            Integer turn = turns.get(one.unit());
            if (turn != null && turns.size() == names.size()) {
                return of(new int[] {turn});
            }
            return only(one.unit()::equals);
        }
        return whose instanceof Whose.OfAModel model
                ? of(IntStream.range(0, names.size())
                        .filter(turn -> names.get(turn).model().equals(Optional.of(model.model())))
                        .toArray())
                : this;
    }

    private Units of(int[] some) {
        return new Units(IntStream.of(some).mapToObj(names::get).toList(), index -> read.apply(some[index]));
    }
}
