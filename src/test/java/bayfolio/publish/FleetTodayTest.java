package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the day needs, on the first page of the staff's copy. */
final class FleetTodayTest {
    private static final String HEAD = "booking,coach,pickup,return\n";

    @TempDir
    private Path folder;

    private static Document page(BusyDay day) throws IOException {
        return Jsoup.parse(Files.readString(day.out().resolve("staff/index.html")));
    }

    /** The lines below a heading, each as `words > where it leads, where else`. */
    private static List<String> lines(Document page, String part) {
        Element below = Objects.requireNonNull(
                Objects.requireNonNull(page.getElementById(part), part).nextElementSibling());
        return below.is("ul")
                ? below.children().stream()
                        .map(line -> line.child(0).text() + " > "
                                + String.join(", ", line.select("a").eachAttr("href")))
                        .map(line -> line.replace('\u00a0', ' '))
                        .toList()
                : List.of(below.text());
    }

    private BusyDay with(String bookings) throws IOException {
        BusyDay day = BusyDay.write(folder);
        Files.writeString(day.bookings(), bookings);
        return day;
    }

    @Test
    void whatGoesOutAndComesInIsOneTapFromItsSheets() throws Exception {
        Document page = page(BusyDay.published());

        assertThat(page.select("h2").eachText()).startsWith("What May 4, 2026 needs");
        assertThat(lines(page, "out"))
                .containsExactly(
                        "09:30, Plover, booking B-1 > plover/ready.html, plover/condition.html",
                        "16:00, Knot, booking B-2 > knot/ready.html, knot/condition.html");
        assertThat(lines(page, "in"))
                .containsExactly("10:00, Knot, booking B-3 > knot/condition.html, knot/damage.html");
    }

    /** B-2 has the last one, B-3 is under way, B-1 was sent none. */
    @Test
    void whoIsToComeWithAnOlderEditionIsTold() throws Exception {
        assertThat(lines(page(BusyDay.published()), "older"))
                .containsExactly("Knot, booking B-4, pickup May 21, 2026, 16:00: has edition 1, the last one is 2"
                        + " > knot/what-changed.html, knot/index.html");
    }

    /** The step is due on the eighth day. */
    @Test
    void whatIsDueWithinAWeekLeadsToTheServicePage() throws Exception {
        assertThat(lines(page(BusyDay.published()), "due"))
                .containsExactly(
                        "Overdue, May 3, 2026, yard staff > dotterel/service.html",
                        "This week, May 11, 2026 > dotterel/service.html");
    }

    /** Each once, with the coaches on which it is not ticked off; one that ran out is no notice any more, but for a recall. */
    @Test
    void noticesAndRecallsLeadToTheirCoaches() throws Exception {
        assertThat(lines(page(BusyDay.published()), "notices"))
                .containsExactlyInAnyOrder(
                        "The gate of the yard is shut after dark. Since May 1, 2026."
                                + " > dotterel/index.html, knot/index.html, plover/index.html",
                        "Recall Seals 26-2: Change the seal. Since April 2, 2026."
                                + " > dotterel/index.html, plover/index.html",
                        "Recall Belts 26-1, overdue: Look at the belts. From April 1, 2026 until May 1, 2026."
                                + " > knot/index.html");
    }

    @Test
    void eachWayLeadsToAPageOfTheStaffCopy() throws Exception {
        List<String> ways = page(BusyDay.published()).select(".ways a").eachAttr("href");

        assertThat(ways)
                .hasSizeGreaterThan(12)
                .allSatisfy(way -> assertThat(
                                BusyDay.published().out().resolve("staff").resolve(way))
                        .isRegularFile());
    }

    @Test
    void withoutAFileOfBookingsItSaysHowToGiveOne() throws Exception {
        BusyDay day = BusyDay.write(folder);
        assertThat(day.publish()).endsWith("exit 0\n");
        Document page = page(day);

        assertThat(page.select(".remark").text())
                .contains("No file of bookings was given", "publish --bookings FILE.csv");
        assertThat(page.select("h3").eachText())
                .containsExactly("Overdue, or due within a week", "Notices and recalls");
        assertThat(lines(page, "due")).hasSize(2);
    }

    @Test
    void aQuietDayIsSaidToBeOne() throws Exception {
        BusyDay day = with(
                HEAD + "B-1,knot,2026-05-05 00:00,2026-05-06 10:00\n" + "B-2,knot,2026-04-01 10:00,2026-05-03 23:59\n");
        assertThat(day.publish("--bookings", day.bookings().toString())).endsWith("exit 0\n");
        Document page = page(day);

        assertThat(page.select(".remark")).isEmpty();
        assertThat(lines(page, "out")).containsExactly("No coach goes out.");
        assertThat(lines(page, "in")).containsExactly("No coach comes in.");
        assertThat(lines(page, "older")).containsExactly("No booking to come has an older edition.");
    }

    /** Both ends of the day belong to it. */
    @Test
    void theDayGoesFromMidnightToMidnight() throws Exception {
        BusyDay day = with(
                HEAD + "B-1,knot,2026-05-04 23:59,2026-05-06 10:00\n" + "B-2,knot,2026-04-01 10:00,2026-05-04 00:00\n");
        assertThat(day.publish("--bookings", day.bookings().toString())).endsWith("exit 0\n");

        assertThat(lines(page(day), "out")).singleElement().asString().startsWith("23:59, Knot, booking B-1");
        assertThat(lines(page(day), "in")).singleElement().asString().startsWith("00:00, Knot, booking B-2");
    }

    /** As other programs give it out: with a mark at its head, semicolons, cells of several lines. */
    @Test
    void eachWrongRowIsToldByItsLineAndTheOthersAreUsed() throws Exception {
        BusyDay day = with("\uFEFFBooking;Renter;Coach;Pickup;Return;Edition sent\r\n"
                + "B-1;\"Doe,\r\nJane\";knot;2026-05-04 16:00;2026-05-11 10:00;\r\n"
                + "B-2;\"Doe,\nJohn\";knto;2026-05-04 16:00;2026-05-11 10:00;\r\n"
                + "B-3;Doe;knot;2026-02-30 16:00;2026-05-11 10:00;\r\n"
                + "B-4;Doe;knot;2026-05-04 16:00;2026-05-04 10:00;\r\n"
                + "B-1;Doe;plover;2026-05-04 16:00;2026-05-11 10:00;\r\n"
                + "B-6;Doe;plover\r\n"
                + "B-7;Doe;plover;2026-05-04 17:00;2026-05-11 10:00;1\r\n"
                + "B-8;Doe;knot;2026-05-04 18:00;2026-05-11 10:00;3\r\n");

        String said = day.publish("--bookings", day.bookings().toString());

        assertThat(said)
                .contains("bookings.csv:4:1: error: there is no coach `knto`", "did you mean `knot`?")
                .contains("bookings.csv:6:1: error: `pickup` is `2026-02-30 16:00`, which is no day and time")
                .contains("bookings.csv:7:1: error: the return, 2026-05-04 10:00, is not after the pickup")
                .contains("bookings.csv:8:1: error: booking `B-1` is there already, in line 2")
                .contains("bookings.csv:9:1: error: the row has 3 columns")
                .contains("bookings.csv:10:1: error: there is no edition 1 of `plover`", "None was issued yet")
                .contains("bookings.csv:11:1: error: there is no edition 3 of `knot`", "Its last one is 2")
                .contains("In all: 7 errors", "Published ")
                .doesNotContain("Doe")
                .endsWith("exit 1\n");
        Document page = page(day);
        assertThat(page.select(".remark").text()).startsWith("Not all of the file of bookings could be read");
        assertThat(lines(page, "out").stream().map(line -> line.replaceFirst(" >.*", "")))
                .containsExactly("16:00, Knot, booking B-1", "17:00, Plover, booking B-7", "18:00, Knot, booking B-8");
        assertThat(lines(page, "older")).containsExactly("No booking to come has an older edition.");
    }

    @Test
    void aFileWithoutAColumnTellsNothingOfAnyCoach() throws Exception {
        BusyDay day = with("booking,coach,pick up,return\nB-1,knot,2026-05-04 16:00,2026-05-11 10:00\n");

        assertThat(day.publish("--bookings", day.bookings().toString()))
                .contains("bookings.csv:1:1: error: the column `pickup` is missing", "did you mean `pick up`?")
                .endsWith("exit 1\n");
        assertThat(page(day).select(".remark").text()).startsWith("Not all of the file of bookings could be read");
    }

    @Test
    void aCallThatCannotBeMeantIsRefusedBeforeAnythingIsRead() throws Exception {
        BusyDay day = with(HEAD);

        assertThat(day.publish("--bookings", folder.resolve("none.csv").toString()))
                .startsWith("There is no file `")
                .endsWith("exit 2\n");
        assertThat(day.publish("--bookings", folder.toString()))
                .startsWith("There is no file `")
                .endsWith("exit 2\n");
        assertThat(day.publish("--only", "cards", "--bookings", day.bookings().toString()))
                .startsWith("`--bookings` is for the staff's first page, and `--only` leaves out `web`.")
                .endsWith("exit 2\n");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    /** It goes out whatever the check finds; of a coach without pages the number stands there alone. */
    @Test
    void aCoachThatIsNotPublishedStillGoesOut() throws Exception {
        BusyDay day = with(HEAD + "B-1,knot,2026-05-04 16:00,2026-05-11 10:00\n"
                + "B-2,plover,2026-05-04 17:00,2026-05-11 10:00\n");
        Path knot = day.fleet().resolve("units/knot/unit.yaml");
        // Nor does a recall of its own that nobody can read stop the others.
        Files.writeString(
                knot,
                Files.readString(knot).replace("name: Knot\n", "name: [1]\n")
                        + "\nnotices:\n  - {id: hoses, text: Oh., since: 2026-05-01, recall: 5}\n");

        assertThat(day.publish("--bookings", day.bookings().toString()))
                .contains("Left out: knot")
                .endsWith("exit 1\n");
        assertThat(lines(page(day), "out"))
                .containsExactly(
                        "16:00, knot, booking B-1 > ",
                        "17:00, Plover, booking B-2 > plover/ready.html, plover/condition.html");
        assertThat(page(day).select(".remark").eachText())
                .containsExactly("Nothing but bookings is told of coaches in which the check finds errors: knot.");
        assertThat(lines(page(day), "notices")).hasSize(2).noneMatch(line -> line.contains("knot"));
    }

    @Test
    void rentersHaveTheirFirstPageAsItWas() throws Exception {
        String page = Files.readString(BusyDay.published().out().resolve("web/index.html"));

        assertThat(page).contains("Choose your coach").doesNotContain("today", "search", "B-1", "staff");
        DemoFleet.files(BusyDay.published().out().resolve("web"))
                .forEach((path, bytes) -> assertThat(new String(bytes, StandardCharsets.UTF_8))
                        .as(path)
                        .doesNotContain("booking B-"));
        List<String> named = new ArrayList<>();
        DemoFleet.files(BusyDay.published().out().resolve("staff")).forEach((path, bytes) -> {
            if (new String(bytes, StandardCharsets.UTF_8).contains("booking B-")) {
                named.add(path);
            }
        });
        assertThat(named).containsExactly("index.html");
    }
}
