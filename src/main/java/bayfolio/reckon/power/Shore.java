package bayfolio.reckon.power;

import bayfolio.measure.Amps;
import bayfolio.model.Adapter;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the coach's own cord takes from a site, by itself and through adapters. */
public final class Shore {
    private Shore() {}

    public static List<Supply> of(Unit unit) {
        return unit.supplies().stream()
                .filter(supply -> supply.source() == Supply.Source.SHORE)
                .toList();
    }

    /** What one leg of the cord carries: the largest of the shore supplies. */
    public static Optional<Amps> size(Unit unit) {
        return of(unit).stream()
                .map(supply -> supply.facts().get(Supply.AMPS))
                .max(Comparator.comparingDouble(Amps::value));
    }

    public static List<Adapter> adapters(Unit unit) {
        return unit.facts().all(Unit.ADAPTERS).stream()
                .filter(adapter -> adapter.facts().whole())
                .toList();
    }

    /** The smallest outlet that the coach can be plugged into, by itself or through an adapter. */
    public static Optional<Amps> smallest(Unit unit) {
        return Stream.concat(
                        of(unit).stream().map(supply -> supply.facts().get(Supply.AMPS)),
                        adapters(unit).stream().map(adapter -> adapter.facts().get(Adapter.FROM)))
                .min(Comparator.comparingDouble(Amps::value));
    }
}
