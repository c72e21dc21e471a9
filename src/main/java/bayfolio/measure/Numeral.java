package bayfolio.measure;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.regex.Pattern;

/**
 * A way to write the number before a unit.
 *
 * @param pattern what is taken, within the part of regular expressions that ECMA-262, Java and RE2
 *     share (so no lookahead); at most nine digits
 * @param inWords what is taken, to follow "before the unit goes"
 * @param reading the number a text that fits the pattern stands for
 */
record Numeral(String pattern, String inWords, ToDoubleFunction<String> reading) {
    private static final Map<String, Pattern> COMPILED = new ConcurrentHashMap<>();

    /** Up to six digits, in which a comma may set off the thousands. */
    static final String WHOLE = "(?:0|[1-9][0-9]{0,2}|[1-9][0-9]{0,2},?[0-9]{3})";

    // A group before a comma never starts with 0: `0,500` was meant as a decimal comma.
    private static final String UNSIGNED = "(?:(?:0|[1-9][0-9]{0,2})(?:\\.[0-9]{1,6})?"
            + "|[1-9][0-9]{0,2},?[0-9]{3}(?:\\.[0-9]{1,3})?"
            + "|[1-9][0-9]{6,8}|[1-9][0-9]{0,2}(?:,[0-9]{3}){2})";

    static final Numeral PLAIN = new Numeral(
            UNSIGNED, "a number such as 12.5 or 1,250, not negative and of nine digits at most", Numeral::number);

    static final Numeral SIGNED =
            new Numeral("-?" + UNSIGNED, "a number such as 12.5 or -7, of nine digits at most", Numeral::number);

    /** One to 999, for figures whose reciprocal is taken. */
    static final Numeral FROM_ONE =
            new Numeral("[1-9][0-9]{0,2}(?:\\.[0-9]{1,6})?", "a number from 1 to 999", Numeral::number);

    static final Numeral PERCENT = new Numeral(
            "(?:100(?:\\.0{1,6})?|[1-9]?[0-9](?:\\.[0-9]{1,6})?)", "a number from 0 to 100", Numeral::number);

    boolean takes(String text) {
        return COMPILED.computeIfAbsent(pattern, Pattern::compile).matcher(text).matches();
    }

    static double number(String text) {
        // Adding 0.0 makes `-0` an ordinary zero, equal to `0`.
        return Double.parseDouble(text.replace(",", "")) + 0.0;
    }
}
