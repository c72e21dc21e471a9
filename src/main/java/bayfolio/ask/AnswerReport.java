package bayfolio.ask;

import bayfolio.finding.TextReport;
import bayfolio.measure.Quantity;
import bayfolio.source.Hidden;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Answers for people and for programs. */
public final class AnswerReport {
    /** A longer value pushes out what stands behind it, in its own line alone. */
    private static final int WIDEST = 60;

    private static final Gson GSON =
            new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private AnswerReport() {}

    /** A line an answer, in columns: coach, what, value, file and line; nothing where there is none. */
    public static String table(Answers answers) {
        List<List<String>> rows = answers.rows().stream()
                .map(row -> Stream.of(
                                row.coach(),
                                row.what(),
                                row.value().replaceAll("\\s+", " "),
                                row.at().file().path() + ":" + row.at().line())
                        .map(Hidden::visible)
                        .toList())
                .toList();
        List<Integer> widths = Stream.of(0, 1, 2)
                .map(column -> rows.stream()
                        .mapToInt(row -> TextReport.columns(row.get(column)))
                        .filter(width -> width <= WIDEST)
                        .max()
                        .orElse(0))
                .toList();
        StringBuilder table = new StringBuilder();
        for (List<String> row : rows) {
            for (int column = 0; column < widths.size(); column++) {
                String cell = row.get(column);
                // Nobody asked for a name where only what is not there was.
                if (widths.get(column) > 0 || !cell.isEmpty()) {
                    table.append(cell)
                            .append(" ".repeat(Math.max(0, widths.get(column) - TextReport.columns(cell)) + 2));
                }
            }
            table.append(row.get(widths.size())).append('\n');
        }
        return table.toString();
    }

    /**
     * A head and a record an answer: coach, what, value, number, unit, file, line; number and unit in that which the measure
     * is kept in, a metric one, empty where the value is none.
     *
     * @see <a href="https://www.rfc-editor.org/rfc/rfc4180">RFC 4180</a>
     */
    public static String csv(Answers answers) {
        StringBuilder csv = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(csv, CSVFormat.RFC4180)) {
            printer.printRecord("coach", "what", "value", "number", "unit", "file", "line");
            for (Answer row : answers.rows()) {
                printer.printRecord(
                        row.coach(),
                        row.what(),
                        row.value(),
                        row.figure().map(AnswerReport::number).orElse(""),
                        row.figure().map(figure -> figure.scale().kept()).orElse(""),
                        row.at().file().path(),
                        row.at().line());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return csv.toString();
    }

    /**
     * An object: {@code question}; {@code asked} and {@code coaches}, ids of those that were asked and of those for which it
     * holds; {@code answers}, each with coach, what, value, file, line and column, a measure with number and unit, too;
     * {@code unread}, each with coach and why.
     */
    public static String json(Answers answers) {
        JsonObject report = new JsonObject();
        report.addProperty("question", answers.question());
        report.add("asked", GSON.toJsonTree(answers.asked()));
        report.add("coaches", GSON.toJsonTree(answers.coaches()));
        JsonArray rows = new JsonArray();
        answers.rows().forEach(row -> rows.add(json(row)));
        report.add("answers", rows);
        JsonArray unread = new JsonArray();
        answers.unread().forEach((coach, why) -> {
            JsonObject one = new JsonObject();
            one.addProperty("coach", coach);
            one.addProperty("why", why);
            unread.add(one);
        });
        report.add("unread", unread);
        return Hidden.escaped(GSON.toJson(report)) + "\n";
    }

    private static JsonObject json(Answer row) {
        JsonObject json = new JsonObject();
        json.addProperty("coach", row.coach());
        json.addProperty("what", row.what());
        json.addProperty("value", row.value());
        row.figure().ifPresent(figure -> {
            json.addProperty("number", rounded(figure));
            json.addProperty("unit", figure.scale().kept());
        });
        json.addProperty("file", row.at().file().path());
        json.addProperty("line", row.at().line());
        json.addProperty("column", row.at().column());
        return json;
    }

    private static String number(Quantity figure) {
        return rounded(figure).toPlainString();
    }

    /** Without what the reckoning from one unit to the other leaves in the last digits. */
    private static BigDecimal rounded(Quantity figure) {
        BigDecimal number =
                new BigDecimal(figure.value()).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
        return number.scale() < 0 ? number.setScale(0) : number;
    }
}
