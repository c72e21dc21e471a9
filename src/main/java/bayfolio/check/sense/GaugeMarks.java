package bayfolio.check.sense;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Gauge;
import bayfolio.model.Level;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a gauge that would be drawn otherwise than it is told: at no mark of it, at another one, or its marks out of order. */
public final class GaugeMarks implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().gauges().stream()
                .flatMap(gauge -> Stream.of(noMark(gauge), otherwise(gauge), outOfOrder(gauge))
                        .flatMap(Optional::stream));
    }

    private static Optional<Finding> noMark(Gauge gauge) {
        List<String> marks = gauge.facts().all(Gauge.MARKS);
        return reads(gauge)
                .filter(it -> !marks.isEmpty() && !marks.contains(it.value()))
                .map(it -> Finding.error(
                                "reads-no-mark", it.at(), "there is no mark `" + it.value() + "` on " + named(gauge))
                        .near(NearNames.to(it.value(), marks))
                        .mend("Name the mark at which it stands when all is well."));
    }

    /** The words name marks, and not this one. */
    private static Optional<Finding> otherwise(Gauge gauge) {
        return reads(gauge)
                .filter(it -> gauge.facts()
                        .find(Gauge.NORMAL)
                        .filter(words -> !names(words, it.value())
                                && gauge.facts().all(Gauge.MARKS).stream().anyMatch(mark -> names(words, mark)))
                        .isPresent())
                .map(it -> Finding.warning(
                                "reads-against-normal",
                                it.at(),
                                named(gauge) + " is drawn at `" + it.value() + "`, and `normal` says otherwise: "
                                        + gauge.facts().get(Gauge.NORMAL))
                        .mend("Look at the coach, and correct the one or the other."));
    }

    private static Optional<Finding> outOfOrder(Gauge gauge) {
        List<Level> levels = Level.of(gauge).orElse(List.of());
        for (int i = 1; i < levels.size(); i++) {
            if (levels.get(i).share() <= levels.get(i - 1).share()) {
                return Optional.of(Finding.warning(
                                "marks-out-of-order",
                                gauge.facts()
                                        .located(Gauge.MARKS)
                                        .orElseThrow()
                                        .value()
                                        .get(i)
                                        .at(),
                                "mark `" + levels.get(i).mark() + "` of " + named(gauge) + " stands above `"
                                        + levels.get(i - 1).mark() + "`, and is not more")
                        .mend("Write the marks from empty to full."));
            }
        }
        return Optional.empty();
    }

    private static boolean names(String words, String mark) {
        return Pattern.compile("(?<![\\w/.])" + Pattern.quote(mark) + "(?![\\w/]|\\.[0-9])")
                .matcher(words)
                .find();
    }

    private static Optional<Located<String>> reads(Gauge gauge) {
        return gauge.facts().located(Gauge.READS);
    }

    private static String named(Thing gauge) {
        return "gauge `" + gauge.id() + "`";
    }
}
