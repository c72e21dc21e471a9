package bayfolio.drawing;

import bayfolio.model.Pose;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is worked by hand, seen from the front, in one of its states. A field of 120 by 120. */
public final class Face {
    public static final double SIDE = 120;

    private static final double MIDDLE = SIDE / 2;

    /** What it is that moves, and which poses of it can be drawn. */
    public enum Form {
        /** A bar or a key on a disk. */
        DIAL(Pose.UP, Pose.DOWN, Pose.LEFT, Pose.RIGHT, Pose.LEVEL),
        /** A handle in a slot. */
        HANDLE(Pose.UP, Pose.DOWN, Pose.LEFT, Pose.RIGHT, Pose.MIDDLE),
        /** Two ends, of which one is in, or none. */
        ROCKER(Pose.UP, Pose.DOWN, Pose.LEFT, Pose.RIGHT, Pose.MIDDLE),
        /** A lever on a pipe. */
        VALVE(Pose.ALONG, Pose.ACROSS),
        /** A rod out of a wall. */
        ROD(Pose.IN, Pose.OUT),
        /** A button, from the side. */
        BUTTON(Pose.IN, Pose.OUT),
        SCREEN(Pose.LIT, Pose.DARK, Pose.BLINKING);

        private final Set<Pose> moves;

        Form(Pose... moves) {
            this.moves = Set.of(moves);
        }
    }

    private final List<Mark> marks = new ArrayList<>();
    private final Set<Pose> poses;

    private Face(Set<Pose> poses) {
        this.poses = poses;
    }

    /** Nothing where the poses tell of no part that this form has; of one that has only a lamp, the lamp alone. */
    public static Optional<Drawing> of(Form form, Set<Pose> poses) {
        Face face = new Face(poses);
        if (poses.stream().anyMatch(form.moves::contains)) {
            face.draw(form);
        }
        if (form != Form.SCREEN && face.any(Pose.LIT, Pose.DARK, Pose.BLINKING)) {
            if (face.marks.isEmpty()) {
                face.lamp(MIDDLE, MIDDLE, 20);
            } else {
                face.lamp(102, 18, 9);
            }
        }
        return face.marks.isEmpty() ? Optional.empty() : Optional.of(new Drawing(SIDE, SIDE, face.marks));
    }

    private void draw(Form form) {
        switch (form) {
            case DIAL -> dial();
            case HANDLE -> handle();
            case ROCKER -> rocker();
            case VALVE -> valve();
            case ROD -> rod();
            case BUTTON -> button();
            case SCREEN -> screen();
        }
    }

    private boolean any(Pose... some) {
        return Set.of(some).stream().anyMatch(poses::contains);
    }

    private void box(double x, double y, double width, double height, double corner, Mark.Fill fill) {
        marks.add(new Mark.Box("", x, y, width, height, corner, fill, false));
    }

    private void lamp(double x, double y, double radius) {
        marks.addAll(lamp(x, y, radius, poses));
    }

    /** A lit one has rays, one that blinks has broken ones; a dark one is an empty ring. */
    static List<Mark> lamp(double x, double y, double radius, Set<Pose> poses) {
        List<Mark> marks = new ArrayList<>();
        boolean blinks = poses.contains(Pose.BLINKING);
        boolean lit = blinks || poses.contains(Pose.LIT);
        marks.add(new Mark.Round("", x, y, radius, lit ? Mark.Fill.HERE : Mark.Fill.NONE));
        for (int ray = 0; lit && ray < 8; ray++) {
            double angle = ray * Math.PI / 4;
            Mark.Path line = Mark.Path.through(
                    x + Math.cos(angle) * (radius + 3),
                    y + Math.sin(angle) * (radius + 3),
                    x + Math.cos(angle) * (radius + 8 + (blinks ? 6 : 0)),
                    y + Math.sin(angle) * (radius + 8 + (blinks ? 6 : 0)));
            marks.add(blinks ? line.broken() : line);
        }
        return marks;
    }

    private void dial() {
        marks.add(new Mark.Round("", MIDDLE, MIDDLE, 44, Mark.Fill.NONE));
        double turned = any(Pose.DOWN)
                ? Math.PI
                : any(Pose.RIGHT, Pose.LEVEL) ? Math.PI / 2 : any(Pose.LEFT) ? -Math.PI / 2 : 0;
        boolean bothEnds = any(Pose.LEVEL);
        double sin = Math.sin(turned);
        double cos = Math.cos(turned);
        double tail = bothEnds ? 38 : 14;
        marks.add(Mark.Path.of(
                true,
                Mark.Fill.HERE,
                MIDDLE + sin * 38 - cos * 7,
                MIDDLE - cos * 38 - sin * 7,
                MIDDLE + sin * 38 + cos * 7,
                MIDDLE - cos * 38 + sin * 7,
                MIDDLE - sin * tail + cos * 7,
                MIDDLE + cos * tail + sin * 7,
                MIDDLE - sin * tail - cos * 7,
                MIDDLE + cos * tail - sin * 7));
        if (!bothEnds) {
            marks.add(new Mark.Round("", MIDDLE + sin * 50, MIDDLE - cos * 50, 4, Mark.Fill.HERE));
        }
    }

    private void handle() {
        boolean level = any(Pose.LEFT, Pose.RIGHT);
        double way = any(Pose.UP, Pose.LEFT) ? -1 : any(Pose.DOWN, Pose.RIGHT) ? 1 : 0;
        if (level) {
            box(12, 38, 96, 44, 8, Mark.Fill.NONE);
            box(MIDDLE - 14 + way * 28, 32, 28, 56, 6, Mark.Fill.HERE);
        } else {
            box(38, 12, 44, 96, 8, Mark.Fill.NONE);
            box(32, MIDDLE - 14 + way * 28, 56, 28, 6, Mark.Fill.HERE);
        }
    }

    private void rocker() {
        boolean level = any(Pose.LEFT, Pose.RIGHT);
        box(level ? 14 : 34, level ? 34 : 14, level ? 92 : 52, level ? 52 : 92, 8, Mark.Fill.NONE);
        if (level) {
            marks.add(Mark.Path.through(MIDDLE, 34, MIDDLE, 86));
            box(any(Pose.LEFT) ? 18 : 64, 38, 38, 44, 5, Mark.Fill.HERE);
        } else {
            marks.add(Mark.Path.through(34, MIDDLE, 86, MIDDLE));
            if (any(Pose.UP, Pose.DOWN)) {
                box(38, any(Pose.UP) ? 18 : 64, 44, 38, 5, Mark.Fill.HERE);
            }
        }
    }

    private void valve() {
        marks.add(Mark.Path.through(8, 46, 112, 46));
        marks.add(Mark.Path.through(8, 74, 112, 74));
        if (any(Pose.ALONG)) {
            box(46, 53, 64, 14, 6, Mark.Fill.HERE);
        } else {
            box(53, 10, 14, 64, 6, Mark.Fill.HERE);
        }
        marks.add(new Mark.Round("", MIDDLE, MIDDLE, 12, Mark.Fill.HERE));
    }

    private void rod() {
        box(10, 14, 22, 92, 4, Mark.Fill.STRIPES);
        double end = any(Pose.OUT) ? 92 : 46;
        box(32, 54, end - 32, 12, 0, Mark.Fill.NONE);
        box(end, 34, 14, 52, 6, Mark.Fill.HERE);
    }

    private void button() {
        box(10, 14, 22, 92, 4, Mark.Fill.STRIPES);
        box(32, 40, any(Pose.OUT) ? 34 : 7, 40, 4, Mark.Fill.HERE);
    }

    private void screen() {
        boolean lit = any(Pose.LIT, Pose.BLINKING);
        box(12, 24, 96, 72, 8, lit ? Mark.Fill.NONE : Mark.Fill.HERE);
        if (lit) {
            lamp(MIDDLE, MIDDLE, 14);
        }
    }
}
