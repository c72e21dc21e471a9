package bayfolio.explain;

import java.util.List;

/**
 * A table of results; the first cell of a row says what the row is about.
 *
 * @param title empty where the question says it all
 * @param rows each with as many cells as the head
 */
public record Grid(String title, List<String> head, List<List<String>> rows) {
    public Grid {
        head = List.copyOf(head);
        rows = rows.stream().map(List::copyOf).toList();
        int wide = head.size();
        if (rows.stream().anyMatch(row -> row.size() != wide)) {
            throw new IllegalArgumentException("a row of `" + title + "` has not " + wide + " cells");
        }
    }
}
