package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalog;
import bayfolio.compose.FleetDue;
import bayfolio.document.Overview;
import bayfolio.model.Fleet;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is due on all coaches, in the staff's copy. */
final class FleetDueTest {
    @TempDir
    private Path folder;

    private static List<String> rows(Path root, LocalDate day) throws Exception {
        Fleet fleet = FleetReader.read(Folders.at(root)).fleet();
        Catalog words = Theme.load(Path.of(""), Theme.BUILT_IN).catalogs().of(fleet.languages());
        Overview due = FleetDue.of(fleet.asOf(day), words, unit -> true);
        return due.tables().get(0).rows().stream()
                .map(row -> String.join(
                                " | ",
                                row.cells().stream()
                                        .map(cell -> String.join("", cell.lines()))
                                        .toList())
                        .replace('\u00a0', ' '))
                .toList();
    }

    private static List<String> demo(int year, int month, int day) throws Exception {
        return rows(Path.of(""), LocalDate.of(year, month, day));
    }

    /** By the calendar: whimbrel's seams are due 90 days after September 14, on December 13. */
    @Test
    void aDayIsLaterThenThisWeekThenOverdue() throws Exception {
        String seams = " | Roof seams and slide-out seals | December 13, 2026 | yard staff";

        assertThat(demo(2026, 12, 5)).contains("Whimbrel | Later" + seams);
        assertThat(demo(2026, 12, 6)).contains("Whimbrel | This week" + seams);
        assertThat(demo(2026, 12, 13)).contains("Whimbrel | This week" + seams);
        assertThat(demo(2026, 12, 14)).contains("Whimbrel | Overdue" + seams);
    }

    @Test
    void theMostUrgentComesFirstWhoeverItIsOf() throws Exception {
        List<String> rows = demo(2026, 12, 1);

        assertThat(rows.subList(0, 8))
                .containsExactly(
                        "Avocet | Overdue | Roof seams | November 28, 2026 | yard staff",
                        "Curlew | Overdue | Roof seams | November 28, 2026 | yard staff",
                        "Dunlin | Overdue | Roof seams | November 28, 2026 | yard staff",
                        "Godwit | Overdue | Roof seams | November 28, 2026 | yard staff",
                        "Redpoll | Overdue | Fire extinguisher and alarms | November 28, 2026 | yard staff",
                        "Redpoll | Overdue | Fresh tank and pipes cleaned | November 28, 2026 | yard staff",
                        "Phalarope | This week | Roof seams and slide-out seals | December 6, 2026 | yard staff",
                        // Avocet and godwit are ticked off.
                        "Curlew | Not ticked off | Recall: Dump valve seals 26-4 | Since August 24, 2026. | ");
    }

    /** Curlew's gas alarm by June 30, 2027; redpoll's tires are of week 36 of 2021, and seven years are allowed. */
    @Test
    void alarmsTiresAndHosesAreDueByTheirOwnDay() throws Exception {
        assertThat(demo(2027, 7, 1)).contains("Curlew | Overdue | Replace: LP gas alarm | June 30, 2027 | ");
        assertThat(demo(2028, 9, 6))
                .contains("Redpoll | This week | Change the tires, the oldest: 3621 | 6 September 2028 | "
                        .replace("6 September 2028", "September 6, 2028"));
        assertThat(demo(2026, 11, 4)).contains("Whimbrel | Later | LP hoses | March 31, 2033 | a licensed gas fitter");
    }

    private Path fleet(String coach, String from, String to) throws Exception {
        Path fleet = folder.resolve("fleet");
        if (!Files.exists(fleet)) {
            DemoFleet.copyWhole(fleet);
        }
        Path file = fleet.resolve("units/" + coach + (coach.endsWith(".yaml") ? "" : "/unit.yaml"));
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to)));
        return fleet;
    }

    private List<String> changed(String coach, String from, String to) throws Exception {
        return rows(fleet(coach, from, to), LocalDate.of(2026, 11, 4));
    }

    /** What looks like a fact and says no day is no silence: somebody has to look it up. */
    @Test
    void whatNobodyCanTellIsToldAsSuch() throws Exception {
        // A code without a year.
        assertThat(changed("whimbrel", "age-code: \"1423\"", "age-code: week 14"))
                .contains("Whimbrel | Not known | Change the tires, the oldest: week 14 |"
                        + " not known; no week can be read from the date code | ");
        // A service with neither a day nor an interval.
        assertThat(changed("whimbrel", "    every-days: 120\n    last: 2026-09-14\n    by: yard", "    by: yard"))
                .contains("Whimbrel | Not known | Water filter | not known; no start is given | yard staff");
        // One with an interval alone.
        assertThat(changed("redpoll", "replace-by: 2028-02-28", "note-to-nobody: x").stream()
                        .filter(row -> row.startsWith("Redpoll | Not known | Replace")))
                .hasSize(1)
                .allMatch(row -> row.endsWith("not known; no replace-by date is stated | "));
    }

    /** An odometer that nobody reads here makes nothing due, and is not left out. */
    @Test
    void whatGoesByACounterAloneComesLastWithItsFigure() throws Exception {
        List<String> rows = changed("whimbrel", "    every-days: 365\n    last: 2026-03-09\n", "");

        assertThat(rows.get(rows.size() - 1))
                .isEqualTo("Whimbrel | By its counter | Engine oil and filter | 36,240 mi (58,323 km)"
                        + " | the chassis workshop");
    }

    /** The day on a sticker and the end of the interval: whichever comes first. */
    @Test
    void aDayThatIsWrittenDownCountsBesideTheInterval() throws Exception {
        assertThat(changed("whimbrel", "    every-days: 120\n", "    every-days: 120\n    due: 2026-11-03\n"))
                .contains("Whimbrel | Overdue | Water filter | November 3, 2026 | yard staff");
        assertThat(changed("whimbrel", "    due: 2026-11-03\n", "    due: 2027-11-03\n"))
                .contains("Whimbrel | Later | Water filter | January 12, 2027 | yard staff");
    }

    /** A notice goes when its last day is over; what it asked for and nobody ticked off is still to be done. */
    @Test
    void aRecallThatRanOutIsOverdueWhereItIsNotTickedOff() throws Exception {
        Path fleet = fleet("fleet.yaml", "tire-years: 7\n", """
                tire-years: 7
                notices:
                  - id: belts
                    text: Look at the belts.
                    since: 2026-09-01
                    until: 2026-10-31
                    for: staff
                    recall:
                      campaign: Belts 26-1
                      coaches:
                        - {coach: whimbrel}
                        - {coach: dunlin, done-on: 2026-09-10, done-by: yard}
                """);
        List<String> rows = rows(fleet, LocalDate.of(2026, 11, 4));

        assertThat(rows.get(0)).isEqualTo("Whimbrel | Overdue | Recall: Belts 26-1 | October 31, 2026 | ");
        assertThat(rows).noneMatch(row -> row.startsWith("Dunlin") && row.contains("Recall"));
    }

    @Test
    void withoutARuleOfTheFleetNoTireIsTooOld() throws Exception {
        assertThat(changed("fleet.yaml", "tire-years: 7\n", "")).noneMatch(row -> row.contains("tires"));
    }

    @Test
    void itIsAPageOfTheStaffAlone() throws Exception {
        Path staff = DemoFleet.web().resolveSibling("staff");
        Document page = Jsoup.parse(Files.readString(staff.resolve("due.html")));

        assertThat(page.select("h1").text()).isEqualTo("What is due");
        assertThat(page.select(".staff-copy")).hasSize(1);
        assertThat(page.select("h2").text()).isEqualTo("As of November 4, 2026");
        assertThat(page.select("tbody th a").eachAttr("href")).contains("whimbrel/index.html");
        assertThat(Jsoup.parse(Files.readString(staff.resolve("index.html")))
                        .select(".links a")
                        .eachAttr("href"))
                .containsExactly("fleet.html", "due.html");
        DemoFleet.files(DemoFleet.web()).forEach((path, bytes) -> {
            assertThat(path).isNotEqualTo("due.html");
            if (path.endsWith(".html") || path.equals("_headers")) {
                assertThat(new String(bytes, StandardCharsets.UTF_8)).as(path).doesNotContain("due.html");
            }
        });
    }
}
