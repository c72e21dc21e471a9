package bayfolio.source;

/**
 * A stretch of a file, such as the word that a finding points at.
 *
 * @param start the first character
 * @param end one past the last character; equal to {@code start} where only a point is known
 */
public record Place(SourceFile file, Position start, Position end) implements Comparable<Place> {
    public Place {
        if (end.compareTo(start) < 0) {
            throw new IllegalArgumentException("a place ends at " + end + " before it starts at " + start);
        }
    }

    public static Place of(SourceFile file, int line, int column, int length) {
        return new Place(file, new Position(line, column), new Position(line, column + length));
    }

    /** The file as a whole, for what is wrong with all of it. */
    public static Place whole(SourceFile file) {
        return of(file, 1, 1, 0);
    }

    public int line() {
        return start.line();
    }

    public int column() {
        return start.column();
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.path().compareTo(other.file.path());
        return byFile != 0 ? byFile : start.compareTo(other.start);
    }

    /** As in messages: {@code units/dunlin/unit.yaml:12:9}. */
    @Override
    public String toString() {
        return file.path() + ":" + line() + ":" + column();
    }
}
