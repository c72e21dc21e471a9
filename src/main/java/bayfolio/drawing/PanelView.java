package bayfolio.drawing;

import java.util.ArrayList;
import java.util.List;

/** A panel from the front: what is on it, in its rows and columns, each as it stands and with its plate below. */
public final class PanelView {
    private static final double CELL = 150;
    private static final double MARGIN = 10;
    private static final double LETTERS = 19;

    /** So many letters stand side by side below a switch. */
    private static final int MOST_LETTERS = 10;

    private static final int MOST_LINES = 3;

    /**
     * @param row from the top, from 1
     * @param column from the left, from 1
     * @param plate the words on it; may be empty
     * @param face how it looks, in a field of {@link Face#SIDE}; empty where nothing is known of that
     */
    public record Cell(String id, int row, int column, String plate, List<Mark> face, boolean here) {
        public Cell {
            face = List.copyOf(face);
        }
    }

    private PanelView() {}

    public static Drawing of(List<Cell> cells) {
        int columns = cells.stream().mapToInt(Cell::column).max().orElse(1);
        int rows = cells.stream().mapToInt(Cell::row).max().orElse(1);
        double tall = CELL + MOST_LINES * LETTERS;
        List<Mark> marks = new ArrayList<>();
        double width = columns * CELL + 2 * MARGIN;
        double height = rows * tall + 2 * MARGIN;
        marks.add(new Mark.Box("", 2, 2, width - 4, height - 4, 14, Mark.Fill.NONE, false));
        for (Cell cell : cells) {
            double x = MARGIN + (cell.column() - 1) * CELL;
            double y = MARGIN + (cell.row() - 1) * tall;
            marks.add(new Mark.Box(
                    cell.id(),
                    x + 4,
                    y + 4,
                    CELL - 8,
                    tall - 8,
                    8,
                    cell.here() ? Mark.Fill.PLAIN : Mark.Fill.NONE,
                    false));
            double aside = (CELL - Face.SIDE) / 2;
            if (cell.face().isEmpty()) {
                marks.add(new Mark.Box(
                        "", x + aside + 20, y + aside + 20, Face.SIDE - 40, Face.SIDE - 40, 6, Mark.Fill.NONE, true));
            }
            cell.face().forEach(mark -> marks.add(moved(mark, x + aside, y + aside)));
            int line = 0;
            for (String words : lines(cell.plate())) {
                marks.add(new Mark.Label(words, x + CELL / 2, y + CELL + 2 + line++ * (LETTERS + 1), LETTERS));
            }
        }
        return new Drawing(width, height, marks);
    }

    /** Broken between words; what does not fit is cut, since the plate stands on the page, too. */
    private static List<String> lines(String plate) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : plate.isEmpty() ? new String[0] : plate.split("[ \u00b7]+", -1)) {
            if (!line.isEmpty() && line.length() + 1 + word.length() > MOST_LETTERS) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ")
                    .append(word.length() > MOST_LETTERS ? word.substring(0, MOST_LETTERS - 1) + "\u2026" : word);
        }
        if (!line.isEmpty()) {
            lines.add(line.toString());
        }
        return lines.size() > MOST_LINES ? lines.subList(0, MOST_LINES) : lines;
    }

    private static Mark moved(Mark mark, double right, double down) {
        return mark.accept(new Mark.Visitor<Mark>() {
            @Override
            public Mark box(Mark.Box box) {
                return new Mark.Box(
                        box.of(),
                        box.x() + right,
                        box.y() + down,
                        box.width(),
                        box.height(),
                        box.corner(),
                        box.fill(),
                        box.dashed());
            }

            @Override
            public Mark round(Mark.Round round) {
                return new Mark.Round(round.of(), round.x() + right, round.y() + down, round.radius(), round.fill());
            }

            @Override
            public Mark path(Mark.Path path) {
                return new Mark.Path(
                        path.points().stream()
                                .map(point -> new Mark.Point(point.x() + right, point.y() + down))
                                .toList(),
                        path.closed(),
                        path.fill(),
                        path.dashed());
            }

            @Override
            public Mark symbol(Mark.Symbol symbol) {
                return new Mark.Symbol(symbol.name(), symbol.x() + right, symbol.y() + down, symbol.size());
            }

            @Override
            public Mark label(Mark.Label label) {
                return new Mark.Label(label.words(), label.x() + right, label.y() + down, label.size(), label.anchor());
            }
        });
    }
}
