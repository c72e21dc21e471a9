package bayfolio.document;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assertions.assertAll;

import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

/** The normal form of handbooks. With {@code -Dgolden=write} the golden files are written anew, and the test fails once. */
final class DocumentJsonTest {
    private static final Path SCHEMA = Path.of("src/main/resources/bayfolio/document.schema.json");
    private static final Path GOLDEN = Path.of("src/test/resources/bayfolio/handbooks");
    private static final Path SMALL = Path.of("src/test/resources/golden/small-clean/fleet");
    private static final boolean WRITE = System.getProperty("golden", "").equals("write");

    @Test
    void theSchemaSaysWhatTheRecordsAre() throws IOException {
        golden(SCHEMA, DocumentSchema.write());
    }

    @Test
    void theHandbookOfASmallCoachIsAsItWas() throws Exception {
        golden(GOLDEN.resolve("plover.json"), DocumentJson.of(plover()));
    }

    @Test
    void theNormalFormOfEveryCoachIsAsItsSchemaWants() throws Exception {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA));
        for (Handbook handbook : handbooks(Path.of("")).values()) {
            for (Handbook copy :
                    List.of(handbook, handbook.seenBy(Audience.RENTERS), handbook.seenBy(Audience.STAFF))) {
                String json = DocumentJson.of(copy);

                assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
                assertThat(ids(JsonParser.parseString(json)))
                        .containsExactlyElementsOf(
                                copy.walk().map(node -> node.id().toString()).toList());
            }
        }
    }

    @Test
    void whatIsNoHandbookIsRefused() throws Exception {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA));
        String json = DocumentJson.of(plover());

        assertThat(schema.validate(json.replaceFirst("\"kind\": \"home\"", "\"kind\": \"house\""), InputFormat.JSON))
                .isNotEmpty();
        assertThat(schema.validate(json.replaceFirst("\"version\": 1", "\"version\": 2"), InputFormat.JSON))
                .isNotEmpty();
        assertThat(schema.validate(json.replaceFirst("\"title\":", "\"headline\":"), InputFormat.JSON))
                .isNotEmpty();
    }

    /** The pages and parts of the demo coaches, a line each: what is there, for whom, and how much it says. */
    @Test
    void theHandbooksOfTheDemoFleetHaveThePartsThatTheyHad() throws Exception {
        List<Executable> compared = new ArrayList<>();
        for (Map.Entry<String, Handbook> handbook : handbooks(Path.of("")).entrySet()) {
            StringBuilder lines = new StringBuilder();
            handbook.getValue().pages().forEach(page -> {
                lines.append(page.id())
                        .append(' ')
                        .append(page.stamp().audience())
                        .append('\n');
                page.sections()
                        .forEach(section -> lines.append("  #")
                                .append(section.anchor())
                                .append(
                                        section.stamp().audience()
                                                        == page.stamp().audience()
                                                ? ""
                                                : " STAFF")
                                .append(' ')
                                .append(section.walk().count())
                                .append('\n'));
            });
            compared.add(() -> golden(GOLDEN.resolve(handbook.getKey() + ".txt"), lines.toString()));
        }
        assertAll(compared);
    }

    private static List<String> ids(JsonElement json) {
        List<String> ids = new ArrayList<>();
        if (json instanceof JsonArray array) {
            array.forEach(each -> ids.addAll(ids(each)));
        } else if (json instanceof JsonObject object) {
            if (object.has("id") && object.keySet().size() > 1 && !object.has("pages")) {
                ids.add(object.get("id").getAsString());
            }
            for (String key : object.keySet()) {
                if (!key.equals("figures") && !key.equals("calculator")) {
                    ids.addAll(ids(object.get(key)));
                }
            }
        }
        return ids;
    }

    private static void golden(Path file, String text) throws IOException {
        if (WRITE && (!Files.exists(file) || !Files.readString(file).equals(text))) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
            fail("Written; read the difference and run again: " + file);
        }
        assertThat(file).as("`mvn test -Dgolden=write` writes it anew").hasContent(text);
    }

    private static Handbook plover() throws Exception {
        return Objects.requireNonNull(handbooks(SMALL).get("plover"));
    }

    private static Map<String, Handbook> handbooks(Path fleet) throws Exception {
        Catalogs screen = Theme.load(fleet, Theme.BUILT_IN).catalogs();
        FleetReader.Reading reading = FleetReader.read(Folders.at(fleet));
        Check check = Check.of(reading.fleet(), reading.library(), screen, reading.findings());
        Map<String, Handbook> handbooks = new TreeMap<>();
        for (Unit unit : check.units()) {
            handbooks.put(unit.id(), Composer.compose(check.of(unit)));
        }
        return handbooks;
    }
}
