package bayfolio.measure;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.joining;
import static java.util.stream.Collectors.toList;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What is measured, such as a volume, and every way to write one: a number, at most one space, and
 * a unit in its exact spelling.
 *
 * @param <Q> the quantity it reads
 */
public final class Scale<Q extends Quantity> {
    private final String name;
    private final String example;
    private final DoubleFunction<Q> quantity;
    private final List<WrittenUnit> ways;
    private final Pattern pattern;

    private Scale(String name, String example, DoubleFunction<Q> quantity, List<WrittenUnit> ways) {
        this.name = name;
        this.example = example;
        this.quantity = quantity;
        this.ways = ways;
        this.pattern = Pattern.compile(anchored(ways));
    }

    static <Q extends Quantity> Scale<Q> of(
            String name, String example, DoubleFunction<Q> quantity, WrittenUnit... ways) {
        return new Scale<>(name, example, quantity, List.of(ways));
    }

    /** Every scale there is. */
    public static List<Scale<?>> all() {
        // A method and not a constant: the records make their scales while this class is loading.
        return List.of(
                Meters.SCALE,
                Kilograms.SCALE,
                Liters.SCALE,
                Watts.SCALE,
                Volts.SCALE,
                Amps.SCALE,
                AmpHours.SCALE,
                WattHours.SCALE,
                Kilopascals.SCALE,
                Celsius.SCALE,
                Seconds.SCALE,
                Share.SCALE,
                LitersPerHour.SCALE,
                KilometersPerHour.SCALE,
                Degrees.SCALE,
                SquareMillimeters.SCALE,
                LitersPer100Kilometers.SCALE);
    }

    /** What is measured, in plain words: {@code length}, {@code volume}, {@code current}. */
    public String name() {
        return name;
    }

    /** One quantity written as it is taken: {@code 100 gal}. */
    public String example() {
        return example;
    }

    /** The unit that a quantity is kept in, as it is written; empty where it has none, as a share of a whole. */
    public String kept() {
        return ways.stream()
                .map(WrittenUnit::spelling)
                .filter(unit -> one(unit) == 1)
                .findFirst()
                .orElse("");
    }

    /** One of a unit, in the unit that it is kept in. */
    private double one(String unit) {
        return ways.stream()
                .filter(way -> way.takes("1 " + unit))
                .findFirst()
                .map(way -> way.read("1 " + unit))
                .orElse(Double.NaN);
    }

    /** Every spelling of a unit taken; those that messages offer come first, in that order. */
    public List<String> units() {
        return Stream.concat(offered().stream(), ways.stream().map(WrittenUnit::spelling))
                .distinct()
                .toList();
    }

    /**
     * A regular expression that accepts what {@link #parse} does and nothing else, anchored, and
     * written in what ECMA-262 and Java have in common, for a JSON Schema.
     */
    public String pattern() {
        return pattern.pattern();
    }

    /**
     * The quantity a text stands for.
     *
     * @throws NotAQuantityException if the text does not fit {@link #pattern}
     */
    public Q parse(String text) throws NotAQuantityException {
        if (!accepts(text)) {
            throw new NotAQuantityException(Refusal.of(text, this));
        }
        for (WrittenUnit way : ways) {
            if (way.takes(text)) {
                return quantity.apply(way.read(text));
            }
        }
        throw new IllegalStateException("`" + text + "` fits " + pattern + " but no unit reads it");
    }

    boolean accepts(String text) {
        return pattern.matcher(text).matches();
    }

    List<WrittenUnit> ways() {
        return ways;
    }

    List<String> offered() {
        return ways.stream()
                .filter(WrittenUnit::listed)
                .map(WrittenUnit::spelling)
                .distinct()
                .toList();
    }

    @Override
    public String toString() {
        return name;
    }

    private static String anchored(List<WrittenUnit> ways) {
        Map<String, List<WrittenUnit>> byNumeral =
                ways.stream().collect(groupingBy(way -> way.numeral().pattern(), LinkedHashMap::new, toList()));
        return byNumeral.entrySet().stream()
                .map(entry -> entry.getValue().stream()
                        .map(WrittenUnit::spelling)
                        .collect(joining("|", entry.getKey() + " ?(?:", ")")))
                .collect(joining("|", "^(?:", ")$"));
    }
}
