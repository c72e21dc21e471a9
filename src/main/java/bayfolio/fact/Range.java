package bayfolio.fact;

import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Quantity;
import bayfolio.measure.Scale;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a figure can be, declared with its key. Outside the hard bounds it cannot be; outside the usual ones it is asked
 * about. Bounds guard against slips of the pen: none of them is a limit to be told to a renter.
 *
 * <p>Bounds may hold in certain circumstances only, such as for a body or a kind of tank; of those that hold, the most
 * particular counts.
 *
 * <pre>{@code
 * Range.of("1.9 m", "4.42 m")
 *         .in("europe", "1.9 m", "4 m")
 *         .usual("bus-style", "3.2 m", "4.12 m")
 *         .usual("low-profile|van", "2.4 m", "3.25 m")
 *         .because("13 ft 6 in to 14 ft 6 in in North America, 4.00 m in Europe")
 * }</pre>
 *
 * <p>An end is written as a writer writes the figure; a whole number as such; a day as {@code as-of}, {@code as-of - 3
 * years} or {@code model-year - 2 years}, and a year likewise.
 */
public final class Range {
    private static final Pattern RELATIVE = Pattern.compile("(as-of|model-year)(?: ([+-]) ([0-9]+) (days|years))?");
    static final String AS_OF = "as-of";
    private static final String COMMON_PRACTICE = "common practice, no source";

    /** What is known of the record that a figure stands in. */
    public interface Circumstances {
        /**
         * Whether a word holds: a region or body of the coach, the kind of the record, a word chosen in it or a role
         * that it holds.
         */
        boolean hold(String word);

        /** The day as of which the fleet is looked at; empty where nothing tells. */
        Optional<LocalDate> asOf();

        /** The first of January of the model year of the coach; empty where that is not stated. */
        Optional<LocalDate> modelYear();
    }

    /** One end of bounds, for one value of figures kept in base units: meters, a share of 1, days since 1970. */
    private sealed interface End {
        OptionalDouble of(Circumstances circumstances);

        /** As told to a writer: as written, or the day or year that it comes to. */
        String told(String written, Circumstances circumstances);

        record Fixed(double value) implements End {
            @Override
            public OptionalDouble of(Circumstances circumstances) {
                return OptionalDouble.of(value);
            }

            @Override
            public String told(String written, Circumstances circumstances) {
                return written;
            }
        }

        /**
         * @param yearsOnly whether the figure is a year and no day
         */
        record Relative(boolean toAsOf, int days, int years, boolean yearsOnly) implements End {
            @Override
            public OptionalDouble of(Circumstances circumstances) {
                Optional<LocalDate> day = day(circumstances);
                return day.isEmpty()
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(
                                yearsOnly ? day.get().getYear() : day.get().toEpochDay());
            }

            @Override
            public String told(String written, Circumstances circumstances) {
                return day(circumstances)
                        .map(day -> yearsOnly ? Integer.toString(day.getYear()) : day.toString())
                        .orElse(written);
            }

            private Optional<LocalDate> day(Circumstances circumstances) {
                return (toAsOf ? circumstances.asOf() : circumstances.modelYear())
                        .map(it -> it.plusYears(years).plusDays(days));
            }
        }
    }

    /**
     * From a least to a most, both of them within.
     *
     * @param when all of these hold, and of each one of its words
     */
    public record Bounds(List<Set<String>> when, String least, String most) {
        public Bounds {
            when = List.copyOf(when);
        }

        boolean hold(Circumstances circumstances) {
            return when.stream().allMatch(words -> words.stream().anyMatch(circumstances::hold));
        }

        /** For writers: {@code 3.2 m to 4.12 m (bus-style)}. */
        public String inWords() {
            return least + " to " + most + where();
        }

        private String where() {
            return when.isEmpty()
                    ? ""
                    : when.stream()
                            .map(words -> String.join(" or ", words))
                            .collect(Collectors.joining(", ", " (", ")"));
        }
    }

    /**
     * A figure that lies outside.
     *
     * @param between the bounds as told to the writer: {@code 3.2 m and 4.12 m (bus-style)}
     * @param hard whether it cannot be at all
     */
    public record Outside(String between, boolean hard) {}

    private record Level(List<Bounds> bounds) {
        Level with(Bounds more) {
            return new Level(Stream.concat(bounds.stream(), Stream.of(more)).toList());
        }
    }

    /** Bounds with their ends worked out once. */
    private record Read(Bounds bounds, End least, End most) {
        String between(Circumstances circumstances) {
            return least.told(bounds.least(), circumstances)
                    + " and "
                    + most.told(bounds.most(), circumstances)
                    + bounds.where();
        }

        boolean outside(double value, Circumstances circumstances) {
            // Half a billionth: 90 in. written as 7.5 ft is not outside of 90 in.
            double slip = Math.abs(value) * 5e-10;
            OptionalDouble low = least.of(circumstances);
            OptionalDouble high = most.of(circumstances);
            return low.isPresent() && value < low.getAsDouble() - slip
                    || high.isPresent() && value > high.getAsDouble() + slip;
        }
    }

    private final Level hard;
    private final Level usual;
    private final boolean orNothing;
    private final boolean eitherSystem;
    private final String reason;
    private final String source;

    private Range(Level hard, Level usual, boolean orNothing, boolean eitherSystem, String reason, String source) {
        this.hard = hard;
        this.usual = usual;
        this.orNothing = orNothing;
        this.eitherSystem = eitherSystem;
        this.reason = reason;
        this.source = source;
    }

    /** What cannot be less or more, whatever coach it is on. */
    public static Range of(String least, String most) {
        return new Range(
                new Level(List.of(new Bounds(List.of(), least, most))),
                new Level(List.of()),
                false,
                false,
                "",
                COMMON_PRACTICE);
    }

    /**
     * What cannot be less or more in certain circumstances.
     *
     * @param when words with blanks between them, all of which hold; of {@code a|b} either
     */
    public Range in(String when, String least, String most) {
        return new Range(
                hard.with(new Bounds(words(when), least, most)), usual, orNothing, eitherSystem, reason, source);
    }

    /** What is usual, whatever coach it is on. */
    public Range usual(String least, String most) {
        return usual("", least, most);
    }

    /** What is usual in certain circumstances; see {@link #in}. */
    public Range usual(String when, String least, String most) {
        return new Range(
                hard, usual.with(new Bounds(words(when), least, most)), orNothing, eitherSystem, reason, source);
    }

    /** Nothing is a figure too, by which something is said to be not allowed or left out. */
    public Range orNothing() {
        return new Range(hard, usual, true, eitherSystem, reason, source);
    }

    /** It is copied from a plate, which may be in the units of another continent. */
    public Range asOnThePlate() {
        return new Range(hard, usual, orNothing, true, reason, source);
    }

    /** Why these bounds, in a few words. */
    public Range because(String words) {
        return new Range(hard, usual, orNothing, eitherSystem, words, source);
    }

    /** The published source of the bounds; common practice where this is not said. */
    public Range source(String published) {
        return new Range(hard, usual, orNothing, eitherSystem, reason, published);
    }

    /** Whether it may be in the units of another continent without a question. */
    public boolean eitherSystem() {
        return eitherSystem;
    }

    public String reason() {
        return reason;
    }

    public String source() {
        return source;
    }

    public List<Bounds> hard() {
        return hard.bounds();
    }

    public List<Bounds> usual() {
        return usual.bounds();
    }

    /** For writers, one sentence or two. */
    public String inWords() {
        String usually = usual.bounds().isEmpty()
                ? ""
                : "Usually " + usual.bounds().stream().map(Bounds::inWords).collect(Collectors.joining("; ")) + ". ";
        return usually
                + "Never outside "
                + hard.bounds().stream().map(Bounds::inWords).collect(Collectors.joining("; "))
                + (orNothing ? ", or 0" : "")
                + ". ("
                + (reason.isEmpty() ? "" : reason + "; ")
                + source
                + ")";
    }

    private static List<Set<String>> words(String when) {
        return when.isBlank()
                ? List.of()
                : Stream.of(when.split(" ", -1)).map(Range::either).toList();
    }

    /** In the order in which they are written, since they are told so. */
    private static Set<String> either(String words) {
        return Collections.unmodifiableSet(new LinkedHashSet<>(List.of(words.split("\\|", -1))));
    }

    /**
     * The range as figures of one type are held against it.
     *
     * @throws IllegalArgumentException for a type that has no figures, or an end that is none of that type
     */
    Judge of(Type<?> type) {
        return new Judge(this, read(hard, type), read(usual, type));
    }

    private static List<Read> read(Level level, Type<?> type) {
        List<Read> all = new ArrayList<>();
        for (Bounds each : level.bounds()) {
            all.add(new Read(each, end(each.least(), type), end(each.most(), type)));
        }
        return all;
    }

    private static End end(String written, Type<?> type) {
        Matcher relative = RELATIVE.matcher(written);
        if (relative.matches()) {
            int count = relative.group(3) == null
                    ? 0
                    : Integer.parseInt(relative.group(3)) * (relative.group(2).equals("-") ? -1 : 1);
            boolean days = "days".equals(relative.group(4));
            return new End.Relative(
                    relative.group(1).equals("as-of"), days ? count : 0, days ? 0 : count, type instanceof Type.Whole);
        }
        try {
            if (type instanceof Type.Measured<?> measured) {
                return new End.Fixed(measure(measured.scale(), written));
            }
            if (type instanceof Type.Whole) {
                return new End.Fixed(Integer.parseInt(written));
            }
        } catch (NotAQuantityException | NumberFormatException e) {
            throw new IllegalArgumentException("`" + written + "` is no end of a range here", e);
        }
        throw new IllegalArgumentException("`" + written + "` is no end of a range of such a type");
    }

    private static <Q extends Quantity> double measure(Scale<Q> scale, String written) throws NotAQuantityException {
        return scale.parse(written).value();
    }

    /** Holds figures against a range. */
    public static final class Judge {
        private final Range range;
        private final List<Read> hard;
        private final List<Read> usual;

        private Judge(Range range, List<Read> hard, List<Read> usual) {
            this.range = range;
            this.hard = hard;
            this.usual = usual;
        }

        public Range range() {
            return range;
        }

        /**
         * @param value a quantity, a whole number or a day
         * @return the bounds that it lies outside of; empty where it can be and is usual
         */
        public Optional<Outside> judge(Object value, Circumstances circumstances) {
            double figure = figure(value);
            if (range.orNothing && figure == 0) {
                return Optional.empty();
            }
            return outside(hard, figure, circumstances)
                    .map(bounds -> new Outside(bounds, true))
                    .or(() -> outside(usual, figure, circumstances).map(bounds -> new Outside(bounds, false)));
        }

        /** Whether all that lies within one of its bounds lies within another; true where the day tells. */
        public boolean within(Bounds inner, Bounds outer) {
            Read in = find(inner);
            Read out = find(outer);
            return !(in.least() instanceof End.Fixed least
                            && out.least() instanceof End.Fixed from
                            && least.value() < from.value() - 1e-9)
                    && !(in.most() instanceof End.Fixed most
                            && out.most() instanceof End.Fixed to
                            && most.value() > to.value() + 1e-9);
        }

        private Read find(Bounds bounds) {
            return Stream.concat(hard.stream(), usual.stream())
                    .filter(it -> it.bounds() == bounds)
                    .findFirst()
                    .orElseThrow();
        }

        /** The most particular bounds that hold; where there are several, a figure within either of them is within. */
        private static Optional<String> outside(List<Read> level, double figure, Circumstances circumstances) {
            List<Read> holding = level.stream()
                    .filter(each -> each.bounds().hold(circumstances))
                    .toList();
            int most = holding.stream()
                    .mapToInt(each -> each.bounds().when().size())
                    .max()
                    .orElse(0);
            List<Read> particular = holding.stream()
                    .filter(each -> each.bounds().when().size() == most)
                    .toList();
            return particular.stream().allMatch(each -> each.outside(figure, circumstances))
                    ? particular.stream()
                            .map(each -> each.between(circumstances))
                            .findFirst()
                    : Optional.empty();
        }

        private static double figure(Object value) {
            if (value instanceof Quantity quantity) {
                return quantity.value();
            }
            return value instanceof LocalDate day ? day.toEpochDay() : ((Integer) value).doubleValue();
        }
    }
}
