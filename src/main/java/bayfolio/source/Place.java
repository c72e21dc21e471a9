package bayfolio.source;

/**
 * A stretch of a file, such as the word that a finding points at. Lines and columns are those of {@link Position}; they
 * stand here as numbers, since a place goes with every fact.
 *
 * @param endColumn one past the last character; where only a point is known, the end is the start
 */
public record Place(SourceFile file, int line, int column, int endLine, int endColumn) implements Comparable<Place> {
    public Place {
        Position start = new Position(line, column);
        Position end = new Position(endLine, endColumn);
        if (end.compareTo(start) < 0) {
            throw new IllegalArgumentException("a place ends at " + end + " before it starts at " + start);
        }
    }

    public Place(SourceFile file, Position start, Position end) {
        this(file, start.line(), start.column(), end.line(), end.column());
    }

    public static Place of(SourceFile file, int line, int column, int length) {
        return new Place(file, line, column, line, column + length);
    }

    /** The file as a whole, for what is wrong with all of it. */
    public static Place whole(SourceFile file) {
        return of(file, 1, 1, 0);
    }

    /** The first character. */
    public Position start() {
        return new Position(line, column);
    }

    /** One past the last character. */
    public Position end() {
        return new Position(endLine, endColumn);
    }

    @Override
    public int compareTo(Place other) {
        int byFile = file.path().compareTo(other.file.path());
        return byFile != 0 ? byFile : start().compareTo(other.start());
    }

    /** As in messages: {@code units/dunlin/unit.yaml:12:9}. */
    @Override
    public String toString() {
        return file.path() + ":" + line + ":" + column;
    }
}
