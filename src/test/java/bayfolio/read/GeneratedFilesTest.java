package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bayfolio.Folders;
import bayfolio.finding.Finding;
import bayfolio.model.Chapter;
import bayfolio.model.Country;
import bayfolio.model.FactTexts;
import bayfolio.model.FeatureWords;
import bayfolio.model.FleetFacts;
import bayfolio.model.HireMarks;
import bayfolio.model.Roles;
import bayfolio.model.Sources;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.model.Words;
import bayfolio.procedure.TranslationHead;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** {@code -Dgolden=write} writes the files anew and fails, so that each change is read once. */
class GeneratedFilesTest {
    private static final Path UNITS = Path.of("units");
    private static final Path SHARED = UNITS.resolve("shared");

    @Test
    void schemasAndReferenceSayWhatTheDeclarationsSay() throws IOException {
        Map<String, String> generated = generated();

        List<String> written = new ArrayList<>();
        if (System.getProperty("golden", "").equals("write")) {
            for (Map.Entry<String, String> file : generated.entrySet()) {
                Path path = UNITS.resolve(file.getKey());
                if (!Files.exists(path) || !Files.readString(path).equals(file.getValue())) {
                    Files.writeString(path, file.getValue());
                    written.add(path.toString());
                }
            }
        }

        if (!written.isEmpty()) {
            fail("Written; read the difference and run again: " + String.join(", ", written));
        }
        for (Map.Entry<String, String> file : generated.entrySet()) {
            assertThat(UNITS.resolve(file.getKey()))
                    .as("`mvn test -Dgolden=write` writes it anew")
                    .hasContent(file.getValue());
        }
    }

    private static Map<String, String> generated() {
        Map<String, String> files = new TreeMap<>();
        SchemaTest.shapes()
                .forEach(shape -> files.put("shared/" + SchemaWriter.fileName(shape), SchemaWriter.write(shape)));
        files.put("shared/model.schema.json", SchemaWriter.writeModel());
        files.put("shared/reference.md", ReferencePage.write());
        models().forEach(model -> files.put("models/" + model.id() + "/unit.schema.json", model.schema()));
        return files;
    }

    /** Those of the demo fleet. */
    static List<Model> models() {
        Folder folder = Folders.at(Path.of(""));
        List<Finding> findings = new ArrayList<>();
        List<Model> models = folder.folders(Model.FOLDER).stream()
                .map(name -> Model.FOLDER + "/" + name + "/model.yaml")
                .map(path -> folder.text(path, findings::add)
                        .flatMap(file -> Model.of(file, findings::add))
                        .orElseThrow())
                .toList();
        assertThat(findings).isEmpty();
        return models;
    }

    @Test
    void readerTakesTheExamplesOfTheReference() {
        List<String> examples = matches("(?s)\n```(?:yaml)?\n(.*?)```\n", ReferencePage.write());
        List<Finding> findings = new ArrayList<>();

        assertThat(examples).hasSize(12);
        FleetReader.yaml(example("unit.yaml", examples.get(0)), Unit.SHAPE, findings::add);
        FleetReader.yaml(example("fleet.yaml", examples.get(1)), FleetFacts.SHAPE, findings::add);
        FleetReader.yaml(example("roles.yaml", examples.get(2)), Roles.SHAPE, findings::add);
        FleetReader.yaml(example("words.yaml", examples.get(3)), Words.SHAPE, findings::add);
        FleetReader.yaml(example("sources.yaml", examples.get(4)), Sources.SHAPE, findings::add);
        FleetReader.yaml(example("countries/us.yaml", examples.get(5)), Country.SHAPE, findings::add);
        FleetReader.acts(example("equipment/ramps.md", examples.get(6)), findings::add);
        FleetReader.yaml(example("marks.yaml", examples.get(7)), HireMarks.SHAPE, findings::add);
        FleetReader.script(
                example("procedure.md", examples.get(8)), Whose.ALL, new FeatureWords(Set.of(), false), findings::add);
        FleetReader.yaml(
                example("translation.md", examples.get(9).replace("---\n", "")), TranslationHead.SHAPE, findings::add);
        assertThat(Cues.chapters(example("walk.vtt", examples.get(11)), Chapter.SHAPE, findings::add))
                .hasSize(2);
        FleetReader.yaml(example("facts.yaml", examples.get(10)), FactTexts.SHAPE, findings::add);
        assertThat(findings).isEmpty();
    }

    private static SourceFile example(String name, String text) {
        return new SourceFile(name, text);
    }

    @Test
    void linksOfTheReferenceLeadToItsHeadingsOrToFilesBesideIt() {
        String page = ReferencePage.write();
        List<String> anchors = matches("(?m)^#+ (.+)$", page).stream()
                .map(title -> title.toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9 -]", "")
                        .replace(' ', '-'))
                .toList();

        assertThat(anchors).doesNotHaveDuplicates();
        assertThat(matches("]\\(#([^)]+)\\)", page)).isNotEmpty().isSubsetOf(anchors);
        assertThat(matches("]\\(([a-z.]+\\.[a-z]+)\\)", page))
                .isNotEmpty()
                .allSatisfy(file -> assertThat(SHARED.resolve(file)).exists());
    }

    private static List<String> matches(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map((MatchResult match) -> match.group(1))
                .toList();
    }
}
