package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.check.Check;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Notice;
import bayfolio.model.Recall;
import bayfolio.model.Recalled;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Notices of a fleet of two coaches of one kind, one of which has some. What uses a thing is told by the same pages without
 * notices: whatever leads to it there.
 */
final class NoticesTest {
    private static final String NOTICES = """
            checked-on: 2026-06-10
            checked-by: Yard crew
            notices:
              - {id: pump-slow, text: The water pump sputters until it is mended., since: 2026-06-01, until: 2026-06-30, about: [pump]}
              - {id: panel-loose, text: The panel hangs by one screw. Fasten it before the next hire., since: 2026-06-02, for: staff, about: [panel]}
              - {id: lane, text: The front gate is shut this week. Come in by the lane., since: 2026-06-03, stages: [return]}
              - {id: mats, text: The floor mats are in the laundry., since: 2026-06-03}
              - {id: faucet, text: The faucet at the depot is dry., since: 2026-06-03, procedures: [fill-fresh-tank]}
              - {id: over, text: The awning cloth was at the tailor., since: 2026-05-03, until: 2026-06-09, roles: [awning]}
            """;

    private static final String FLEET = """
            notices:
              - id: disconnects
                text: Have the battery disconnect exchanged before the next hire.
                since: 2026-06-05
                for: staff
                roles: [house-battery-switch]
                recall:
                  campaign: Disconnects 26-2
                  coaches:
                    - {coach: plover}
                    - {coach: dotterel, done-on: 2026-06-09, done-by: electrician}
            """;

    private static final String PUMP = "The water pump sputters until it is mended.";
    private static final String PANEL = "The panel hangs by one screw. Fasten it before the next hire.";
    private static final String LANE = "The front gate is shut this week. Come in by the lane.";
    private static final String MATS = "The floor mats are in the laundry.";
    private static final String FAUCET = "The faucet at the depot is dry.";
    private static final String OVER = "The awning cloth was at the tailor.";
    private static final String RECALL = "Have the battery disconnect exchanged before the next hire.";

    /** Where renters begin, and what they carry along. */
    private static final Set<String> BEGINNINGS = Set.of("index.html", "phone-card.html", "quick-card.html");

    private static final Set<String> SHEETS = Set.of("condition.html", "inventory.html", "ready.html", "service.html");

    @TempDir
    private static Path temp;

    private static Check check;

    private static Map<String, byte[]> with;
    private static Map<String, byte[]> without;

    @BeforeAll
    static void publish() throws Exception {
        DemoFleet plain =
                DemoFleet.of(fleet(temp.resolve("plain"), "checked-on: 2026-06-10\nchecked-by: Yard crew\n", ""));
        plain.publish(temp.resolve("without"));
        DemoFleet noticed = DemoFleet.of(fleet(temp.resolve("noticed"), NOTICES, FLEET));
        noticed.publish(temp.resolve("with"));
        noticed.publish(temp.resolve("printed"), Publisher.ways(), "plover");
        check = noticed.check();
        with = DemoFleet.files(temp.resolve("with/web"));
        without = DemoFleet.files(temp.resolve("without/web"));
    }

    /** Two coaches that differ by name; one of them says more, and so does the fleet. */
    private static Path fleet(Path root, String ofOne, String ofAll) throws Exception {
        DemoFleet.copy(DemoFleet.SMALL, root);
        Path one = root.resolve("units/plover/unit.yaml");
        String said = Files.readString(one);
        DemoFleet.write(
                root.resolve("units/dotterel/unit.yaml"),
                said.replace("id: plover", "id: dotterel")
                        .replace("name: Plover", "name: Dotterel")
                        .replace("number: P3", "number: D4"));
        DemoFleet.write(one, said + ofOne);
        Path all = root.resolve("units/fleet.yaml");
        DemoFleet.write(all, Files.readString(all) + ofAll);
        return root;
    }

    @Test
    void aNoticeStandsFirstOnEachPageThatUsesTheThingAndOnNoOther() {
        Set<String> using = new TreeSet<>(BEGINNINGS);
        using.add("switch/pump.html");
        pages(without, "plover/").forEach((path, page) -> {
            if (path.matches("(do|trouble|stage|worked-out)/.*")
                    && !main(page).select("a[href$=switch/pump.html]").isEmpty()) {
                using.add(path);
            }
        });

        assertThat(using).hasSizeGreaterThan(12);
        assertThat(saying(with, PUMP)).containsExactlyElementsOf(using);
        using.forEach(path -> {
            Element first = Objects.requireNonNull(main(page(with, path)).selectFirst("> :not(h1)"), path);
            assertThat(first.hasClass("meanwhile")).as(path).isTrue();
        });
    }

    @Test
    void aNoticeStandsFirstInEachStepThatUsesTheThingAndInNoOther() {
        int[] steps = {0, 0};
        pages(without, "plover/").forEach((path, page) -> {
            for (Element step : page.select("ol.steps > li")) {
                Element noticed = Objects.requireNonNull(page(with, path).getElementById(step.id()), step.id());
                boolean uses = !step.select("a[href$=switch/pump.html]").isEmpty();
                Element first = Objects.requireNonNull(noticed.firstElementChild());
                assertThat(first.hasClass("meanwhile") && first.text().contains(PUMP))
                        .as(path + "#" + step.id())
                        .isEqualTo(uses);
                assertThat(noticed.select(".meanwhile:contains(" + PUMP + ")")).hasSize(uses ? 1 : 0);
                steps[uses ? 1 : 0]++;
            }
        });

        assertThat(steps[1]).isGreaterThan(10);
        assertThat(steps[0]).isGreaterThan(100);
    }

    @Test
    void aProcedureAStageAndTheCoachAsAWholeHaveTheirPages() {
        assertThat(saying(with, FAUCET))
                .contains("index.html", "do/fill-fresh-tank.html", "do/fill-fresh-tank--let-in.html")
                // A step of it goes on with filling the tank.
                .contains("do/use-water-pump.html")
                .doesNotContain("do/stop-water-leak.html", "switch/pump.html");
        assertThat(saying(with, LANE))
                .contains("index.html", "stage/return.html", "do/prepare-return.html")
                .doesNotContain("stage/living.html", "now/dark.html");
        assertThat(saying(with, MATS))
                .contains("index.html", "now/dark.html", "stage/return.html", "stage/living.html")
                .doesNotContain("do/prepare-return.html", "switch/pump.html");
    }

    @Test
    void whatIsForStaffIsInTheirCopyAlone() {
        Map<String, byte[]> staff = DemoFleet.files(temp.resolve("with/staff"));

        assertThat(saying(staff, PANEL))
                .contains("index.html", "switch/panel.html")
                .containsAll(SHEETS);
        assertThat(saying(staff, RECALL))
                .contains("index.html", "compartment/l1-gear.html", "do/shut-down-coach.html", "do/wake-up-coach.html")
                .containsAll(SHEETS);
        assertThat(saying(staff, PUMP)).containsAll(saying(with, PUMP)).containsAll(SHEETS);
        assertThat(saying(staff, PANEL))
                .doesNotContainAnyElementsOf(BEGINNINGS.stream()
                        .filter(it -> it.endsWith("card.html"))
                        .toList());
        with.forEach((path, bytes) -> assertThat(text(bytes)).as(path).doesNotContain("one screw", "exchanged before"));
    }

    /** One whose last day is over, and one that is done on this coach. */
    @Test
    void whatIsOverIsGone() {
        assertThat(saying(with, OVER)).isEmpty();
        Map<String, byte[]> staff = DemoFleet.files(temp.resolve("with/staff"));
        assertThat(pages(staff, "dotterel/").values())
                .isNotEmpty()
                .allSatisfy(page -> assertThat(page.select(".meanwhile")).isEmpty());
        assertThat(check.findings().all())
                .extracting(Finding::code)
                .filteredOn(code -> code.startsWith("notice-"))
                .containsExactly("notice-run-out");
    }

    @Test
    void aCoachWithoutNoticesHasTheSameFiles() {
        Set<String> other = new TreeSet<>();
        without.forEach((path, bytes) -> {
            if (path.startsWith("dotterel/") && !text(bytes).equals(text(with.getOrDefault(path, new byte[0])))) {
                other.add(path);
            }
        });

        assertThat(other).isEmpty();
        assertThat(without.keySet()).isEqualTo(with.keySet());
    }

    @Test
    void aPhoneKeepsThemAndFindsThem() {
        assertThat(file(with, "kept.json")).contains(PUMP, LANE, MATS, FAUCET);
        assertThat(file(with, "search.json")).contains("sputters", "laundry");
        assertThat(file(without, "search.json")).doesNotContain("sputters", "laundry");
    }

    @Test
    void paperHasThem() throws Exception {
        Map<String, byte[]> web = DemoFleet.files(temp.resolve("printed/web"));
        Map<String, byte[]> staff = DemoFleet.files(temp.resolve("printed/staff"));
        for (String book : List.of("book-a4", "book-letter", "large-print")) {
            String read = read(web, book);
            assertThat(read).as(book).contains(PUMP, LANE, MATS, FAUCET).doesNotContain(OVER, PANEL, RECALL);
            // Before the contents, on the page of the switch, and in steps.
            assertThat(read.split(PUMP, -1)).as(book).hasSizeGreaterThan(12);
            assertThat(read.indexOf(MATS)).as(book).isLessThan(read.indexOf("Find a fault"));
        }
        assertThat(read(web, "night-card")).doesNotContain(PUMP, LANE, MATS, FAUCET);
        for (String card : List.of("phone-card", "quick-card")) {
            assertThat(read(web, card)).as(card).contains(PUMP, LANE, MATS, FAUCET);
        }
        for (String sheet : List.of("condition", "inventory", "ready")) {
            assertThat(read(staff, sheet)).as(sheet).contains(PUMP, PANEL, RECALL);
        }
    }

    /** On a card there is no room for stories. */
    @Test
    void aCardTellsHowManyThereAreWhereTheyAreLong() throws Exception {
        String story = "The awning is at the tailor, who is on the way home from a trip around the bay. "
                .repeat(5)
                .strip();
        Path root = fleet(
                temp.resolve("long"),
                "notices:\n  - {id: one, text: '" + story + "', since: 2026-06-01, about: [house-battery-switch]}\n"
                        + "  - {id: two, text: The mats are out., since: 2026-06-01}\n",
                "");
        DemoFleet.of(root).publish(temp.resolve("long-out"), "plover");
        Map<String, byte[]> files = DemoFleet.files(temp.resolve("long-out/web"));

        assertThat(page(files, "quick-card.html").select(".meanwhile").eachText())
                .containsExactly(
                        "For now 2 notices hold for this coach now. Read the first page of the handbook before you begin.");
        // Of two it names the switch alone.
        assertThat(page(files, "night-card.html").select(".meanwhile").eachText())
                .containsExactly(
                        "For now 1 notice holds for this coach now. Read the first page of the handbook before you begin.");
        assertThat(page(files, "index.html").select(".meanwhile")).hasSize(2);
    }

    @Test
    void aDayLaterItIsGone() throws Exception {
        FleetReader.Reading reading = FleetReader.read(Folders.at(temp.resolve("noticed")));
        Unit unit = unit(reading.fleet(), "plover");

        assertThat(ids(reading.fleet().asOf(LocalDate.of(2026, 6, 30)), unit)).contains("pump-slow");
        Fleet later = reading.fleet().asOf(LocalDate.of(2026, 7, 1));
        assertThat(ids(later, unit)).containsExactly("disconnects", "panel-loose", "lane", "mats", "faucet");
        Theme theme = Theme.load(temp, Theme.BUILT_IN);
        Check checked = Check.of(later, reading.library(), theme.catalogs(), reading.findings());
        Publisher.publish(
                checked,
                FleetState.of(temp.resolve("noticed")),
                theme,
                new Publisher.Wanted(List.of("plover"), Set.of(Publisher.WEB), Printing.USUAL),
                temp.resolve("later"));
        Map<String, byte[]> files = DemoFleet.files(temp.resolve("later/web"));
        assertThat(saying(files, PUMP)).isEmpty();
        assertThat(saying(files, MATS)).isNotEmpty();
    }

    @Test
    void aRecallTellsWhatIsOpenAndWhoDidTheRest() {
        Recall recall = check.fleet().recalls().stream()
                .flatMap(notice -> notice.recall().stream())
                .findFirst()
                .orElseThrow();

        assertThat(check.fleet().recalls()).hasSize(1);
        assertThat(recall.campaign()).isEqualTo("Disconnects 26-2");
        assertThat(recall.open()).containsExactly("plover");
        assertThat(recall.coaches()).extracting(Recalled::coach).containsExactly("plover", "dotterel");
        assertThat(recall.coaches().get(1).doneOn()).contains(LocalDate.of(2026, 6, 9));
        assertThat(recall.coaches().get(1).doneBy()).contains(Recalled.By.ELECTRICIAN);
    }

    private static Unit unit(Fleet fleet, String id) {
        return fleet.units().stream()
                .filter(it -> it.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> ids(Fleet fleet, Unit unit) {
        return fleet.notices(unit).stream().map(Notice::id).toList();
    }

    private static Map<String, Document> pages(Map<String, byte[]> files, String coach) {
        return files.entrySet().stream()
                .filter(file -> file.getKey().startsWith(coach) && file.getKey().endsWith(".html"))
                .collect(Collectors.toMap(
                        file -> file.getKey().substring(coach.length()),
                        file -> Jsoup.parse(text(file.getValue())),
                        (one, other) -> one,
                        TreeMap::new));
    }

    private static Document page(Map<String, byte[]> files, String path) {
        return Jsoup.parse(file(files, path));
    }

    private static String file(Map<String, byte[]> files, String path) {
        return text(Objects.requireNonNull(files.get("plover/" + path), path));
    }

    private static Element main(Document page) {
        return Objects.requireNonNull(page.selectFirst("main"));
    }

    /** Pages of the coach on which a notice stands that says so. */
    private static Set<String> saying(Map<String, byte[]> files, String words) {
        return pages(files, "plover/").entrySet().stream()
                .filter(page ->
                        page.getValue().select(".meanwhile").eachText().stream().anyMatch(text -> text.contains(words)))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String read(Map<String, byte[]> files, String print) throws Exception {
        try (PDDocument pdf =
                Loader.loadPDF(Objects.requireNonNull(files.get("plover/print/" + print + ".pdf"), print))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
