package bayfolio.check.refit;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Compares the lists of the description with what was counted on the coach: a thing that was lost is seen by nothing else. */
public final class CountedOtherwise implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Finding> found = new ArrayList<>();
        coach.unit()
                .facts()
                .find(Unit.COUNTED)
                .ifPresent(counted -> counted.facts()
                        .each((key, count) -> told(coach.unit(), key, count).ifPresent(found::add)));
        return found.stream();
    }

    private static Optional<Finding> told(Unit unit, Key<?> key, Located<?> count) {
        Key<?> list = Unit.SHAPE.key(key.name()).orElseThrow();
        if (!unit.facts().read(list)) {
            return Optional.empty();
        }
        int described = unit.facts()
                .ifRead(list)
                .map(it -> ((List<?>) it.value()).size())
                .orElse(0);
        int counted = (Integer) count.value();
        return described == counted
                ? Optional.empty()
                : Optional.of(Finding.warning(
                                "counted-otherwise",
                                count.at(),
                                "`%s`: %d counted on the coach, %d described".formatted(key.name(), counted, described))
                        .mend(
                                described < counted
                                        ? "Describe what is lacking; if it is no longer on the coach, count anew."
                                        : "Take out what is not on the coach; if it is, count anew."));
    }
}
