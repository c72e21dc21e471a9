package bayfolio.finding;

import bayfolio.source.Place;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Findings in the Static Analysis Results Interchange Format, version 2.1.0 (an OASIS standard), as editors and code
 * hosts read it. Columns count code points.
 */
public final class SarifReport {
    private static final Gson GSON =
            new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private SarifReport() {}

    public static String of(Findings findings) {
        List<String> codes =
                findings.all().stream().map(Finding::code).distinct().sorted().toList();
        JsonObject driver = new JsonObject();
        driver.addProperty("name", "bayfolio");
        driver.add("rules", array(codes.stream().map(SarifReport::rule).toList()));
        JsonObject tool = new JsonObject();
        tool.add("driver", driver);
        JsonObject run = new JsonObject();
        run.add("tool", tool);
        run.addProperty("columnKind", "unicodeCodePoints");
        run.add(
                "results",
                array(findings.all().stream()
                        .map(finding -> result(finding, codes.indexOf(finding.code())))
                        .toList()));
        JsonObject log = new JsonObject();
        log.addProperty("version", "2.1.0");
        log.add("runs", array(List.of(run)));
        return GSON.toJson(log) + "\n";
    }

    private static JsonObject rule(String code) {
        JsonObject rule = new JsonObject();
        rule.addProperty("id", code);
        return rule;
    }

    private static JsonObject result(Finding finding, int rule) {
        JsonObject result = new JsonObject();
        result.addProperty("ruleId", finding.code());
        result.addProperty("ruleIndex", rule);
        // The standard's levels bear the same names as ours.
        result.addProperty("level", finding.severity().word());
        result.add("message", text(sentence(finding)));
        result.add("locations", array(List.of(location(finding.at()))));
        return result;
    }

    private static String sentence(Finding finding) {
        String near = finding.near().isEmpty()
                ? ""
                : " Did you mean "
                        + finding.near().stream().map(name -> "`" + name + "`").collect(Collectors.joining(" or "))
                        + "?";
        String units = finding.units().isEmpty() ? "" : " (" + String.join(", ", finding.units()) + ")";
        return finding.message()
                + units
                + "."
                + near
                + finding.mend().map(mend -> " " + mend).orElse("");
    }

    private static JsonObject location(Place at) {
        JsonObject file = new JsonObject();
        file.addProperty("uri", at.file().path().replace(" ", "%20"));
        JsonObject region = new JsonObject();
        region.addProperty("startLine", at.line());
        region.addProperty("startColumn", at.column());
        region.addProperty("endLine", at.endLine());
        region.addProperty("endColumn", at.endColumn());
        JsonObject physical = new JsonObject();
        physical.add("artifactLocation", file);
        physical.add("region", region);
        JsonObject location = new JsonObject();
        location.add("physicalLocation", physical);
        return location;
    }

    private static JsonObject text(String words) {
        JsonObject message = new JsonObject();
        message.addProperty("text", words);
        return message;
    }

    private static JsonArray array(List<JsonObject> objects) {
        JsonArray array = new JsonArray();
        objects.forEach(array::add);
        return array;
    }
}
