package bayfolio.check.refit;

import bayfolio.check.Case;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Counted;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Compares the lists of the description with what was counted on the coach: a thing that was lost is seen by nothing else. */
public final class CountedOtherwise implements Rule {
    @Override
    public Stream<Finding> check(Case coach) {
        Unit unit = coach.unit();
        return unit.facts().find(Unit.COUNTED).stream()
                .flatMap(counted -> Counted.KEYS.stream()
                        .flatMap(key -> counted.facts().located(key).stream()
                                .flatMap(count -> told(unit, key, count).stream())));
    }

    private static Optional<Finding> told(Unit unit, Key<Integer> key, Located<Integer> count) {
        Key<?> list = Unit.SHAPE.key(key.name()).orElseThrow();
        if (!unit.facts().read(list)) {
            return Optional.empty();
        }
        int described = unit.facts()
                .ifRead(list)
                .map(it -> ((List<?>) it.value()).size())
                .orElse(0);
        return described == count.value()
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "counted-otherwise",
                                count.at(),
                                "`%s`: %d counted on the coach, %d described"
                                        .formatted(key.name(), count.value(), described))
                        .mend(
                                described < count.value()
                                        ? "Describe what is lacking; if it is no longer on the coach, count anew."
                                        : "Take out what is not on the coach; if it is, count anew."));
    }
}
