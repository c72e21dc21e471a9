package bayfolio.reckon;

import bayfolio.fact.Type;
import bayfolio.measure.NotAQuantityException;
import bayfolio.measure.Quantity;
import bayfolio.measure.Scale;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of figures that were published or are usual: a file of comma-separated values, whose columns are the name of the
 * figure, its value, its status, what readers are told of its source, and that source with its edition and the day on which
 * it was looked up.
 *
 * @see "RFC 4180; read by Apache Commons CSV"
 */
public final class Table {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private final String name;
    private final Map<String, CSVRecord> rows = new LinkedHashMap<>();

    private Table(String name) {
        this.name = name;
    }

    /**
     * @param name of the file, without its ending
     * @throws IllegalArgumentException where a figure is there twice
     */
    public static Table read(String name) {
        String path = "/bayfolio/figures/" + name + ".csv";
        Table table = new Table(name);
        try (InputStream in = Objects.requireNonNull(Table.class.getResourceAsStream(path), path);
                InputStreamReader text = new InputStreamReader(in, StandardCharsets.UTF_8)) {
            for (CSVRecord row : FORMAT.parse(text)) {
                if (table.rows.put(row.get("figure"), row) != null) {
                    throw new IllegalArgumentException(path + " has two rows " + row.get("figure"));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return table;
    }

    /** Names of the figures, in the order of the file. */
    public List<String> figures() {
        return List.copyOf(rows.keySet());
    }

    public Published<String> text(String figure) {
        CSVRecord row = rows.get(figure);
        if (row == null) {
            throw new IllegalArgumentException("the table " + name + " has no figure " + figure);
        }
        return new Published<>(
                name + "/" + figure,
                row.get("value"),
                Stream.of(Published.Status.values())
                        .filter(it -> Type.word(it).equals(row.get("status")))
                        .findFirst()
                        .orElseThrow(() ->
                                new IllegalArgumentException(name + "/" + figure + " is of no status that there is")),
                row.get("told"));
    }

    public Published<Double> number(String figure) {
        return text(figure).map(Double::valueOf);
    }

    public <Q extends Quantity> Published<Q> quantity(String figure, Scale<Q> scale) {
        return text(figure).map(written -> {
            try {
                return scale.parse(written);
            } catch (NotAQuantityException e) {
                throw new IllegalArgumentException(name + "/" + figure + ": " + e.getMessage(), e);
            }
        });
    }

    /** A column of a figure besides its value. */
    public String column(String figure, String column) {
        return Objects.requireNonNull(rows.get(figure), figure).get(column);
    }
}
