package bayfolio.drawing;

import java.util.ArrayList;
import java.util.List;

/** A tank from the side, with the level at which its gauge shows each mark, and what is in it then. */
public final class TankView {
    private static final double WIDTH = 280;
    private static final double HEIGHT = 190;
    private static final double LEFT = 90;
    private static final double WIDE = 80;
    private static final double TOP = 20;
    private static final double TALL = 150;
    private static final double LETTERS = 19;

    /**
     * @param mark as it stands on the gauge
     * @param share of the tank, from 0 to 1
     * @param amount what is in it then; may be empty
     */
    public record Level(String mark, double share, String amount) {}

    private TankView() {}

    /** @param levels from empty to full */
    public static Drawing of(List<Level> levels) {
        List<Mark> marks = new ArrayList<>();
        List<Mark.Label> labels = new ArrayList<>();
        marks.add(new Mark.Box("", LEFT, TOP, WIDE, TALL, 10, Mark.Fill.NONE, false));
        for (Level level : levels) {
            double y = TOP + TALL * (1 - level.share());
            double inside = Math.min(TOP + TALL - 3, Math.max(TOP + 3, y));
            marks.add(
                    Mark.Path.through(LEFT - 6, inside, LEFT + WIDE + 6, inside).broken());
            label(labels, level.mark(), LEFT - 12, inside, Mark.Label.Anchor.END, LEFT - 14);
            label(labels, level.amount(), LEFT + WIDE + 12, inside, Mark.Label.Anchor.START, WIDTH - LEFT - WIDE - 14);
        }
        marks.addAll(labels);
        return new Drawing(WIDTH, HEIGHT, marks);
    }

    private static void label(
            List<Mark.Label> labels, String words, double x, double y, Mark.Label.Anchor anchor, double room) {
        double size = Math.min(
                LETTERS,
                room / Math.max(0.01, new Mark.Label(words, 0, 0, 1).room().width()));
        Mark.Label label = new Mark.Label(words, x, y + size * 0.32, size, anchor);
        // Marks that lie close leave some of them out: the page has them in words.
        boolean free = labels.stream().noneMatch(other -> other.room().overlaps(label.room()));
        if (!words.isEmpty() && free) {
            labels.add(label);
        }
    }
}
