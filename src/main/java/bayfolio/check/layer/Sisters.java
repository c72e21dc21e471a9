package bayfolio.check.layer;

import bayfolio.finding.Finding;
import bayfolio.model.Difference;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;

/** The coaches of one model, by their ids. */
record Sisters(Map<String, Difference> byId) {
    /** Of each model, as far as the coaches could be read. */
    static List<Sisters> of(Fleet fleet) {
        Map<String, Map<String, Difference>> byModel = new TreeMap<>();
        for (Unit unit : fleet.units()) {
            fleet.difference(unit)
                    .ifPresent(it -> byModel.computeIfAbsent(it.model(), model -> new TreeMap<>())
                            .put(unit.id(), it));
        }
        return byModel.values().stream().map(Sisters::new).toList();
    }

    int size() {
        return byId.size();
    }

    List<String> ids() {
        return List.copyOf(byId.keySet());
    }

    /** What comes of those things of all of them that are the same by a name. */
    <T, N> Stream<Finding> alike(
            Function<Difference, Stream<T>> each, Function<T, N> name, BiFunction<N, List<T>, Stream<Finding>> told) {
        Map<N, List<T>> same = new LinkedHashMap<>();
        byId.values()
                .forEach(difference -> each.apply(difference)
                        .forEach(it -> same.computeIfAbsent(name.apply(it), key -> new ArrayList<>())
                                .add(it)));
        return same.entrySet().stream().flatMap(entry -> told.apply(entry.getKey(), entry.getValue()));
    }
}
