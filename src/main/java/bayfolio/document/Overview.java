package bayfolio.document;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What staff see of all coaches on one page: side by side, or what is due on them. It is of the fleet and no part of any handbook, and no renter gets it.
 *
 * @param id of its page
 * @param language that its words are in
 * @param tables in the order in which they stand
 * @param leftOut ids of coaches that it says nothing of, since something is wrong with them
 */
public record Overview(String id, String title, String language, List<Table> tables, List<String> leftOut) {
    public Overview {
        tables = List.copyOf(tables);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A row a coach, or several of one.
     *
     * @param id its lasting name on the page
     */
    public record Table(String id, String title, List<Column> columns, List<Row> rows) {
        public Table {
            columns = List.copyOf(columns);
            rows = List.copyOf(rows);
        }
    }

    /** @param chosen whether there are so few values in it that one of them can be chosen */
    public record Column(String id, String title, boolean chosen) {}

    /**
     * @param unit id of the coach, which has a page of its own
     * @param cells as many as there are columns
     */
    public record Row(String unit, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * @param lines none where nothing is stated
     * @param order the figure by which rows are put in order, whatever the measure that the words have it in; by its words
     *     where it has none
     */
    public record Cell(List<String> lines, OptionalDouble order) {
        /** Nothing is stated. */
        public static final Cell EMPTY = new Cell(List.of(), OptionalDouble.empty());

        public Cell {
            lines = List.copyOf(lines);
        }

        public static Cell of(String words) {
            return new Cell(List.of(words), OptionalDouble.empty());
        }

        public static Cell of(String words, double order) {
            return new Cell(List.of(words), OptionalDouble.of(order));
        }
    }
}
