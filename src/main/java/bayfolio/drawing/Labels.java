package bayfolio.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Finds a place for each label: in its box, else as near above or below as there is room, else in lines below the drawing,
 * each with a line that leads to its box. So none lies on another, and none leaves the drawing.
 */
final class Labels {
    static final double SIZE = 25;
    static final double GAP = 3;

    private final double width;
    private final double top;
    private final double bottom;
    private final List<Mark.Box> taken;
    private final List<Mark.Label> placed = new ArrayList<>();
    private final List<Mark> leaders = new ArrayList<>();

    /** Where the next label below the drawing begins. */
    private double next = GAP;

    private double line;

    /**
     * @param width of the drawing
     * @param top above which nothing is written
     * @param bottom below which only those are written for which there is no room
     * @param taken by what no other's label may lie on
     */
    Labels(double width, double top, double bottom, List<Mark.Box> taken) {
        this.width = width;
        this.top = top;
        this.bottom = bottom;
        this.line = bottom + SIZE + 2 * GAP;
        this.taken = taken;
    }

    void place(String words, Mark.Box own) {
        double middle = within(words, own.x() + own.width() / 2);
        Mark.Label inside = new Mark.Label(words, middle, own.y() + own.height() / 2 + SIZE * 0.32, SIZE);
        boolean fits =
                inside.room().width() + 2 * GAP <= own.width() && SIZE + GAP <= own.height() && free(inside, own);
        if (fits) {
            placed.add(inside);
        } else {
            beside(words, own).ifPresentOrElse(placed::add, () -> below(words, own));
        }
    }

    private Optional<Mark.Label> beside(String words, Mark.Box own) {
        double x = own.x() + own.width() / 2;
        double up = own.y() - GAP - Mark.Label.BELOW * SIZE;
        double down = own.y() + own.height() + GAP + (1 - Mark.Label.BELOW) * SIZE;
        for (double far = 0; far < bottom; far += SIZE / 3) {
            for (double aside : new double[] {0, SIZE * 0.6, -SIZE * 0.6}) {
                for (double y : new double[] {up - far, down + far}) {
                    Mark.Label label = new Mark.Label(words, within(words, x + aside), y, SIZE);
                    if (y > top + SIZE && y < bottom && free(label, own)) {
                        return Optional.of(label);
                    }
                }
            }
        }
        return Optional.empty();
    }

    private void below(String words, Mark.Box own) {
        double wide = new Mark.Label(words, 0, 0, SIZE).room().width();
        if (next + wide + GAP > width) {
            next = GAP;
            line += SIZE + 2 * GAP;
        }
        Mark.Label label = new Mark.Label(words, next + wide / 2, line, SIZE);
        next += wide + 4 * GAP;
        placed.add(label);
        leaders.add(
                Mark.Path.through(label.x(), label.room().y(), own.x() + own.width() / 2, own.y() + own.height() / 2));
    }

    private double within(String words, double x) {
        double half = new Mark.Label(words, 0, 0, SIZE).room().width() / 2;
        return Math.min(width - half - GAP, Math.max(half + GAP, x));
    }

    private boolean free(Mark.Label label, Mark.Box own) {
        Mark.Box room = label.room();
        return placed.stream().noneMatch(it -> it.room().overlaps(room))
                && taken.stream().noneMatch(it -> !Objects.equals(it, own) && it.overlaps(room));
    }

    /** Lines first, so that no word is crossed out. */
    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>(leaders);
        marks.addAll(placed);
        return marks;
    }

    /** How far down the drawing reaches with all of them. */
    double end() {
        return leaders.isEmpty() ? bottom : line + SIZE * Mark.Label.BELOW + GAP;
    }
}
