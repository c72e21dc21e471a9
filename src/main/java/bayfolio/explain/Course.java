package bayfolio.explain;

import java.util.List;

/**
 * How something goes on in time, from full to empty.
 *
 * @param span how long, in its unit
 * @param unit of time, in words
 * @param limit the share below which it must not go; zero where there is none
 */
public record Course(double span, String unit, double limit, List<Line> lines) implements Plot {
    public record Point(double at, double share) {}

    /** @param label with what it comes to, rounded to the safe side */
    public record Line(String label, List<Point> points) {
        public Line {
            points = List.copyOf(points);
        }
    }

    public Course {
        lines = List.copyOf(lines);
    }
}
