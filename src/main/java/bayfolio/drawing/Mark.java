package bayfolio.drawing;

/** One thing that is drawn; lengths are in units of the drawing, from its upper left corner. */
public sealed interface Mark {
    interface Visitor<R> {
        R box(Box mark);

        R round(Round mark);

        R line(Line mark);

        R label(Label mark);
    }

    <R> R accept(Visitor<R> visitor);

    /** How an area is told apart, in gray as well. */
    enum Fill {
        NONE,
        PLAIN,
        STRIPES,
        DOTS,
        CROSSES
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

    record Round(double x, double y, double radius) implements Mark {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.round(this);
        }
    }

    /** A level one. */
    record Line(double from, double to, double y) implements Mark {
        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.line(this);
        }
    }

    /**
     * Words in one line.
     *
     * @param x of their middle
     * @param y of their base line
     * @param size of a capital letter and the room around it
     */
    record Label(String words, double x, double y, double size) implements Mark {
        /** Of a bold letter, on the average, beside its size. */
        private static final double LETTER = 0.66;

        /** Of its room, what lies below the base line. */
        static final double BELOW = 0.18;

        /** The room that it takes. */
        public Box room() {
            double width = words.length() * LETTER * size;
            return new Box("", x - width / 2, y - size * (1 - BELOW), width, size, 0, Fill.NONE, false);
        }

        @Override
        public <R> R accept(Visitor<R> visitor) {
            return visitor.label(this);
        }
    }
}
