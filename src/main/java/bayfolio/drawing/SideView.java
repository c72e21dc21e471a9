package bayfolio.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A side of a coach as one stands before it, to scale, with its doors and what slides out of it. Labels stand in their doors;
 * where one is too small, as near beside it as there is room.
 */
public final class SideView {
    private static final double WIDTH = 800;
    private static final double MARGIN = 12;
    private static final double WHEEL = 0.38;

    /** Of a windshield, as it is drawn: above the ground, and along the side. */
    private static final double SILL = 1.35;

    private static final double DEEP = 0.7;

    /** Above the ground, of a body of which nobody has said it. */
    private static final double SKIRT = 0.35;

    /**
     * The coach as it is seen from that side; lengths in meters.
     *
     * @param length of the coach; across front and rear, its width
     * @param mirrored whether what is measured from the front, or from the left, begins at the right
     * @param longest of its sides, so that all are drawn to one scale
     * @param axles how far they are from the front
     */
    public record Body(double length, double height, boolean mirrored, double longest, List<Double> axles) {
        public Body {
            axles = List.copyOf(axles);
        }
    }

    /**
     * An opening in that side; lengths in meters.
     *
     * @param id of what it stands for
     * @param label such as {@code L3}; may be empty
     * @param from the front of the coach; on front and rear, from its left side
     * @param low above the ground
     * @param symbol of what it belongs to; may be empty
     */
    public record Opening(
            String id,
            String label,
            double from,
            double width,
            double low,
            double tall,
            Mark.Fill fill,
            boolean slides,
            String symbol) {}

    /**
     * Where something is joined to that side; lengths in meters.
     *
     * @param from the front, of its middle
     * @param symbol of what comes through it
     */
    public record Joint(String id, String symbol, double from, double high) {}

    /**
     * A spot on that side that a list below speaks of; lengths in meters.
     *
     * @param from the front, of its middle
     */
    public record Spot(String number, double from, double high) {}

    private static final double SIGN = 20;

    private final double length;
    private final double height;
    private final boolean mirrored;
    private final double width;
    private final double scale;

    /** Where the body begins: it stands in the middle. */
    private final double start;

    private final List<Mark> marks = new ArrayList<>();
    private final List<Mark.Box> signs = new ArrayList<>();
    private final Map<Opening, Mark.Box> boxes = new LinkedHashMap<>();

    /** @param snug whether its field is no wider than it */
    private SideView(Body body, boolean snug) {
        this.length = body.length();
        this.height = body.height();
        this.mirrored = body.mirrored();
        this.scale = (WIDTH - 2 * MARGIN) / body.longest();
        this.width = snug ? length * scale + 4 * MARGIN : WIDTH;
        this.start = (width - length * scale) / 2;
    }

    public static Drawing of(Body body, List<Opening> openings, List<Joint> joints) {
        return of(new SideView(body, false), body.axles(), openings, joints, List.of());
    }

    /**
     * The same in outline, no wider than it is, so that front and rear take no more room than they need.
     *
     * @param spots with their numbers, above all else
     */
    public static Drawing outline(Body body, List<Opening> openings, List<Spot> spots) {
        return of(new SideView(body, true), body.axles(), openings, List.of(), spots);
    }

    private static Drawing of(
            SideView view, List<Double> axles, List<Opening> openings, List<Joint> joints, List<Spot> spots) {
        view.body(axles);
        openings.stream()
                .sorted(Comparator.comparing((Opening it) -> !it.slides()).thenComparing(Opening::from))
                .forEach(view::box);
        // Of a door that has a sign, its code has the room beside that.
        Map<Opening, Mark.Box> rooms = new LinkedHashMap<>();
        view.boxes.forEach((opening, box) -> rooms.put(opening, view.signed(opening, box)));
        List<Mark.Box> taken = new ArrayList<>();
        rooms.forEach((opening, room) -> {
            if (!opening.slides()) {
                taken.add(room);
            }
        });
        taken.addAll(view.signs);
        joints.stream().sorted(Comparator.comparing(Joint::from)).forEach(joint -> taken.add(view.joined(joint)));
        Labels labels = new Labels(view.width, MARGIN, view.ground(), taken);
        openings.stream()
                .filter(it -> !it.label().isEmpty())
                .sorted(Comparator.comparing(Opening::from))
                .forEach(it -> labels.place(it.label(), Objects.requireNonNull(rooms.get(it))));
        view.marks.addAll(labels.marks());
        spots.forEach(view::spot);
        return new Drawing(view.width, Math.max(view.ground(), labels.end()) + MARGIN, view.marks);
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
        if (!axles.isEmpty()) {
            // The windshield tells which end is the front.
            marks.add(Mark.Path.through(
                    left(0, 0),
                    ground() - SILL * scale,
                    left(DEEP, 0),
                    ground() - SILL * scale,
                    left(DEEP / 2, 0),
                    ground() - Math.min(height - 0.4, SILL + 1) * scale,
                    left(0, 0),
                    ground() - Math.min(height - 0.4, SILL + 1) * scale));
        }
        for (double axle : axles) {
            double x = left(axle, 0);
            marks.add(new Mark.Round("", x, ground() - WHEEL * scale, WHEEL * scale, Mark.Fill.NONE));
            marks.add(new Mark.Round("", x, ground() - WHEEL * scale, WHEEL * scale / 2.4, Mark.Fill.NONE));
        }
        marks.add(Mark.Path.through(start - MARGIN, ground(), start + length * scale + MARGIN, ground()));
    }

    /** Its sign, where there is room for both, below its code or before it; and what is left for the code. */
    private Mark.Box signed(Opening opening, Mark.Box box) {
        double room = SIGN + 2 * Labels.GAP;
        double code = new Mark.Label(opening.label(), 0, 0, Labels.SIZE).room().width() + 2 * Labels.GAP;
        double letters = Labels.SIZE + Labels.GAP;
        if (opening.symbol().isEmpty() || opening.slides()) {
            return box;
        }
        if (box.height() >= letters + room
                && box.width() >= Math.max(code, room)
                && sign(opening, box.x() + box.width() / 2 - SIGN / 2, box.y() + box.height() - SIGN - Labels.GAP)) {
            return part(box, box.x(), box.width(), box.height() - room);
        }
        if (box.width() >= code + room
                && box.height() >= Math.max(letters, room)
                && sign(opening, box.x() + Labels.GAP, box.y() + box.height() / 2 - SIGN / 2)) {
            return part(box, box.x() + room, box.width() - room, box.height());
        }
        return box;
    }

    private static Mark.Box part(Mark.Box box, double x, double width, double height) {
        return new Mark.Box(box.of(), x, box.y(), width, height, box.corner(), box.fill(), box.dashed());
    }

    /** Whether it found its place: doors may lie one behind the other. */
    private boolean sign(Opening opening, double x, double y) {
        Mark.Box ground = new Mark.Box("", x - 2, y - 2, SIGN + 4, SIGN + 4, 4, Mark.Fill.PAPER, false);
        if (signs.stream().anyMatch(ground::overlaps)) {
            return false;
        }
        signs.add(ground);
        marks.add(ground);
        marks.add(new Mark.Symbol(opening.symbol(), x, y, SIGN));
        return true;
    }

    private Mark.Box joined(Joint joint) {
        double radius = SIGN / 2 + 4;
        double x = Math.min(width - radius - 2, Math.max(radius + 2, left(joint.from(), 0)));
        double y = Math.min(ground() - radius, Math.max(MARGIN + radius, ground() - joint.high() * scale));
        marks.add(new Mark.Round(joint.id(), x, y, radius, Mark.Fill.PAPER));
        marks.add(new Mark.Symbol(joint.symbol(), x - SIGN / 2, y - SIGN / 2, SIGN));
        return new Mark.Box(joint.id(), x - radius, y - radius, 2 * radius, 2 * radius, 0, Mark.Fill.NONE, false);
    }

    /** Two that lie close together stand side by side. */
    private void spot(Spot spot) {
        double x = Math.min(width - SIGN, Math.max(SIGN, left(spot.from(), 0)));
        double y = Math.min(ground() - SIGN, Math.max(MARGIN + SIGN, ground() - spot.high() * scale));
        Mark.Box place = around(x, y);
        while (signs.stream().anyMatch(place::overlaps) && x + SIGN < width - SIGN) {
            x += SIGN;
            place = around(x, y);
        }
        signs.add(place);
        marks.add(new Mark.Round("", x, y, SIGN - 2, Mark.Fill.PAPER));
        marks.add(new Mark.Label(spot.number(), x, y + 0.35 * Labels.SIZE, Labels.SIZE));
    }

    private static Mark.Box around(double x, double y) {
        return new Mark.Box("", x - SIGN, y - SIGN, 2 * SIGN, 2 * SIGN, 0, Mark.Fill.NONE, false);
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
}
