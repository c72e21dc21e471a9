package bayfolio.drawing;

import java.util.ArrayList;
import java.util.List;

/** Lengths below each other, each with its words above, its figure, and a mark where its limit is. */
public final class Bars {
    private static final double WIDTH = 440;
    private static final double MARGIN = 6;
    private static final double LETTERS = 19;
    private static final double TALL = 22;
    private static final double LINE = LETTERS + 3;

    /**
     * @param label in one line; what does not fit is cut
     * @param shown the figure
     * @param part how much of the width, from 0 to 1
     * @param limit where the limit is, from 0 to 1; below 0 where there is none
     * @param exceeded whether the limit is passed
     */
    public record Bar(String label, String shown, double part, double limit, boolean exceeded) {}

    private Bars() {}

    public static Drawing of(List<Bar> bars) {
        List<Mark> marks = new ArrayList<>();
        double y = MARGIN;
        double wide = WIDTH - 2 * MARGIN;
        for (Bar bar : bars) {
            Mark.Label name = name(bar.label(), y);
            Mark.Label shown = shown(bar.shown(), y);
            if (name.room().x() + name.room().width() + LETTERS / 2
                    > shown.room().x()) {
                // A long name and a long figure have a line each.
                y += LINE;
                name = name(cut(bar.label(), wide), y - LINE);
                shown = shown(bar.shown(), y);
            }
            marks.add(name);
            marks.add(shown);
            double top = y + LINE;
            marks.add(new Mark.Box("", MARGIN, top, wide, TALL, 3, Mark.Fill.NONE, false));
            marks.add(new Mark.Box(
                    "",
                    MARGIN,
                    top,
                    Math.max(2, wide * Math.min(1, Math.max(0, bar.part()))),
                    TALL,
                    3,
                    bar.exceeded() ? Mark.Fill.CROSSES : Mark.Fill.HERE,
                    false));
            if (bar.limit() >= 0) {
                double x = MARGIN + wide * Math.min(1, bar.limit());
                marks.add(Mark.Path.through(x, top - 5, x, top + TALL + 5));
            }
            y = top + TALL + 14;
        }
        return new Drawing(WIDTH, y, marks);
    }

    private static Mark.Label name(String words, double y) {
        return new Mark.Label(words, MARGIN, y + LETTERS * 0.8, size(words), Mark.Label.Anchor.START);
    }

    private static Mark.Label shown(String words, double y) {
        return new Mark.Label(words, WIDTH - MARGIN, y + LETTERS * 0.8, size(words), Mark.Label.Anchor.END);
    }

    /** A figure is never cut: a long one has smaller letters. */
    private static double size(String words) {
        double room = new Mark.Label(words, 0, 0, LETTERS).room().width();
        return LETTERS * Math.min(1, (WIDTH - 2 * MARGIN) / room);
    }

    private static String cut(String words, double room) {
        String cut = words;
        while (cut.length() > 1 && new Mark.Label(cut, 0, 0, LETTERS).room().width() > room) {
            cut = cut.substring(0, cut.length() - 2).stripTrailing() + "\u2026";
        }
        return cut;
    }
}
