package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalog;
import bayfolio.compose.FleetOverview;
import bayfolio.document.Overview;
import bayfolio.model.Fleet;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** All coaches side by side, in the staff's copy. */
final class FleetOverviewTest {
    private static final Path WEB = DemoFleet.wholeWeb();

    @TempDir
    private Path folder;

    private static Document page(Path out) throws Exception {
        return Jsoup.parse(Files.readString(out.resolve("staff/fleet.html")));
    }

    private static Document demo() throws Exception {
        return Jsoup.parse(Files.readString(WEB.resolveSibling("staff").resolve("fleet.html")));
    }

    private static Element cell(Document page, String coach, String column) {
        List<String> heads = page.select("thead th").eachText();
        Element row = page.select("tbody tr").stream()
                .filter(it -> it.child(0).text().equalsIgnoreCase(coach))
                .findFirst()
                .orElseThrow();
        assertThat(heads).contains(column);
        return row.child(heads.indexOf(column));
    }

    private static List<String> coaches(Document page) {
        return page.select("tbody th").eachText();
    }

    private static String written(String coach, String block, String key) throws Exception {
        Matcher line = Pattern.compile("(?m)^" + block + ":\\n(?:  .*\\n)*?  " + key + ": (.*)$")
                .matcher(Files.readString(Path.of("units", coach, "unit.yaml")));
        assertThat(line.find()).as(coach + " " + key).isTrue();
        return line.group(1);
    }

    /** Each figure against the line of the file, read as plain text. */
    @Test
    void eachCoachHasARowOfItsOwnFigures() throws Exception {
        Document page = demo();
        int compared = 0;
        for (String coach : List.of("dunlin", "phalarope", "redpoll", "turnstone", "whimbrel")) {
            assertThat(cell(page, coach, "Height").text()).startsWith(written(coach, "size", "height"));
            assertThat(cell(page, coach, "Length").text()).startsWith(written(coach, "size", "length"));
            assertThat(cell(page, coach, "Fuel").text()).isEqualTo(written(coach, "engine", "fuel"));
            assertThat(cell(page, coach, "Sleeping places").text())
                    .isEqualTo(written(coach, "people", "sleeping-places"));
            assertThat(cell(page, coach, "Belted seats").text()).isEqualTo(written(coach, "people", "belted-seats"));
            assertThat(cell(page, coach, "Hire").text())
                    .contains("Winter: " + written(coach, "hire", "winter"))
                    .contains("Towing: " + written(coach, "hire", "towing"));
            assertThat(cell(page, coach, "Due").text()).isNotEmpty();
            compared++;
        }
        assertThat(compared).isEqualTo(page.select("tbody tr").size());
        assertThat(page.select(".staff-copy")).hasSize(1);
        // None of these has one.
        assertThat(page.select("thead th").eachText()).doesNotContain("Model");
    }

    @Test
    void noRenterGetsIt() throws Exception {
        Map<String, byte[]> theirs = DemoFleet.files(WEB);

        assertThat(theirs).doesNotContainKey("fleet.html");
        assertThat(theirs.keySet()).noneMatch(path -> path.contains("overview"));
        for (String path : List.of("index.html", "_headers")) {
            assertThat(new String(Objects.requireNonNull(theirs.get(path)), StandardCharsets.UTF_8))
                    .doesNotContain("fleet.html")
                    .doesNotContain("overview");
        }
        assertThat(Files.readString(WEB.resolveSibling("staff").resolve("index.html")))
                .contains("fleet.html");
    }

    private Path fleet(String coach, String from, String to) throws Exception {
        Path fleet = folder.resolve("fleet");
        if (!Files.exists(fleet)) {
            DemoFleet.copyWhole(fleet);
        }
        Path file = fleet.resolve("units/" + coach + "/unit.yaml");
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
        return fleet;
    }

    /** One coach is published anew; the page is right for all of them, and links to those that have a handbook. */
    @Test
    void itIsOfAllCoachesAsTheyAreNowWhicheverIsPublished() throws Exception {
        Path out = folder.resolve("out");
        DemoFleet.of(fleet("whimbrel", "sleeping-places: 6", "sleeping-places: 5"))
                .publish(out, "redpoll");
        Document first = page(out);

        assertThat(coaches(first)).containsExactly("Dunlin", "Phalarope", "Redpoll", "Turnstone", "Whimbrel");
        assertThat(cell(first, "whimbrel", "Sleeping places").text()).isEqualTo("5");
        assertThat(first.select("tbody a").eachAttr("href")).containsExactly("redpoll/index.html");

        DemoFleet.of(fleet("redpoll", "sleeping-places: 4", "sleeping-places: 3"))
                .publish(out, "dunlin");
        Document second = page(out);

        assertThat(cell(second, "redpoll", "Sleeping places").text()).isEqualTo("3");
        assertThat(second.select("tbody a").eachAttr("href"))
                .containsExactly("dunlin/index.html", "redpoll/index.html");
    }

    @Test
    void aCoachWithErrorsIsNamedAndNothingUntrueIsSaidOfIt() throws Exception {
        Path out = folder.resolve("out");
        DemoFleet.of(fleet("redpoll", "sleeping-places: 4", "sleeping-places: four"))
                .publish(out, "dunlin");
        fleet("turnstone", "id: turnstone", "id: [");
        DemoFleet.of(folder.resolve("fleet")).publish(out, "dunlin");
        Document page = page(out);

        assertThat(coaches(page)).containsExactly("Dunlin", "Phalarope", "Whimbrel");
        assertThat(page.select("main > p:last-of-type").text())
                .isEqualTo("Not listed, since the check finds errors: redpoll and turnstone.");
    }

    private static Overview on(LocalDate day) throws Exception {
        Fleet fleet = FleetReader.read(Folders.at(DemoFleet.wholeFleet())).fleet();
        Catalog words = Theme.load(Path.of(""), Theme.BUILT_IN).catalogs().of(fleet.languages());
        return FleetOverview.of(fleet.asOf(day), words, unit -> true);
    }

    private static List<String> due(Overview.Row row) {
        return row.cells().get(row.cells().size() - 1).lines();
    }

    /** By the calendar: whimbrel's seams are due 90 days after September 14, its oil 365 after March 9. */
    @Test
    void whatIsOverdueIsToldOnItsDayAndNotBefore() throws Exception {
        Overview.Row before =
                on(LocalDate.of(2026, 12, 13)).tables().get(0).rows().get(4);
        Overview.Row after =
                on(LocalDate.of(2026, 12, 14)).tables().get(0).rows().get(4);
        assertThat(before.unit()).isEqualTo("whimbrel");

        assertThat(due(before))
                .containsExactly("Roof seams and slide-out seals: December\u00a013,\u00a02026".replace('\u00a0', ' '));
        assertThat(due(after))
                .hasSize(2)
                .first()
                .isEqualTo("Overdue: Roof seams and slide-out seals, December 13, 2026");
        assertThat(due(after).get(1)).isEqualTo("Water filter: January 12, 2027");
        // What comes round by distance, too, says both.
        assertThat(due(on(LocalDate.of(2027, 3, 10)).tables().get(0).rows().get(4)))
                .anyMatch(line -> line.startsWith("Overdue: Engine oil and filter, March 9, 2027 or 36,240"));
    }

    /** Walked on April 18, 2026. */
    @Test
    void aWalkThatIsThreeYearsAgoIsAskedForAgain() throws Exception {
        List<List<String>> told = new ArrayList<>();
        for (LocalDate day : List.of(LocalDate.of(2029, 4, 18), LocalDate.of(2029, 4, 19))) {
            told.add(due(on(day).tables().get(0).rows().get(4)));
        }

        assertThat(told.get(0)).noneMatch(line -> line.contains("walked"));
        assertThat(told.get(1))
                .contains("Last walked with its description on April 18, 2026, more than three years ago");
    }

    @Test
    void whatSistersSayOtherwiseThanTheirModelStandsBelow() throws Exception {
        Document page = Jsoup.parse(
                Files.readString(DemoFleet.web().resolveSibling("staff").resolve("fleet.html")));

        assertThat(page.select("#coaches thead th").eachText()).contains("Model");
        assertThat(page.select("#model-bay-24 h2").text()).isEqualTo("What differs within the model bay-24");
        List<String> rows = page.select("#model-bay-24 tbody tr").eachText();
        assertThat(rows)
                .contains("Avocet Charger: Rating 50 A 45 A", "Avocet House batteries: Usable 80 % 50 %")
                .anyMatch(row -> row.startsWith("Godwit Oven") && row.endsWith("not on this coach"))
                .anyMatch(row -> row.startsWith("Curlew Power inlet") && row.endsWith("only on this coach"))
                // What each has of its own is no difference.
                .noneMatch(row -> row.contains("Replace by") || row.contains("As weighed") || row.contains("Age code"));
    }
}
