package bayfolio.check.electric;

import bayfolio.measure.Amps;
import bayfolio.model.Adapter;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the coach's own cord takes from a site, by itself and through adapters. */
final class Shore {
    private Shore() {}

    static List<Supply> of(Unit unit) {
        return unit.supplies().stream()
                .filter(supply -> supply.source() == Supply.Source.SHORE)
                .toList();
    }

    /** What one leg of the cord carries: the largest of the shore supplies. */
    static Optional<Amps> size(Unit unit) {
        return of(unit).stream()
                .map(supply -> supply.facts().get(Supply.AMPS))
                .max(Comparator.comparingDouble(Amps::value));
    }

    static List<Adapter> adapters(Unit unit) {
        return unit.facts().all(Unit.ADAPTERS).stream()
                .filter(adapter -> adapter.facts().whole())
                .toList();
    }

    /** The smallest outlet that the coach can be plugged into, by itself or through an adapter. */
    static Optional<Amps> smallest(Unit unit) {
        return Stream.concat(
                        of(unit).stream().map(supply -> supply.facts().get(Supply.AMPS)),
                        adapters(unit).stream().map(adapter -> adapter.facts().get(Adapter.FROM)))
                .min(Comparator.comparingDouble(Amps::value));
    }
}
