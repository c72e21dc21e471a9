package bayfolio.render.print;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * Sheets of labels as they are sold, lengths in millimeters. They are rows of a file, each with its source.
 *
 * @param left from the left edge of the page to the first label
 * @param across from one label to the next
 */
public record Stock(
        String name,
        double pageWidth,
        double pageHeight,
        int columns,
        int rows,
        double width,
        double height,
        double left,
        double top,
        double across,
        double down) {
    private static final String FILE = "/bayfolio/stocks.csv";

    private static final List<Stock> ALL = read();

    /** Where a label lies. */
    record Cell(int sheet, double left, double top) {}

    public static List<String> names() {
        return ALL.stream().map(Stock::name).toList();
    }

    static Stock named(String name) {
        return ALL.stream().filter(it -> it.name.equals(name)).findFirst().orElseThrow();
    }

    /** That whose labels are large enough to be read at arm's length in poor light. */
    static Stock on(Paper paper) {
        return named(paper == Paper.A4 ? "a4-8" : "letter-6");
    }

    int cells() {
        return columns * rows;
    }

    /** @param number from 0, row by row, sheet by sheet */
    Cell cell(int number) {
        int on = number % cells();
        return new Cell(number / cells(), left + on % columns * across, top + on / columns * down);
    }

    private static List<Stock> read() {
        List<Stock> all = new ArrayList<>();
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (InputStream in = Objects.requireNonNull(Stock.class.getResourceAsStream(FILE), FILE);
                Reader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            for (CSVRecord row : format.parse(text)) {
                all.add(new Stock(
                        row.get("name"),
                        of(row, "page-width"),
                        of(row, "page-height"),
                        Integer.parseInt(row.get("columns")),
                        Integer.parseInt(row.get("rows")),
                        of(row, "width"),
                        of(row, "height"),
                        of(row, "left"),
                        of(row, "top"),
                        of(row, "across"),
                        of(row, "down")));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(all);
    }

    private static double of(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
