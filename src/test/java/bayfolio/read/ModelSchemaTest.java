package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.fact.Aside;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What editors hold a model and its coaches against takes and refuses what the reader does. */
class ModelSchemaTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Model MODEL = GeneratedFilesTest.models().get(0);
    private static final Schema OF_MODEL = REGISTRY.getSchema(JSON.readTree(SchemaWriter.writeModel()));
    private static final Schema OF_COACH = REGISTRY.getSchema(JSON.readTree(MODEL.schema()));
    private static final List<SourceFile> SISTERS = DemoFleet.coaches().stream()
            .filter(coach -> !DemoFleet.whole().contains(coach))
            .map(coach -> Folders.at(Path.of(""))
                    .text("units/" + coach + "/unit.yaml", finding -> {})
                    .orElseThrow())
            .toList();

    private static boolean takenBySchema(SourceFile file, JsonNode text) {
        return (file.equals(MODEL.file()) ? OF_MODEL : OF_COACH).validate(text).isEmpty();
    }

    /** A model is read with each of its coaches, since what one of them says otherwise is looked at with the others only. */
    private static boolean takenByReader(SourceFile file, String text) {
        List<Finding> findings = new ArrayList<>();
        SourceFile changed = new SourceFile(file.path(), text);
        if (!file.equals(MODEL.file())) {
            read(changed, MODEL, findings::add);
        } else {
            Model.of(changed, findings::add)
                    .ifPresent(model -> SISTERS.forEach(sister -> read(sister, model, findings::add)));
        }
        return findings.isEmpty();
    }

    private static Optional<Unit> read(SourceFile coach, Model model, Consumer<Finding> findings) {
        return Resolved.of(
                        Folders.at(Path.of("")),
                        coach,
                        Lists.of(Folders.at(Path.of(""))),
                        Map.of(model.id(), Optional.of(model)),
                        findings)
                .flatMap(Resolved::unit);
    }

    private static List<SourceFile> files() {
        List<SourceFile> files = new ArrayList<>(SISTERS);
        files.add(MODEL.file());
        return files;
    }

    @Test
    void aModelAndItsCoachesAreTakenByBoth() {
        assertThat(SISTERS).hasSize(3);
        assertThat(files()).allSatisfy(file -> {
            assertThat(takenBySchema(file, SchemaTest.json(file.text())))
                    .as(file.path())
                    .isTrue();
            assertThat(takenByReader(file, file.text())).as(file.path()).isTrue();
        });
    }

    @Test
    void aCoachOfAModelIsAScreenfulAndNamesTheSchemaOfItsModel() throws Exception {
        for (SourceFile sister : SISTERS) {
            Path folder = Path.of(sister.path()).resolveSibling("");
            String named = sister.line(1).replaceFirst(".*schema=", "");

            assertThat(sister.text().lines().count()).as(sister.path()).isLessThanOrEqualTo(60);
            assertThat(Files.readString(folder.resolve(named).normalize())).isEqualTo(MODEL.schema());
        }
        assertThat(Path.of(MODEL.file().path())
                        .resolveSibling(MODEL.file().line(1).replaceFirst(".*schema=", "")))
                .exists();
    }

    @Test
    void aKeyThatNobodyDeclaredIsRefusedByBoth() {
        int made = 0;
        for (SourceFile file : files()) {
            List<JsonNode> spoilt = new ArrayList<>();
            JsonNode whole = SchemaTest.json(file.text());
            withAKeyMore(whole, it -> it, spoilt);
            for (JsonNode each : spoilt) {
                assertThat(takenBySchema(file, each)).as("%s", each).isFalse();
                assertThat(takenByReader(file, JSON.writeValueAsString(each)))
                        .as("%s", each)
                        .isFalse();
            }
            made += spoilt.size();
        }
        assertThat(made).isGreaterThan(200);
    }

    /** A file for each of its records, in which that one has a key that there is not. */
    private static void withAKeyMore(JsonNode node, UnaryOperator<JsonNode> around, List<JsonNode> all) {
        if (node instanceof ObjectNode record) {
            all.add(around.apply(record.deepCopy().put("surely-unknown", "some words")));
            for (String key : List.copyOf(record.propertyNames())) {
                // Its keys are those of the record around it, known or not.
                if (!key.equals(Aside.MODEL_SAID.name())) {
                    withAKeyMore(
                            record.get(key),
                            changed -> {
                                ObjectNode copy = record.deepCopy();
                                copy.set(key, changed);
                                return around.apply(copy);
                            },
                            all);
                }
            }
        }
        if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                int nth = i;
                withAKeyMore(
                        list.get(i),
                        changed -> {
                            ArrayNode copy = list.deepCopy();
                            copy.set(nth, changed);
                            return around.apply(copy);
                        },
                        all);
            }
        }
    }

    @Test
    void aMisspeltMeasureIsRefusedByBoth() {
        Set<Place> measures = new LinkedHashSet<>();
        for (SourceFile sister : SISTERS) {
            FactVisitor.of(read(sister, MODEL, finding -> {}).orElseThrow().facts(), (type, value) -> {
                if (type instanceof Type.Measured<?>) {
                    measures.add(value.at());
                }
            });
        }
        for (Place at : measures) {
            SourceFile file = at.file().path().equals(MODEL.file().path())
                    ? MODEL.file()
                    : SISTERS.stream()
                            .filter(it -> it.path().equals(at.file().path()))
                            .findFirst()
                            .orElseThrow();
            List<String> lines = new ArrayList<>(file.text().lines().toList());
            String line = lines.get(at.line() - 1);
            String written = line.substring(at.column() - 1, at.endColumn() - 1);
            lines.set(
                    at.line() - 1,
                    line.substring(0, at.column() - 1)
                            + (written.endsWith("\"") ? "\"7 gallonz\"" : "7 gallonz")
                            + line.substring(at.endColumn() - 1));
            String spoilt = String.join("\n", lines) + "\n";

            assertThat(takenBySchema(file, SchemaTest.json(spoilt)))
                    .as("%s", at)
                    .isFalse();
            assertThat(takenByReader(file, spoilt)).as("%s", at).isFalse();
        }
        assertThat(measures).hasSizeGreaterThan(300);
    }
}
