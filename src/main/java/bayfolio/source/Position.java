package bayfolio.source;

import java.util.Comparator;

/** A line and a column, both from 1; columns count code points, as editors show them. */
public record Position(int line, int column) implements Comparable<Position> {
    private static final Comparator<Position> ORDER =
            Comparator.comparingInt(Position::line).thenComparingInt(Position::column);

    public Position {
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("line " + line + ", column " + column + " must be 1 or more");
        }
    }

    @Override
    public int compareTo(Position other) {
        return ORDER.compare(this, other);
    }
}
