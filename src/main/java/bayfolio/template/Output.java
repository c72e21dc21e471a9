package bayfolio.template;

import bayfolio.source.Place;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a template printed, with the place that every piece comes from. */
public final class Output extends Writer {
    /** More than any page; sections within sections over all things could else fill the memory. */
    private static final int MOST_CHARACTERS = 5_000_000;

    private final StringBuilder text;
    private final List<Piece> pieces = new ArrayList<>();
    private @Nullable String printed;

    /** The template repeats itself without end. */
    static final class TooLong extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /**
     * @param verbatim whether the text is printed as it stands, so that places within it can be counted
     */
    private record Piece(int start, Place at, boolean verbatim) {}

    /** @param length of the template, about which the output will have */
    Output(int length) {
        this.text = new StringBuilder(length);
    }

    /** What is written next comes from there. */
    void from(Place place, boolean verbatim) {
        pieces.add(new Piece(text.length(), place, verbatim));
    }

    @Override
    public void write(char[] chars, int offset, int length) {
        room(length);
        text.append(chars, offset, length);
    }

    @Override
    public void write(String words, int offset, int length) {
        room(length);
        text.append(words, offset, offset + length);
    }

    private void room(int length) {
        if (text.length() + length > MOST_CHARACTERS) {
            throw new TooLong();
        }
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}

    /** Asked for with every link in it, once all is printed. */
    public String text() {
        String known = printed;
        if (known == null || known.length() != text.length()) {
            known = text.toString();
            printed = known;
        }
        return known;
    }

    /**
     * The place in the template of a stretch of the output.
     *
     * @param offset in the output, in UTF-16 units
     * @param length of the stretch within its line, in UTF-16 units; a filled-in value is one place
     *     as a whole
     */
    public Place place(int offset, int length) {
        Piece piece = pieces.get(index(offset));
        Place at = piece.at();
        if (!piece.verbatim()) {
            return at;
        }
        int start = Math.min(Math.max(offset, piece.start), text.length());
        int end = Math.min(start + length, text.length());
        int column = at.column() + text.codePointCount(piece.start, start);
        return Place.of(at.file(), at.line(), column, Math.max(0, endColumn(at, start, end) - column));
    }

    /** A stretch that holds values is as long as it is written, not as long as it is printed. */
    private int endColumn(Place at, int start, int end) {
        Piece last = pieces.get(index(Math.max(start, end - 1)));
        Place lastAt = last.at();
        if (lastAt.line() != at.line() || lastAt.column() < at.column()) {
            return at.endColumn();
        }
        return last.verbatim()
                ? lastAt.column() + text.codePointCount(last.start, Math.max(last.start, end))
                : lastAt.endColumn();
    }

    public boolean isEmpty() {
        return pieces.isEmpty();
    }

    /** The last piece that begins at or before the offset. */
    private int index(int offset) {
        int low = 0;
        int high = pieces.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (pieces.get(middle).start <= offset) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }
}
