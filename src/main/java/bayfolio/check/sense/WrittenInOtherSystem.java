package bayfolio.check.sense;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Described;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.finding.Finding;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Quantity;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Asks about the odd figure in the units of another continent: 32 L on a coach whose other tanks are told in gallons is
 * mostly 32 gal of which the unit was typed by habit, and lies within any range. Which system a coach is told in its own
 * figures tell: an imported one may be told as its plates are.
 */
public final class WrittenInOtherSystem implements Rule {
    /** Fewer figures tell no habit. */
    private static final int ENOUGH = 12;

    /** As many in one system as make those in the other odd ones. */
    private static final int AGAINST_ONE = 9;

    private record Written(Described record, Key<?> key, Located<?> value, MeasureSystem system) {
        Finding finding() {
            MeasureSystem usual = system.other();
            return Finding.warning(
                            "written-in-other-system",
                            value.at(),
                            "`%s` of %s is %s, and the other figures of this coach are in %s"
                                    .formatted(
                                            key.name(),
                                            Records.naming(record),
                                            value.written(),
                                            usual == MeasureSystem.US
                                                    ? "feet, pounds and gallons"
                                                    : "meters, kilograms and liters"))
                    .mend("Mend the unit if it was typed by habit; else write "
                            + ((Quantity) value.value()).in(usual)
                            + ", or say under `accept` why not.");
        }
    }

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Written> figures = new ArrayList<>();
        FactVisitor.of(coach.unit(), (record, key, type, value) -> {
            if (value.value() instanceof Quantity quantity
                    && !key.range().map(Range::eitherSystem).orElse(false)) {
                quantity.system(value.written())
                        .ifPresent(system -> figures.add(new Written(record, key, value, system)));
            }
        });
        Map<MeasureSystem, List<Written>> bySystem = figures.stream().collect(Collectors.groupingBy(Written::system));
        return figures.size() < ENOUGH
                ? Stream.of()
                : bySystem.values().stream()
                        .filter(odd -> odd.size() * AGAINST_ONE <= figures.size() - odd.size())
                        .flatMap(List::stream)
                        .map(Written::finding);
    }
}
