package bayfolio.drawing;

import java.util.ArrayList;
import java.util.List;

/** Lines that go on in time, from nothing to full, each with a number that is told below. */
public final class Hours {
    private static final double WIDTH = 440;
    private static final double LEFT = 62;
    private static final double RIGHT = 360;
    private static final double TOP = 16;
    private static final double TALL = 170;
    private static final double LETTERS = 17;
    private static final double LINE = LETTERS + 7;
    private static final double RADIUS = 11;

    /** So many steps of time have their figures below. */
    private static final int MOST_TICKS = 7;

    /**
     * @param label what it is, and what it comes to, told below
     * @param points time, and how full it is then, from 0 to 1
     */
    public record Line(String label, List<Mark.Point> points) {
        public Line {
            points = List.copyOf(points);
        }
    }

    private final double span;
    private final List<Mark> marks = new ArrayList<>();

    private Hours(double span) {
        this.span = span;
    }

    /**
     * @param span of time
     * @param unit its word
     * @param limit below which it must not go, from 0 to 1; zero where there is none
     */
    public static Drawing of(double span, String unit, double limit, List<Line> lines) {
        Hours hours = new Hours(span);
        hours.frame(unit);
        if (limit > 0) {
            hours.marks.add(Mark.Path.through(LEFT, y(limit), RIGHT, y(limit)).broken());
        }
        List<Mark> numbers = new ArrayList<>();
        double below = TOP + TALL + 2 * LINE;
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            hours.line(line);
            double x = hours.along(line, (i + 1.0) / (lines.size() + 1));
            hours.number(numbers, i + 1, x, y(at(line, (x - LEFT) / (RIGHT - LEFT) * span)));
            hours.number(numbers, i + 1, RADIUS + 2, below);
            double room = WIDTH - 4 * RADIUS;
            double wide = new Mark.Label(line.label(), 0, 0, LETTERS).room().width();
            numbers.add(new Mark.Label(
                    line.label(),
                    3 * RADIUS,
                    below + LETTERS * 0.32,
                    LETTERS * Math.min(1, room / wide),
                    Mark.Label.Anchor.START));
            below += LINE + 4;
        }
        hours.marks.addAll(numbers);
        return new Drawing(WIDTH, below - LINE / 2, hours.marks);
    }

    private void frame(String unit) {
        marks.add(Mark.Path.through(LEFT, TOP, LEFT, TOP + TALL, RIGHT, TOP + TALL));
        for (int percent = 0; percent <= 100; percent += 25) {
            double y = y(percent / 100.0);
            marks.add(Mark.Path.through(LEFT - 5, y, LEFT, y));
            marks.add(new Mark.Label(percent + " %", LEFT - 9, y + LETTERS * 0.32, LETTERS - 2, Mark.Label.Anchor.END));
        }
        double step = step();
        for (double time = 0; time <= span + 1e-9; time += step) {
            marks.add(Mark.Path.through(x(time), TOP + TALL, x(time), TOP + TALL + 6));
            marks.add(new Mark.Label(String.valueOf(Math.round(time)), x(time), TOP + TALL + LINE, LETTERS - 2));
        }
        marks.add(new Mark.Label(unit, WIDTH - 2, TOP + TALL + LINE, LETTERS - 2, Mark.Label.Anchor.END));
    }

    /** Whole ones, as few as there is room for. */
    private double step() {
        double step = 1;
        while (span / step > MOST_TICKS - 1) {
            step++;
        }
        return step;
    }

    private double x(double time) {
        return LEFT + Math.min(1, time / span) * (RIGHT - LEFT);
    }

    private static double y(double share) {
        return TOP + TALL * (1 - Math.min(1, Math.max(0, share)));
    }

    private void line(Line line) {
        marks.add(new Mark.Path(
                line.points().stream()
                        .map(point -> new Mark.Point(x(point.x()), y(point.y())))
                        .toList(),
                false,
                Mark.Fill.NONE,
                false));
    }

    /** Where its number stands: at that part of its own length, so that those of several are side by side. */
    private double along(Line line, double part) {
        double end = line.points().get(line.points().size() - 1).x();
        return Math.max(LEFT + RADIUS, Math.min(RIGHT, x(end * part)));
    }

    private static double at(Line line, double time) {
        List<Mark.Point> points = line.points();
        for (int i = 1; i < points.size(); i++) {
            Mark.Point from = points.get(i - 1);
            Mark.Point to = points.get(i);
            if (time <= to.x() && to.x() > from.x()) {
                double part = Math.max(0, (time - from.x()) / (to.x() - from.x()));
                return from.y() + part * (to.y() - from.y());
            }
        }
        return points.get(points.size() - 1).y();
    }

    private void number(List<Mark> numbers, int number, double x, double y) {
        double right = x;
        // Two lines may meet where their numbers would stand.
        while (taken(numbers, right, y)) {
            right += 2 * RADIUS;
        }
        numbers.add(new Mark.Round("", right, y, RADIUS, Mark.Fill.PAPER));
        numbers.add(new Mark.Label(String.valueOf(number), right, y + 5, 15));
    }

    private static boolean taken(List<Mark> numbers, double x, double y) {
        return numbers.stream()
                .filter(Mark.Round.class::isInstance)
                .map(Mark.Round.class::cast)
                .anyMatch(it -> Math.hypot(it.x() - x, it.y() - y) < 2 * RADIUS);
    }
}
