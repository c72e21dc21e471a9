package bayfolio.finding;

import bayfolio.source.Hidden;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;

/**
 * Findings for programs: an object with {@code findings}, each with code, severity, file, line,
 * column, endLine, endColumn, message, near, mend and units; lines and columns from 1, columns in
 * code points.
 */
public final class JsonReport {
    private static final Gson GSON =
            new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private JsonReport() {}

    public static String of(Findings findings) {
        JsonArray array = new JsonArray();
        findings.all().forEach(finding -> array.add(json(finding)));
        JsonObject report = new JsonObject();
        report.add("findings", array);
        return Hidden.escaped(GSON.toJson(report)) + "\n";
    }

    /** One of them. */
    static JsonObject json(Finding finding) {
        JsonObject json = new JsonObject();
        json.addProperty("code", finding.code());
        json.addProperty("severity", finding.severity().word());
        json.addProperty("file", finding.at().file().path());
        json.addProperty("line", finding.at().line());
        json.addProperty("column", finding.at().column());
        json.addProperty("endLine", finding.at().endLine());
        json.addProperty("endColumn", finding.at().endColumn());
        json.addProperty("message", finding.message());
        json.add("near", strings(finding.near()));
        finding.mend().ifPresent(mend -> json.addProperty("mend", mend));
        json.add("units", strings(finding.units()));
        return json;
    }

    private static JsonArray strings(List<String> values) {
        JsonArray array = new JsonArray();
        values.forEach(array::add);
        return array;
    }
}
