package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import ezvcard.Ezvcard;
import ezvcard.property.Telephone;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What staff send: each link leads to a page that a renter has, under both of its addresses, and only staff have the list. */
class LinkDeskTest {
    @TempDir
    private Path folder;

    @Test
    void eachLinkLeadsToAPageOfTheRentersCopy() throws Exception {
        Path root = Path.of("");
        DemoFleet fleet = DemoFleet.of(root);
        String base = "https://handbook.hollinbay.example/";
        List<String> coaches = List.of("phalarope", "whimbrel");
        Publisher.publish(
                fleet.check(),
                FleetState.of(root),
                Theme.load(root, Theme.BUILT_IN),
                new Publisher.Wanted(coaches, Set.of(Publisher.WEB), Printing.USUAL),
                folder);
        for (String coach : coaches) {
            Document page = html(folder.resolve("staff/" + coach + "/links.html"));
            List<List<String>> shown = new ArrayList<>();
            for (Element each : page.select(".sendable")) {
                shown.add(List.of(
                        each.select(".title a").text(),
                        each.select("p").get(1).text(),
                        each.select(".address").get(0).text(),
                        each.select(".address").get(1).text()));
            }
            assertThat(shown).hasSizeGreaterThan(60);
            assertThat(page.select("section h2").eachText())
                    .startsWith("Offer", "Confirmation", "A week before pickup", "The day before pickup")
                    .endsWith("When somebody asks");

            Set<String> spoken = new TreeSet<>();
            for (List<String> link : shown) {
                String path = link.get(2).substring(base.length());
                Path file = folder.resolve("web/" + (path.endsWith("/") ? path + "index.html" : path));
                assertThat(link.get(2)).startsWith(base);
                assertThat(html(file).select("h1").text()).as(path).isEqualTo(link.get(0));
                assertThat(link.get(1)).as(link.get(0)).isNotBlank();
                // The short one is a file of its own, that leads there.
                Document led = html(folder.resolve("web/" + link.get(3).substring(base.length()) + "/index.html"));
                assertThat(led.select("a").attr("href"))
                        .endsWith(
                                coach + "/" + (path.endsWith("/") ? "index.html" : path.substring(coach.length() + 1)));
                assertThat(link.get(3)).startsWith(base + "L/");
                spoken.add(link.get(2) + " " + link.get(3));
            }
            // One page has one short address, whatever it is sent with.
            assertThat(spoken.stream().map(it -> it.split(" ")[0]).distinct()).hasSameSizeAs(spoken);
            assertThat(spoken.stream().map(it -> it.split(" ")[1]).distinct()).hasSameSizeAs(spoken);

            assertThat(table(folder.resolve("staff/" + coach + "/links.csv"))).isEqualTo(shown);
            assertThat(json(folder.resolve("staff/" + coach + "/links.json"))).isEqualTo(shown);
            assertThat(folder.resolve("web/" + coach + "/links.html")).doesNotExist();
            assertThat(folder.resolve("web/" + coach + "/links.csv")).doesNotExist();
        }
        assertThat(folder.resolve("web/links.schema.json")).doesNotExist();
        // To be read out, or pasted into a message to a helper.
        assertThat(Files.readString(folder.resolve("web/whimbrel/phone-card.txt")))
                .contains("Coach number: HB 07\n", "Height: 12 ft 7 in (3.84 m)\n", "Highest allowed weight: 24,000 lb")
                .contains("Fuel: gasoline\n", "Plug of the power cord: 50 A plug");
        assertThat(Ezvcard.parse(folder.resolve("web/desk.vcf")).first().getTelephoneNumbers())
                .extracting(Telephone::getText)
                .containsExactly("+1 555-0110", "+1 555-0120", "+1 555-0130");
    }

    private static Document html(Path file) throws IOException {
        return Jsoup.parse(file.toFile());
    }

    private static List<List<String>> table(Path file) throws IOException {
        try (CSVParser rows = CSVParser.parse(
                file,
                StandardCharsets.UTF_8,
                CSVFormat.RFC4180.builder().setHeader().get())) {
            List<List<String>> table = new ArrayList<>();
            for (CSVRecord row : rows) {
                table.add(List.of(row.get("title"), row.get("line"), row.get("address"), row.get("short-address")));
            }
            return table;
        }
    }

    private List<List<String>> json(Path file) throws IOException {
        String schema = Files.readString(folder.resolve("staff/links.schema.json"));
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(schema)
                        .validate(Files.readString(file), InputFormat.JSON))
                .isEmpty();
        List<List<String>> links = new ArrayList<>();
        for (JsonNode link : new ObjectMapper().readTree(file.toFile()).get("links")) {
            links.add(List.of(
                    link.get("title").asText(),
                    link.get("line").asText(),
                    link.get("address").asText(),
                    link.get("short-address").asText()));
        }
        return links;
    }
}
