package bayfolio.render.web;

import bayfolio.catalog.Catalog;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.fact.Type;
import bayfolio.source.Resource;
import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What staff send, for the templates of other programs: a row a link, in the order of the page. */
final class LinkTable {
    static final String CSV = "links.csv";
    static final String JSON = "links.json";

    /** What stands in the JSON, at the root of the staff copy. */
    static final String SCHEMA = "links.schema.json";

    private static final List<String> HEAD =
            List.of("coach", "message", "when", "title", "line", "address", "short-address");

    /** By what programs of tables take a cell for a formula. */
    private static final String FORMULAS = "=+-@\t\r";

    private static final Gson GSON =
            new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

    private LinkTable() {}

    static byte[] csv(Handbook handbook, Catalog screen) {
        StringWriter text = new StringWriter();
        try (CSVPrinter rows = new CSVPrinter(text, CSVFormat.RFC4180)) {
            rows.printRecord(HEAD);
            for (Content.Sendable it : handbook.sendable()) {
                rows.printRecord(List.of(
                        harmless(handbook.unit()),
                        harmless(screen.say("message." + Type.word(it.message()))),
                        harmless(it.when()
                                .map(when -> screen.say("sent-when." + Type.word(when)))
                                .orElse("")),
                        harmless(it.link().plain()),
                        harmless(it.line()),
                        harmless(it.address()),
                        harmless(it.shortAddress())));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String harmless(String cell) {
        return !cell.isEmpty() && FORMULAS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }

    static byte[] json(Handbook handbook, Catalog screen) {
        JsonArray links = new JsonArray();
        for (Content.Sendable it : handbook.sendable()) {
            JsonObject link = new JsonObject();
            link.addProperty("message", Type.word(it.message()));
            it.when().ifPresent(when -> link.addProperty("when", Type.word(when)));
            link.addProperty("title", it.link().plain());
            link.addProperty("line", it.line());
            link.addProperty("address", it.address());
            link.addProperty("short-address", it.shortAddress());
            links.add(link);
        }
        JsonObject messages = new JsonObject();
        handbook.sendable().stream()
                .map(Content.Sendable::message)
                .distinct()
                .forEach(it -> messages.addProperty(Type.word(it), screen.say("message." + Type.word(it))));
        JsonObject all = new JsonObject();
        all.addProperty("version", 1);
        all.addProperty("coach", handbook.unit());
        all.addProperty("name", handbook.name());
        all.addProperty("language", handbook.language());
        all.addProperty("edition", handbook.edition());
        all.add("messages", messages);
        all.add("links", links);
        return (GSON.toJson(all) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    static byte[] schema() {
        return Resource.bytes(SCHEMA);
    }
}
