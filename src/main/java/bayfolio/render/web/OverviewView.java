package bayfolio.render.web;

import bayfolio.catalog.Catalog;
import bayfolio.document.Overview;
import bayfolio.document.Overview.Cell;
import bayfolio.document.Overview.Row;
import bayfolio.document.Overview.Table;
import bayfolio.render.html.View;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** A page of all coaches as names for the template. */
final class OverviewView {
    private OverviewView() {}

    /**
     * @param view with what is the same on every page
     * @param linked ids of coaches that have a handbook in the same copy
     */
    static View of(View view, Overview all, Catalog screen, List<String> linked) {
        return view.with("language", all.language())
                .with("title", all.title())
                .with(
                        "tables",
                        all.tables().stream().map(table -> table(table, linked)).toList())
                .with("lacking", !all.leftOut().isEmpty())
                .with(
                        "left-out",
                        all.leftOut().isEmpty() ? "" : screen.say("overview.left-out", "coaches", all.leftOut()));
    }

    private static View table(Table table, List<String> linked) {
        return new View()
                .with("id", table.id())
                .with("heading", table.title())
                .with("count", Integer.toString(table.rows().size()))
                .with(
                        "columns",
                        table.columns().stream()
                                .map(column -> new View().with("words", column.title()))
                                .toList())
                .with(
                        "choices",
                        IntStream.range(0, table.columns().size())
                                .filter(column -> table.columns().get(column).chosen())
                                .mapToObj(column -> choice(table, column))
                                .toList())
                .with("rows", table.rows().stream().map(row -> row(row, linked)).toList());
    }

    /** What there is in a column, in its order. */
    private static View choice(Table table, int column) {
        TreeMap<String, Double> values = new TreeMap<>();
        table.rows().stream()
                .map(row -> row.cells().get(column))
                .forEach(cell -> cell.lines()
                        .forEach(line -> values.put(line, cell.order().orElse(0))));
        List<String> ordered = new ArrayList<>(values.keySet());
        ordered.sort(Comparator.comparingDouble(value -> values.getOrDefault(value, 0.0)));
        return new View()
                .with("column", Integer.toString(column))
                .with("name", table.id() + "." + table.columns().get(column).id())
                .with("words", table.columns().get(column).title())
                .with(
                        "options",
                        ordered.stream()
                                .map(value -> new View().with("value", value))
                                .toList());
    }

    private static View row(Row row, List<String> linked) {
        boolean link = linked.contains(row.unit());
        List<View> cells = new ArrayList<>();
        for (int column = 0; column < row.cells().size(); column++) {
            Cell cell = row.cells().get(column);
            cells.add(new View()
                    .with("first", column == 0)
                    .with("linked", link)
                    .with("href", row.unit() + "/index.html")
                    .with("ordered", cell.order().isPresent())
                    .with(
                            "order",
                            cell.order().isPresent()
                                    ? Double.toString(cell.order().getAsDouble())
                                    : "")
                    .with(
                            "lines",
                            cell.lines().stream()
                                    .map(line -> new View().with("words", line))
                                    .toList()));
        }
        return new View().with("cells", cells);
    }
}
