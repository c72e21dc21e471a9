package bayfolio.measure;

import java.util.List;

/**
 * A duration: how long a tank lasts, a pump may run, a slide takes; kept in seconds.
 *
 * @param value in seconds
 */
public record Seconds(double value) implements Quantity {
    // Exact, NIST SP 811 Appendix B.8; longer ones are left out, as years differ.
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double DAY = 86_400;

    /** Seconds, minutes, hours, days. */
    public static final Scale<Seconds> SCALE = Scale.of(
            "duration",
            "5 min",
            Seconds::new,
            WrittenUnit.of("s", 1, "sec", "second"),
            WrittenUnit.of("min", MINUTE, "minute"),
            WrittenUnit.of("h", HOUR, "hr", "hrs", "hour"),
            WrittenUnit.of("days", DAY),
            WrittenUnit.of("days", DAY).alsoSpelled("day"));

    private static final List<Step> LONGEST_FIRST =
            List.of(new Step(DAY, Symbol.DAY), new Step(HOUR, Symbol.HOUR), new Step(MINUTE, Symbol.MINUTE));

    public Seconds {
        Figure.requireFinite(value);
    }

    @Override
    public Scale<Seconds> scale() {
        return SCALE;
    }

    /**
     * {@code 40 s}, {@code 5 min}, {@code 36 h}, {@code 3 days} in either system: the longest unit
     * that divides the duration, else the longest of which there are two, to a tenth.
     */
    @Override
    public Amount amount(MeasureSystem system) {
        double size = Math.abs(value);
        for (Step step : LONGEST_FIRST) {
            double count = Figure.rounded(size / step.seconds(), 6);
            if (count >= 1 && count == Math.rint(count)) {
                return step.print(value);
            }
        }
        for (Step step : LONGEST_FIRST) {
            if (size >= 2 * step.seconds()) {
                return step.print(value);
            }
        }
        return Amount.of(Figure.of(value, 1), Symbol.SECOND);
    }

    private record Step(double seconds, Symbol unit) {
        Amount print(double duration) {
            return Amount.of(Figure.of(duration / seconds, 1), unit);
        }
    }
}
