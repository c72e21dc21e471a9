package bayfolio.template;

import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;

/**
 * Marks put into a template before it is compiled, so that every piece of the output tells its
 * place.
 *
 * <p>A mark is three characters from Unicode's private use area in front of a stretch of text or of
 * a printed value. {@link Output} takes them out again. Lines that hold tags only get none, since
 * they print nothing.
 */
final class Marks {
    static final char START = '\uE000';
    private static final char DIGITS = '\uE100';
    private static final int BASE = 4096;

    /**
     * @param verbatim whether the text is printed as it stands, so that places within it can be
     *     counted
     */
    record Mark(Place at, boolean verbatim) {}

    private final List<Mark> marks = new ArrayList<>();
    private final Place first;
    private final String marked;

    Marks(SourceFile file, String text, int firstLine) {
        this.first = Place.of(file, firstLine, 1, 0);
        StringBuilder result = new StringBuilder();
        int line = firstLine;
        for (String each : text.replace(START, '\uFFFD').split("\n", -1)) {
            if (line > firstLine) {
                result.append('\n');
            }
            mark(file, line++, each, result);
        }
        this.marked = result.toString();
    }

    /** Where the template begins. */
    Place first() {
        return first;
    }

    String marked() {
        return marked;
    }

    Mark mark(char high, char low) {
        return marks.get((high - DIGITS) * BASE + (low - DIGITS));
    }

    private void mark(SourceFile file, int line, String text, StringBuilder result) {
        int from = 0;
        for (int start = text.indexOf("{{"); start >= 0; start = text.indexOf("{{", from)) {
            int close = text.indexOf("}}", start + 3);
            if (close < 0) {
                break;
            }
            int end = text.startsWith("}}}", close) ? close + 3 : close + 2;
            words(file, line, text, from, start, result);
            if ("#^/!>".indexOf(text.charAt(start + 2)) < 0) {
                append(file, line, text, start, end, false, result);
            }
            result.append(text, start, end);
            from = end;
        }
        words(file, line, text, from, text.length(), result);
    }

    private void words(SourceFile file, int line, String text, int from, int to, StringBuilder result) {
        String words = text.substring(from, to);
        if (!words.isBlank()) {
            append(file, line, text, from, to, true, result);
        }
        result.append(words);
    }

    private void append(
            SourceFile file, int line, String text, int from, int to, boolean verbatim, StringBuilder result) {
        Place at = Place.of(file, line, 1 + text.codePointCount(0, from), text.codePointCount(from, to));
        result.append(START).append((char) (DIGITS + marks.size() / BASE)).append((char)
                (DIGITS + marks.size() % BASE));
        marks.add(new Mark(at, verbatim));
    }
}
