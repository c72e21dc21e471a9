package bayfolio.measure;

import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;

/**
 * A unit a writer may put behind a number.
 *
 * @param spelling the one spelling taken, case and all
 * @param numeral how the number before it is written
 * @param toKept turns the written number into the unit the quantity is kept in
 * @param listed whether messages offer it; a second spelling of a unit is taken but not offered
 * @param words what people write for it instead, to know what they meant
 */
record WrittenUnit(String spelling, Numeral numeral, DoubleUnaryOperator toKept, boolean listed, List<String> words) {

    WrittenUnit {
        words = List.copyOf(words);
    }

    static WrittenUnit of(String spelling, double factor, String... words) {
        return of(spelling, Numeral.PLAIN, number -> number * factor, words);
    }

    static WrittenUnit of(String spelling, Numeral numeral, DoubleUnaryOperator toKept, String... words) {
        return new WrittenUnit(spelling, numeral, toKept, true, List.of(words));
    }

    WrittenUnit alsoSpelled(String other) {
        return new WrittenUnit(other, numeral, toKept, false, List.of());
    }

    boolean takes(String text) {
        return text.endsWith(spelling) && numeral.takes(numberIn(text));
    }

    double read(String text) {
        return toKept.applyAsDouble(numeral.reading().applyAsDouble(numberIn(text)));
    }

    Stream<String> names() {
        return Stream.concat(Stream.of(spelling), words.stream());
    }

    /** Those that nobody writes who measures in meters. */
    private static final Set<String> CUSTOMARY = Set.of(
            "in", "ft", "mi", "lb", "oz", "gal", "qt", "cup", "cups", "gal/h", "mph", "mpg", "psi", "°F", "F", "BTU/h",
            "AWG");

    /** The number and the unit with a space between them. */
    static String spaced(String written) {
        return written.strip().replaceFirst("(?<=[0-9])(?=[A-Za-z%]|°[CF])", " ");
    }

    /** The system that a text is written in. */
    static MeasureSystem system(String written) {
        String unit = written.substring(written.lastIndexOf(' ') + 1);
        return CUSTOMARY.contains(unit) ? MeasureSystem.US : MeasureSystem.METRIC;
    }

    private String numberIn(String text) {
        String number = text.substring(0, text.length() - spelling.length());
        return number.endsWith(" ") ? number.substring(0, number.length() - 1) : number;
    }
}
