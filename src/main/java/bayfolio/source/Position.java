package bayfolio.source;

/** A line and a column, both from 1; columns count code points, as editors show them. */
public record Position(int line, int column) implements Comparable<Position> {
    public Position {
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("line " + line + ", column " + column + " must be 1 or more");
        }
    }

    @Override
    public int compareTo(Position other) {
        return line != other.line ? Integer.compare(line, other.line) : Integer.compare(column, other.column);
    }
}
