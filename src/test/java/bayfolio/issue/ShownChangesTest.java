package bayfolio.issue;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.publish.SmallFleet;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What readers see of editions: which one they have, what has changed, and a bar beside it. */
final class ShownChangesTest {
    private static final String UNIT = "units/knot/unit.yaml";

    @TempDir
    private Path folder;

    private Path fleet = Path.of("");

    @BeforeEach
    void aCoach() throws IOException {
        fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot"));
    }

    private void run(String... words) {
        assertThat(new TypedFleet(fleet).said(words)).endsWith("exit 0\n");
    }

    private Map<String, Document> published(String ways) {
        run("publish", "--only", ways);
        Map<String, Document> pages = new TreeMap<>();
        DemoFleet.files(fleet.resolve("site-out/web/knot")).forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                pages.put(path, Jsoup.parse(new String(bytes, StandardCharsets.UTF_8)));
            }
        });
        return pages;
    }

    private void edit(String file, String before, String after) throws IOException {
        new TypedFleet(fleet).edit(file, before, after);
    }

    @Test
    void aBarStandsBesideWhatSaysSomethingElseAndNothingElse() throws Exception {
        run("issue", "knot", "--note", "As bought.", "--date", "2026-05-02");
        Map<String, Document> first = published("web");
        assertThat(texts(page(first, "what-changed.html"), "main p"))
                .contains("Edition 1, May 2, 2026", "As bought.")
                .noneMatch(it -> it.contains("Changed since"));
        assertThat(first.values())
                .allSatisfy(page -> assertThat(page.select(".changed")).isEmpty());

        edit(UNIT, "where: beside the tap", "where: below the tap");
        edit(UNIT, "on-look: red edge up", "on-look: green edge up");
        run("issue", "knot", "--note", "The pump has a new switch.", "--date", "2026-06-01");
        Map<String, Document> second = published("web");

        int bars = 0;
        for (Map.Entry<String, Document> page : second.entrySet()) {
            if (page.getKey().equals("what-changed.html") || !first.containsKey(page.getKey())) {
                continue;
            }
            Map<String, String> was = barred(page(first, page.getKey()));
            TreeSet<String> differ = new TreeSet<>();
            barred(page.getValue()).forEach((place, text) -> {
                if (!text.equals(was.get(place))) {
                    differ.add(place);
                }
            });
            TreeSet<String> marked = new TreeSet<>();
            page.getValue().select(".changed").forEach(it -> marked.add(place(it)));
            assertThat(marked).as(page.getKey()).isEqualTo(differ);
            bars += marked.size();
        }
        assertThat(bars).isGreaterThan(2);
        Document told = page(second, "what-changed.html");
        assertThat(texts(told, "main p"))
                .contains("Edition 2, June 1, 2026", "The pump has a new switch.", "Changed since edition 1");
        assertThat(texts(told, "main .links:first-of-type li"))
                .hasSizeBetween(1, 3)
                .first()
                .isEqualTo("Pump switch It is in another place now.");
        assertThat(told.select("main > .links li").size()).isLessThanOrEqualTo(3);
        assertThat(page(second, "do/use-water-pump.html")
                        .select("footer .edition a")
                        .attr("href"))
                .isEqualTo("../what-changed.html");
        assertThat(page(second, "do/use-water-pump.html")
                        .select("footer .edition")
                        .text())
                .isEqualTo("Edition 2, June 1, 2026");
    }

    @Test
    void theMachineCopyHasTheEditionThatPagesHaveAtTheFoot() throws Exception {
        published("web");
        assertThat(edition().keySet()).containsExactly("state");

        run("issue", "knot", "--note", "As bought.", "--date", "2026-05-02");
        Document issued = page(published("web"), "switches.html");
        assertThat(edition().get("state").getAsString()).isEqualTo("1");
        assertThat(edition().get("number").getAsInt()).isEqualTo(1);
        assertThat(edition().get("day").getAsString()).isEqualTo("2026-05-02");
        assertThat(edition().get("as-issued").getAsBoolean()).isTrue();
        assertThat(texts(issued, "footer .edition"))
                .containsExactly(edition().get("words").getAsString());

        edit(UNIT, "where: beside the tap", "where: below the tap");
        Document changed = page(published("web"), "switches.html");
        assertThat(edition().get("state").getAsString()).matches("1-[0-9a-f]{8}");
        assertThat(edition().get("number").getAsInt()).isEqualTo(1);
        assertThat(edition().get("as-issued").getAsBoolean()).isFalse();
        assertThat(texts(changed, "footer .edition"))
                .containsExactly(edition().get("words").getAsString());
    }

    private JsonObject edition() throws IOException {
        String copy = Files.readString(fleet.resolve("site-out/web/knot/handbook.json"));
        return JsonParser.parseString(copy).getAsJsonObject().getAsJsonObject("edition");
    }

    /** Where the text of an element on a page stands: steps and rows, paragraphs of an opening, by their order. */
    private static Map<String, String> barred(Document page) {
        Map<String, String> texts = new TreeMap<>();
        for (Element each : page.select(
                "main ol.steps > li, dl.facts > div, main > p:not(.mark), main > div.changed, main p.mark, section > p, section > div.changed")) {
            texts.put(place(each), text(each));
        }
        return texts;
    }

    private static String text(Element element) {
        Element copy = element.clone();
        copy.select(".said").remove();
        return copy.text();
    }

    private static String place(Element element) {
        if (element.tagName().equals("li")) {
            return "step " + element.id();
        }
        Element around = element.parents().stream()
                .filter(it -> !it.id().isEmpty())
                .findFirst()
                .orElseThrow();
        String label = element.tagName().equals("div") && element.selectFirst("dt") != null
                ? "row " + text(element.selectFirst("dt"))
                : "text "
                        + around.select("> p:not(.mark), > div.changed, > p.mark")
                                .indexOf(element);
        return around.id() + " " + label;
    }

    private static Document page(Map<String, Document> pages, String path) {
        return Optional.ofNullable(pages.get(path)).orElseThrow();
    }

    private static List<String> texts(Document page, String query) {
        return page.select(query).eachText();
    }

    @Test
    void aMendedSpellingHasNoBar() throws Exception {
        edit(UNIT, "where: beside the tap", "where: beside the galleey tap");
        run("issue", "knot", "--note", "As bought.", "--date", "2026-05-02");
        edit(UNIT, "where: beside the galleey tap", "where: beside the galley tap");
        run("issue", "knot", "--note", "A word.", "--date", "2026-05-03");

        Map<String, Document> pages = published("web");
        assertThat(pages.values())
                .allSatisfy(page -> assertThat(page.select(".changed")).isEmpty());
        assertThat(texts(page(pages, "what-changed.html"), "main p"))
                .contains("Nothing that you read has changed since edition 1.");
    }

    @Test
    void whatIsForStaffChangesNothingForRenters() throws Exception {
        run("issue", "knot", "--note", "As bought.", "--date", "2026-05-02");
        Map<String, Document> before = published("web");
        edit(
                UNIT,
                "    access: free\n    work: press the top",
                "    access: free\n    checked-by: Canary of the yard\n    work: press the top");
        Map<String, Document> after = published("web");

        assertThat(after.keySet()).isEqualTo(before.keySet());
        after.forEach((path, page) ->
                assertThat(page.html()).as(path).isEqualTo(page(before, path).html()));
    }

    @Test
    void theBookSaysWhatItTakesThePlaceOf() throws Exception {
        run("issue", "knot", "--note", "As bought.", "--date", "2026-05-02");
        edit(UNIT, "where: beside the tap", "where: below the tap");
        run("issue", "knot", "--note", "The pump has a new switch.", "--date", "2026-06-01");
        run("publish", "--only", "book,web");

        for (String file : List.of("book-letter", "book-a4", "large-print")) {
            try (PDDocument book = Loader.loadPDF(
                    fleet.resolve("site-out/web/knot/print/" + file + ".pdf").toFile())) {
                PDFTextStripper text = new PDFTextStripper();
                text.setEndPage(1);
                assertThat(text.getText(book).replaceAll("\\s+", " "))
                        .as(file)
                        .contains("Edition 2, June 1, 2026 The pump has a new switch."
                                + " Pump switch: It is in another place now. It takes the place of edition 1.")
                        .contains("Local rules go before this handbook.");
            }
        }
    }

    @Test
    void anEditionThatIsNotAsItWasIssuedKeepsTheOldSite() throws Exception {
        run("issue", "knot", "--note", "As bought.", "--date", "2026-05-02");
        published("web");
        byte[] site = Files.readAllBytes(fleet.resolve("site-out/web/knot/index.html"));
        edit("units/knot/editions/1.json", "\"note\": \"As bought.\"", "\"note\": \"As sold.\"");
        assertThat(new TypedFleet(fleet).said("publish", "--only", "web"))
                .containsOnlyOnce("units/knot/editions/1.json:7:1: error: edition 1 of `knot` is not as it was issued")
                .endsWith("Nothing was published.\nexit 1\n");
        assertThat(Arrays.equals(Files.readAllBytes(fleet.resolve("site-out/web/knot/index.html")), site))
                .isTrue();
    }

    @Test
    void anOlderEditionThatIsToBeShownIsToldWhenItIsRead() throws Exception {
        run("issue", "knot", "--note", "As bought.", "--date", "2026-05-02");
        edit(UNIT, "where: beside the tap", "where: below the tap");
        run("issue", "knot", "--note", "The pump has a new switch.", "--date", "2026-06-01");
        edit("units/knot/editions/1.json", "\"note\": \"As bought.\"", "\"note\": \"As sold.\"");

        run("check");
        assertThat(new TypedFleet(fleet).said("publish", "--only", "web"))
                .contains("An edition is not as it was issued, nothing was published")
                .containsOnlyOnce("units/knot/editions/1.json:7:1: edition 1 of `knot` is not as it was issued")
                .endsWith("exit 1\n");
    }
}
