package bayfolio.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A side of a coach as one stands before it, to scale, with its doors and what slides out of it. Labels stand in their doors;
 * where one is too small, as near beside it as there is room.
 */
public final class SideView {
    private static final double WIDTH = 800;
    private static final double MARGIN = 12;
    private static final double LABEL = 25;
    private static final double GAP = 3;
    private static final double WHEEL = 0.38;

    /** Above the ground, of a body of which nobody has said it. */
    private static final double SKIRT = 0.35;

    /**
     * An opening in that side; lengths in meters.
     *
     * @param id of what it stands for
     * @param label such as {@code L3}; may be empty
     * @param from the front of the coach; on front and rear, from its left side
     * @param low above the ground
     */
    public record Opening(
            String id,
            String label,
            double from,
            double width,
            double low,
            double tall,
            Mark.Fill fill,
            boolean slides) {}

    private final double length;
    private final double height;
    private final boolean mirrored;
    private final double scale;

    /** Where the body begins: it stands in the middle. */
    private final double start;

    private final List<Mark> marks = new ArrayList<>();
    private final List<Mark.Label> labels = new ArrayList<>();
    private final Map<Opening, Mark.Box> boxes = new LinkedHashMap<>();

    private SideView(double length, double height, boolean mirrored, double longest) {
        this.length = length;
        this.height = height;
        this.mirrored = mirrored;
        this.scale = (WIDTH - 2 * MARGIN) / longest;
        this.start = (WIDTH - length * scale) / 2;
    }

    /**
     * @param length of the coach; across front and rear, its width
     * @param mirrored whether what is measured from the front, or from the left, begins at the right
     * @param longest of its sides, so that all are drawn to one scale
     * @param axles how far they are from the front
     */
    public static Drawing of(
            double length,
            double height,
            boolean mirrored,
            double longest,
            List<Double> axles,
            List<Opening> openings) {
        SideView view = new SideView(length, height, mirrored, longest);
        view.body(axles);
        openings.stream()
                .sorted(Comparator.comparing((Opening it) -> !it.slides()).thenComparing(Opening::from))
                .forEach(view::box);
        openings.stream()
                .filter(it -> !it.label().isEmpty())
                .sorted(Comparator.comparing(Opening::from))
                .forEach(view::label);
        view.marks.addAll(view.labels);
        return new Drawing(WIDTH, view.ground() + MARGIN, view.marks);
    }

    private double ground() {
        return MARGIN + height * scale;
    }

    private double left(double from, double width) {
        return start + (mirrored ? length - from - width : from) * scale;
    }

    private void body(List<Double> axles) {
        marks.add(new Mark.Box(
                "", start, MARGIN, length * scale, (height - SKIRT) * scale, 0.25 * scale, Mark.Fill.NONE, false));
        for (double axle : axles) {
            double x = left(axle, 0);
            marks.add(new Mark.Round(x, ground() - WHEEL * scale, WHEEL * scale));
            marks.add(new Mark.Round(x, ground() - WHEEL * scale, WHEEL * scale / 2.4));
        }
        marks.add(new Mark.Line(start - MARGIN, start + length * scale + MARGIN, ground()));
    }

    private void box(Opening opening) {
        double y = Math.max(MARGIN, ground() - (opening.low() + opening.tall()) * scale);
        Mark.Box box = new Mark.Box(
                opening.id(),
                left(opening.from(), opening.width()),
                y,
                opening.width() * scale,
                opening.tall() * scale,
                4,
                opening.fill(),
                opening.slides());
        boxes.put(opening, box);
        marks.add(box);
    }

    private void label(Opening opening) {
        Mark.Box box = Objects.requireNonNull(boxes.get(opening));
        Mark.Label inside = at(opening, middle(box, opening), box.y() + box.height() / 2 + LABEL * 0.32);
        boolean fits =
                inside.room().width() + 2 * GAP <= box.width() && LABEL + GAP <= box.height() && free(inside, box);
        labels.add(fits ? inside : beside(opening, box).orElse(inside));
    }

    /** Above the door or below, as near as there is room. */
    private Optional<Mark.Label> beside(Opening opening, Mark.Box box) {
        double x = middle(box, opening);
        double up = box.y() - GAP - Mark.Label.BELOW * LABEL;
        double down = box.y() + box.height() + GAP + (1 - Mark.Label.BELOW) * LABEL;
        for (double far = 0; far < ground(); far += LABEL / 3) {
            for (double aside : new double[] {0, LABEL * 0.6, -LABEL * 0.6}) {
                for (double y : new double[] {up - far, down + far}) {
                    Mark.Label label = at(opening, within(opening, x + aside), y);
                    if (y > MARGIN + LABEL && y < ground() && free(label, box)) {
                        return Optional.of(label);
                    }
                }
            }
        }
        return Optional.empty();
    }

    /** Of the box, as far as the label stays within the drawing. */
    private static double middle(Mark.Box box, Opening opening) {
        return within(opening, box.x() + box.width() / 2);
    }

    private static double within(Opening opening, double x) {
        double half = at(opening, 0, 0).room().width() / 2;
        return Math.min(WIDTH - half - GAP, Math.max(half + GAP, x));
    }

    private static Mark.Label at(Opening opening, double x, double y) {
        return new Mark.Label(opening.label(), x, y, LABEL);
    }

    /** Neither on another label nor on another door; a slide-out is large, and what is in it may bear labels. */
    private boolean free(Mark.Label label, Mark.Box own) {
        Mark.Box room = label.room();
        return labels.stream().noneMatch(it -> it.room().overlaps(room))
                && boxes.values().stream().noneMatch(it -> it != own && !it.dashed() && it.overlaps(room));
    }
}
