package bayfolio.template;

import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * The text of a template, cut into words and tags, each with its place. The engine knows lines and no columns; but of each
 * section it takes them in the order in which they stand, and so each that it takes is the next one here.
 */
final class Tokens {
    private final Deque<Section> sections = new ArrayDeque<>();
    private final Deque<Section> open = new ArrayDeque<>();

    private record Words(String text, Place at) {}

    /** What stands in a section, and not in one of those within it; the first is the whole text. */
    static final class Section {
        private final Deque<Words> words = new ArrayDeque<>();
        private final Deque<Place> values = new ArrayDeque<>();
        private final Deque<Place> within = new ArrayDeque<>();

        /**
         * The place of words that are not blank; the engine takes them with their line break, or without the blanks before a
         * tag. Nothing where it takes what nobody has written.
         */
        Optional<Place> words(String text) {
            Words next = words.poll();
            if (next == null || !next.text.strip().equals(text.strip())) {
                return Optional.empty();
            }
            int shift = blanks(next.text) - blanks(text);
            return Optional.of(
                    shift == 0
                            ? next.at
                            : Place.of(
                                    next.at.file(),
                                    next.at.line(),
                                    Math.max(1, next.at.column() + shift),
                                    next.at.endColumn() - next.at.column() - shift));
        }

        /** Before the first letter. */
        private static int blanks(String text) {
            return text.length() - text.stripLeading().length();
        }

        /** The place of the next tag that prints. */
        Optional<Place> value() {
            return Optional.ofNullable(values.poll());
        }

        /** The place of the tag that begins the next section within it. */
        Optional<Place> within() {
            return Optional.ofNullable(within.poll());
        }
    }

    /** @param firstLine the line of the file that the text begins on */
    Tokens(SourceFile file, String text, int firstLine) {
        begin();
        int line = firstLine;
        for (String each : text.split("\n", -1)) {
            cut(file, line++, each);
        }
    }

    /** The next section, in the order in which they begin; an empty one where there is none. */
    Section section() {
        return sections.isEmpty() ? new Section() : sections.remove();
    }

    private void begin() {
        Section section = new Section();
        sections.add(section);
        open.push(section);
    }

    private void cut(SourceFile file, int line, String text) {
        int from = 0;
        for (int start = text.indexOf("{{"); start >= 0; start = text.indexOf("{{", from)) {
            int close = text.indexOf("}}", start + 2);
            if (close < 0) {
                break;
            }
            boolean triple = text.startsWith("{{{", start) && text.startsWith("}}}", close);
            int end = close + (triple ? 3 : 2);
            words(file, line, text, from, start);
            tag(text.substring(start + 2, close).stripLeading(), place(file, line, text, start, end));
            from = end;
        }
        words(file, line, text, from, text.length());
    }

    private void tag(String tag, Place at) {
        char sign = tag.isEmpty() ? ' ' : tag.charAt(0);
        if ("#^$<?".indexOf(sign) >= 0) {
            open.getFirst().within.add(at);
            begin();
        } else if (sign == '/') {
            if (open.size() > 1) {
                open.pop();
            }
        } else if ("!>%=".indexOf(sign) < 0) {
            open.getFirst().values.add(at);
        }
    }

    private void words(SourceFile file, int line, String text, int from, int to) {
        String cut = text.substring(from, to);
        if (!cut.isBlank()) {
            open.getFirst().words.add(new Words(cut, place(file, line, text, from, to)));
        }
    }

    private static Place place(SourceFile file, int line, String text, int from, int to) {
        return Place.of(file, line, 1 + text.codePointCount(0, from), text.codePointCount(from, to));
    }
}
