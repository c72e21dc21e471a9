package bayfolio.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A coach from above, to scale, its front at the left: doors along its walls, what slides out, in and out, and what is at
 * some place inside.
 */
public final class PlanView {
    private static final double WIDTH = 800;
    private static final double MARGIN = 12;

    /** How thick a door in a wall is drawn. */
    private static final double WALL = 16;

    /** How far from the edge one walks. */
    private static final double RIM = 7;

    private static final double ARROW = 9;

    /** Beside each wall, for labels. */
    private static final double BESIDE = 2 * Labels.SIZE + MARGIN;

    public enum Wall {
        LEFT,
        RIGHT,
        FRONT,
        REAR
    }

    /**
     * Something in a wall; lengths in meters.
     *
     * @param from the front; on front and rear, from the left
     * @param out how far it slides out of the wall; nothing where it does not
     */
    public record Part(String id, String label, Wall wall, double from, double width, double out, Mark.Fill fill) {
        /** The same, when it is not slid out. */
        public Part in() {
            return new Part(id, label, wall, from, width, 0, fill);
        }

        /** The same place, for another thing that is in it. */
        public Part of(String other) {
            return new Part(other, label, wall, from, width, out, fill);
        }
    }

    /**
     * A thing inside; lengths in meters.
     *
     * @param from the front
     * @param left from the left wall
     */
    public record Dot(String id, String label, double from, double left, Mark.Fill fill) {}

    private final double length;
    private final double width;
    private final double scale;
    private final double top;
    private final List<Mark> marks = new ArrayList<>();
    private final Map<Part, Mark.Box> boxes = new LinkedHashMap<>();

    private PlanView(double length, double width, List<Part> parts) {
        this.length = length;
        this.width = width;
        this.scale = (WIDTH - 2 * MARGIN) / length;
        double out = parts.stream()
                .filter(part -> part.wall() == Wall.RIGHT)
                .mapToDouble(Part::out)
                .max()
                .orElse(0);
        this.top = BESIDE + out * scale;
    }

    /** @param walk where a walk round it begins, along which wall; empty where none is shown */
    public static Drawing of(double length, double width, List<Part> parts, List<Dot> dots, Optional<Part> walk) {
        PlanView view = new PlanView(length, width, parts);
        view.marks.add(
                new Mark.Box("", MARGIN, view.top, length * view.scale, width * view.scale, 18, Mark.Fill.NONE, false));
        // The windshield tells which end is the front.
        view.marks.add(Mark.Path.through(
                MARGIN + 0.45 * view.scale,
                view.top,
                MARGIN + 0.3 * view.scale,
                view.top + width * view.scale / 2,
                MARGIN + 0.45 * view.scale,
                view.top + width * view.scale));
        parts.stream()
                // What slides out lies below all others, and a wide door below a narrow one.
                .sorted(Comparator.comparing((Part part) -> part.out() == 0)
                        .thenComparing(Part::width, Comparator.reverseOrder()))
                .forEach(view::part);
        double low = parts.stream()
                .filter(part -> part.wall() == Wall.LEFT)
                .mapToDouble(Part::out)
                .max()
                .orElse(0);
        double bottom = view.top + (width + low) * view.scale + BESIDE;
        List<Mark.Box> taken = new ArrayList<>();
        view.boxes.forEach((part, box) -> {
            if (part.out() == 0) {
                taken.add(box);
            }
        });
        Map<Dot, Mark.Box> rooms = new LinkedHashMap<>();
        for (Dot dot : dots) {
            double x = MARGIN + dot.from() * view.scale;
            double y = view.top + (width - dot.left()) * view.scale;
            view.marks.add(new Mark.Round(dot.id(), x, y, 9, dot.fill()));
            Mark.Box room = new Mark.Box(dot.id(), x - 9, y - 9, 18, 18, 0, Mark.Fill.NONE, false);
            rooms.put(dot, room);
            taken.add(room);
        }
        walk.ifPresent(door -> view.walk(door, bottom));
        Labels labels = new Labels(WIDTH, 0, bottom, taken);
        view.boxes.forEach((part, box) -> {
            if (!part.label().isEmpty()) {
                labels.place(part.label(), box);
            }
        });
        rooms.forEach((dot, room) -> {
            if (!dot.label().isEmpty()) {
                labels.place(dot.label(), room);
            }
        });
        view.marks.addAll(labels.marks());
        return new Drawing(WIDTH, Math.max(bottom, labels.end()), view.marks);
    }

    /** Out of the door, toward the rear, round the tail, forward along the other side and back: see the walking order. */
    private void walk(Part door, double bottom) {
        double near = door.wall() == Wall.LEFT ? bottom - RIM : RIM;
        double far = door.wall() == Wall.LEFT ? RIM : bottom - RIM;
        double out = MARGIN + (door.from() + door.width() / 2) * scale;
        double wall = door.wall() == Wall.LEFT ? top + width * scale : top;
        double right = WIDTH - RIM;
        marks.add(
                Mark.Path.through(out, wall, out, near, right, near, right, far, RIM, far, RIM, near, out - ARROW, near)
                        .broken());
        double toFar = Math.signum(far - near);
        arrow((out + right) / 2, near, 1, 0);
        arrow(right, (near + far) / 2, 0, toFar);
        arrow(WIDTH / 2, far, -1, 0);
        arrow(RIM, (near + far) / 2, 0, -toFar);
    }

    /** A head at a point, in a direction. */
    private void arrow(double x, double y, double across, double down) {
        double wide = ARROW * 0.6;
        marks.add(Mark.Path.of(
                true,
                Mark.Fill.HERE,
                x + across * ARROW,
                y + down * ARROW,
                x - down * wide,
                y + across * wide,
                x + down * wide,
                y - across * wide));
    }

    private void part(Part part) {
        double out = part.out() * scale;
        Mark.Box box = switch (part.wall()) {
            case LEFT -> along(part, top + width * scale - (out > 0 ? 0 : WALL / 2), Math.max(out, WALL));
            case RIGHT -> along(part, top - (out > 0 ? out : WALL / 2), Math.max(out, WALL));
            case FRONT -> across(part, MARGIN - WALL / 4);
            case REAR -> across(part, MARGIN + length * scale - WALL * 0.75);
        };
        boxes.put(part, box);
        marks.add(box);
    }

    private Mark.Box along(Part part, double y, double tall) {
        return new Mark.Box(
                part.id(), MARGIN + part.from() * scale, y, part.width() * scale, tall, 3, part.fill(), part.out() > 0);
    }

    /** What is measured from the left begins at the lower end. */
    private Mark.Box across(Part part, double x) {
        return new Mark.Box(
                part.id(),
                x,
                top + (width - part.from() - part.width()) * scale,
                WALL,
                part.width() * scale,
                3,
                part.fill(),
                false);
    }
}
