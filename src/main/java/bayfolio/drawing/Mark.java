package bayfolio.drawing;

import java.util.ArrayList;
import java.util.List;

/** One thing that is drawn; lengths are in units of the drawing, from its upper left corner. */
public sealed interface Mark {
    interface Visitor<R> {
        R box(Box mark);

        R round(Round mark);

        R path(Path mark);

        R label(Label mark);

        R symbol(Symbol mark);
    }

    <R> R accept(Visitor<R> visitor);

    /** How an area is told apart, in gray as well. */
    enum Fill {
        NONE,
        PLAIN,
        STRIPES,
        DOTS,
        CROSSES,
        /** What lies below a sign, so that it is read on any pattern. */
        PAPER,
        /** What one is to look at. */
        HERE
    }

    /**
     * @param of the id of what it stands for; empty where it is part of the coach
     * @param corner radius
     */
    record Box(String of, double x, double y, double width, double height, double corner, Fill fill, boolean dashed)
            implements Mark {
        boolean overlaps(Box other) {
            return x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.box(this);
        }
    }

    /** @param of the id of what it stands for; empty where it is part of the coach */
    record Round(String of, double x, double y, double radius, Fill fill) implements Mark {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.round(this);
        }
    }

    record Point(double x, double y) {}

    /**
     * A sign that the reader knows from elsewhere, in a square.
     *
     * @param name by which it is looked up
     * @param x of the left edge
     */
    record Symbol(String name, double x, double y, double size) implements Mark {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.symbol(this);
        }
    }

    /** Straight from point to point. */
    record Path(List<Point> points, boolean closed, Fill fill, boolean dashed) implements Mark {
        public Path {
            points = List.copyOf(points);
        }

        /** A line through points that are given as x and y by turns. */
        static Path through(double... across) {
            return of(false, Fill.NONE, across);
        }

        static Path of(boolean closed, Fill fill, double... across) {
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < across.length; i += 2) {
                points.add(new Point(across[i], across[i + 1]));
            }
            return new Path(points, closed, fill, false);
        }

        Path broken() {
            return new Path(points, closed, fill, true);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.path(this);
        }
    }

    /**
     * Words in one line.
     *
     * @param x of their middle, or of where they begin or end
     * @param y of their base line
     * @param size of a capital letter and the room around it
     */
    record Label(String words, double x, double y, double size, Anchor anchor) implements Mark {
        /** Which part of the words is at their place. */
        enum Anchor {
            START,
            MIDDLE,
            END
        }

        Label(String words, double x, double y, double size) {
            this(words, x, y, size, Anchor.MIDDLE);
        }

        /** Of a bold letter, on the average, beside its size. */
        private static final double LETTER = 0.66;

        /** Of its room, what lies below the base line. */
        static final double BELOW = 0.18;

        /** The room that it takes. */
        public Box room() {
            double width = words.length() * LETTER * size;
            double left = switch (anchor) {
                case START -> x;
                case MIDDLE -> x - width / 2;
                case END -> x - width;
            };
            return new Box("", left, y - size * (1 - BELOW), width, size, 0, Fill.NONE, false);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.label(this);
        }
    }
}
