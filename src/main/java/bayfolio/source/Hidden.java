package bayfolio.source;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * Characters that nobody sees and that change what others see: control characters, which a terminal obeys, marks of the
 * writing direction, which turn text round, and halves of characters.
 *
 * @see <a href="https://www.unicode.org/reports/tr9/">UAX #9, 2: the marks of direction</a>
 */
public final class Hidden {
    private Hidden() {}

    /** Tabs and line breaks are no hidden characters. */
    public static boolean is(int point) {
        if (point >= ' ' && point < 0x7F || point == '\n' || point == '\t' || point == '\r') {
            return false;
        }
        return point <= 0x9F
                || point == 0x061C
                || point >= 0x200E && point <= 0x200F
                || point >= 0x2028 && point <= 0x202E
                || point >= 0x2066 && point <= 0x2069
                || point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
    }

    /** The first one in a text. */
    public static OptionalInt first(String text) {
        for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
            if (is(text.codePointAt(i))) {
                return OptionalInt.of(text.codePointAt(i));
            }
        }
        return OptionalInt.empty();
    }

    /** Its number in Unicode and its name: {@code U+202E, right-to-left override}. */
    public static String name(int point) {
        String name = Character.getType(point) == Character.SURROGATE ? null : Character.getName(point);
        return String.format("U+%04X", point) + (name == null ? "" : ", " + name.toLowerCase(Locale.ROOT));
    }

    /** The text with each written out as {@code <U+202E>}, to be printed. */
    public static String visible(String text) {
        return written(text, "<U+%04X>");
    }

    /** JSON in which each is an escape. */
    public static String escaped(String json) {
        return written(json, "\\u%04x");
    }

    private static String written(String text, String form) {
        if (first(text).isEmpty()) {
            return text;
        }
        StringBuilder written = new StringBuilder();
        text.codePoints().forEach(point -> {
            if (is(point)) {
                written.append(String.format(form, point));
            } else {
                written.appendCodePoint(point);
            }
        });
        return written.toString();
    }
}
