package bayfolio.model;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How full a tank is when its gauge shows a mark.
 *
 * @param mark as it stands on the gauge
 * @param share of the tank, from 0 to 1
 */
public record Level(String mark, double share) {
    private static final Pattern FRACTION = Pattern.compile("([0-9]+)/([0-9]+)");
    private static final Pattern PERCENT = Pattern.compile("([0-9]+) ?%");

    /** Of the first gauge of a tank whose every mark tells a share. */
    public static Optional<List<Level>> of(Tank tank, Coach coach) {
        return coach.unit().gauges().stream()
                .filter(gauge ->
                        !gauge.forStaff() && gauge.facts().all(Gauge.OF).contains(tank.id()))
                .flatMap(gauge -> of(gauge).stream())
                .findFirst();
    }

    /** The marks of a gauge, if there are two or more and each tells a share. */
    public static Optional<List<Level>> of(Gauge gauge) {
        List<Level> levels = gauge.facts().all(Gauge.MARKS).stream()
                .flatMap(mark -> share(mark).stream().mapToObj(share -> new Level(mark, share)))
                .toList();
        return levels.size() > 1
                        && levels.size() == gauge.facts().all(Gauge.MARKS).size()
                ? Optional.of(levels)
                : Optional.empty();
    }

    /** Empty and full by their letters, fractions, percent. */
    private static OptionalDouble share(String mark) {
        Matcher fraction = FRACTION.matcher(mark);
        Matcher percent = PERCENT.matcher(mark);
        double share = mark.equals("E") || mark.equals("0")
                ? 0
                : mark.equals("F")
                        ? 1
                        : fraction.matches()
                                ? Double.parseDouble(fraction.group(1)) / Double.parseDouble(fraction.group(2))
                                : percent.matches() ? Double.parseDouble(percent.group(1)) / 100 : -1;
        return share >= 0 && share <= 1 ? OptionalDouble.of(share) : OptionalDouble.empty();
    }
}
