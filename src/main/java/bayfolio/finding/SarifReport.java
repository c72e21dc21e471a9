package bayfolio.finding;

import bayfolio.source.Hidden;
import bayfolio.source.Place;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Findings in the Static Analysis Results Interchange Format, version 2.1.0 (an OASIS standard), as editors and code
 * hosts read it. Columns count code points.
 *
 * <p>The standard wants an absolute address in {@code helpUri}. No address on the web is the same for all fleets, so it
 * is a name that is (a URN); the page itself goes with the report, in {@code help}.
 */
public final class SarifReport {
    private static final Gson GSON =
            new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private static final String CHECKS = "**Checks**";

    private final Function<String, Optional<String>> pages;
    private final Map<String, Integer> alike = new HashMap<>();

    private SarifReport(Function<String, Optional<String>> pages) {
        this.pages = pages;
    }

    /** @param pages the page of a code, in Markdown */
    public static String of(Findings findings, Function<String, Optional<String>> pages) {
        return new SarifReport(pages).report(findings);
    }

    private String report(Findings findings) {
        List<String> codes =
                findings.all().stream().map(Finding::code).distinct().sorted().toList();
        JsonObject driver = new JsonObject();
        driver.addProperty("name", "bayfolio");
        driver.add("rules", array(codes.stream().map(this::rule).toList()));
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
        return Hidden.escaped(GSON.toJson(log)) + "\n";
    }

    private JsonObject rule(String code) {
        JsonObject rule = new JsonObject();
        rule.addProperty("id", code);
        rule.addProperty("helpUri", "urn:bayfolio:rule:" + code);
        pages.apply(code).ifPresent(page -> {
            rule.add("shortDescription", text(checks(page)));
            JsonObject help = text(page);
            help.addProperty("markdown", page);
            rule.add("help", help);
        });
        return rule;
    }

    /** The sentence by which the page of a rule begins. */
    private static String checks(String page) {
        String sentence = page.lines()
                .filter(line -> line.startsWith(CHECKS))
                .findFirst()
                .map(line -> "Checks" + line.substring(CHECKS.length()))
                .orElse(page.lines().findFirst().orElse(""));
        return sentence.replace("`", "");
    }

    private JsonObject result(Finding finding, int rule) {
        JsonObject result = new JsonObject();
        result.addProperty("ruleId", finding.code());
        result.addProperty("ruleIndex", rule);
        // The standard's levels bear the same names as ours.
        result.addProperty("level", finding.severity().word());
        result.add("message", text(sentence(finding)));
        result.add("locations", array(List.of(location(finding.at()))));
        JsonObject fingerprints = new JsonObject();
        fingerprints.addProperty("findingInLine/v1", fingerprint(finding));
        result.add("partialFingerprints", fingerprints);
        return result;
    }

    /**
     * The same when lines above come or go, or the line is indented: made of code, file, message, the words of the line,
     * and how many before it are alike.
     */
    private String fingerprint(Finding finding) {
        Place at = finding.at();
        String told = String.join(
                "\n",
                finding.code(),
                at.file().path(),
                finding.message(),
                at.file().line(at.line()).strip());
        int before = alike.merge(told, 1, Integer::sum) - 1;
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest((told + "\n" + before).getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
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
