package bayfolio.mail;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.HtmlFaults;
import bayfolio.publish.SmallFleet;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.apache.james.mime4j.dom.Entity;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.Multipart;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.message.DefaultMessageBuilder;
import org.apache.james.mime4j.stream.MimeConfig;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Messages for bookings, read back by another reader of mail than the one that wrote them. */
class MailTest {
    private static final String HEAD = "booking,coach,pickup,return,people,supply,language,trip,edition sent,renter\n";
    private static final String BASE = "https://books.lanterncreek.example/";
    private static final ZoneId ZONE = ZoneId.of("America/New_York");

    @TempDir
    private Path folder;

    private Path fleet = Path.of("");
    private Path out = Path.of("");
    private String said = "";

    @BeforeEach
    void aFleetWithHours() throws IOException {
        fleet = SmallFleet.write(folder.resolve("fleet"), List.of("knot"));
        out = folder.resolve("mail");
        Path facts = fleet.resolve("units/fleet.yaml");
        Files.writeString(facts, Files.readString(facts) + """
                time-zone: America/New_York
                mail: desk@lanterncreek.example
                address: 2 Creek Road
                open:
                  - {days: [monday, tuesday, wednesday, thursday, friday], opens: "08:00", closes: "18:00"}
                  - {days: [saturday], opens: "09:00", closes: "12:00"}
                closed-on: [2026-07-03]
                frost-months: [november, december, january, february, march]
                """);
    }

    private int mail(String rows, String... words) throws IOException {
        Path file = folder.resolve("bookings.csv");
        Files.writeString(file, rows);
        List<String> all = new ArrayList<>(List.of("mail", file.toString(), "--fleet", fleet.toString()));
        all.addAll(List.of(words));
        if (!all.contains("--out")) {
            all.addAll(List.of("--out", out.toString()));
        }
        StringWriter text = new StringWriter();
        PrintWriter writer = new PrintWriter(text, true);
        int exit = Folders.run(writer, writer, all.toArray(String[]::new));
        said = text.toString();
        return exit;
    }

    private List<String> written() throws IOException {
        if (!Files.exists(out)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(out)) {
            return files.map(it -> it.getFileName().toString()).sorted().toList();
        }
    }

    /** What another reader finds in a file of mail. */
    private record Mail(Message head, String text, String html, List<Entity> files) {
        static Mail read(Path file) throws IOException {
            DefaultMessageBuilder reader = new DefaultMessageBuilder();
            reader.setMimeEntityConfig(MimeConfig.STRICT);
            try (InputStream bytes = Files.newInputStream(file)) {
                Message message = reader.parseMessage(bytes);
                assertThat(message.getMimeType()).isEqualTo("multipart/mixed");
                List<Entity> parts = ((Multipart) message.getBody()).getBodyParts();
                assertThat(parts.get(0).getMimeType()).isEqualTo("multipart/alternative");
                List<Entity> both = ((Multipart) parts.get(0).getBody()).getBodyParts();
                assertThat(both).extracting(Entity::getMimeType).containsExactly("text/plain", "text/html");
                return new Mail(message, body(both.get(0)), body(both.get(1)), parts.subList(1, parts.size()));
            }
        }

        static String body(Entity part) throws IOException {
            return new String(((TextBody) part.getBody()).getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void eachMessageIsReadBackAndItsLinksResolve() throws Exception {
        assertThat(SmallFleet.publish(fleet, folder.resolve("site"))).isZero();
        // A Saturday afternoon: nobody is there.
        int exit = mail(
                HEAD + "B-1,knot,2026-06-06 14:00,2026-06-12 10:00,4,15 A,en,first,,Canary Smith\n",
                "--every",
                "--as-of",
                "2026-05-20");

        assertThat(said).contains("5 messages written");
        assertThat(exit).isZero();
        assertThat(written())
                .containsExactly(
                        "B-1.after-hours.eml",
                        "B-1.confirmation.eml",
                        "B-1.day-before-return.eml",
                        "B-1.day-before.eml",
                        "B-1.week-before.eml");
        HtmlFaults faults = new HtmlFaults();
        for (String name : written()) {
            Path file = out.resolve(name);
            Mail mail = Mail.read(file);
            assertThat(mail.head().getSubject()).contains("B-1").contains("Knot");
            assertThat(mail.head().getFrom().get(0).getAddress()).isEqualTo("desk@lanterncreek.example");
            assertThat(mail.head().getTo()).isNull();
            assertThat(Files.readString(file)).doesNotContain("Canary");
            survives(mail.html());
            faults.check(name, mail.html().getBytes(StandardCharsets.UTF_8));
            Document html = Jsoup.parse(mail.html());
            TreeSet<String> links = new TreeSet<>(html.select("a[href^=https]").eachAttr("href"));
            assertThat(links).isEqualTo(linksOf(mail.text())).isNotEmpty();
            for (String link : links) {
                String path = link.substring(BASE.length());
                assertThat(folder.resolve("site/web/" + (path.endsWith("/") ? path + "index.html" : path)))
                        .as(name + " " + link)
                        .exists();
            }
            for (Element phone : html.select("a[href^=tel:]")) {
                assertThat(phone.attr("href")).isEqualTo("tel:" + phone.text().replaceAll("[^0-9+]", ""));
                assertThat(mail.text()).contains(phone.text());
            }
            assertThat(mail.text().lines().filter(line -> !line.startsWith("https://")))
                    .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(78));
        }
        assertThat(faults.told()).isEmpty();
        // Not the moment that it was written, but that when it is due.
        assertThat(Mail.read(out.resolve("B-1.week-before.eml"))
                        .head()
                        .getDate()
                        .toInstant())
                .isEqualTo(LocalDateTime.of(2026, 5, 30, 9, 0).atZone(ZONE).toInstant());
    }

    /** What old mail programs cut off or leave out is not in it. */
    private static void survives(String html) {
        assertThat(html.getBytes(StandardCharsets.UTF_8).length).isLessThan(102 * 1024);
        Document mail = Jsoup.parse(html);
        assertThat(mail.select("script, style, link, img, svg, video, picture, form, iframe"))
                .isEmpty();
        assertThat(mail.select("[class], [id]")).isEmpty();
        assertThat(mail.select("table"))
                .hasSize(1)
                .first()
                .matches(it -> it.attr("style").contains("width:600px"));
        assertThat(mail.select("[style]").eachAttr("style"))
                .allSatisfy(style ->
                        assertThat(style).doesNotContain("flex", "grid", "position", "var(", "calc(", "float"));
        assertThat(mail.select("a").eachAttr("href"))
                .allSatisfy(it -> assertThat(it).doesNotContain("#"));
    }

    private static TreeSet<String> linksOf(String text) {
        TreeSet<String> links = new TreeSet<>();
        text.lines().filter(line -> line.startsWith("https://")).forEach(links::add);
        return links;
    }

    @Test
    void calendarAndCardAreReadBack() throws Exception {
        mail(HEAD + "B-1,knot,2026-10-31 15:00,2026-11-02 10:00,2,,,,,\n", "--every", "--as-of", "2026-05-20");

        Mail mail = Mail.read(out.resolve("B-1.confirmation.eml"));
        assertThat(mail.files()).extracting(Entity::getFilename).containsExactly("booking.ics", "desk.vcf");
        String ics = Mail.body(mail.files().get(0));
        assertThat(ics.split("\r\n", -1))
                .allSatisfy(line ->
                        assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
        assertThat(ics.replace("\r\n", "")).doesNotContain("\n");
        Calendar calendar = new CalendarBuilder().build(new StringReader(ics));
        calendar.validate();
        List<VEvent> events = calendar.getComponents("VEVENT");
        assertThat(events)
                .extracting(it -> it.getSummary().orElseThrow().getValue())
                .containsExactly("Pickup of Knot", "Return of Knot");
        assertThat(events)
                .extracting(it -> it.getUid().orElseThrow().getValue())
                .containsExactly("B-1-pickup@books.lanterncreek.example", "B-1-return@books.lanterncreek.example");
        // Between the two the clocks go back.
        assertThat(begins(events.get(0))).isEqualTo(Instant.parse("2026-10-31T19:00:00Z"));
        assertThat(begins(events.get(1))).isEqualTo(Instant.parse("2026-11-02T15:00:00Z"));

        ezvcard.VCard card =
                ezvcard.Ezvcard.parse(Mail.body(mail.files().get(1))).first();
        assertThat(card.validate(ezvcard.VCardVersion.V4_0).isEmpty()).isTrue();
        assertThat(card.getFormattedName().getValue()).isEqualTo("Lantern Creek Vans");
        assertThat(card.getTelephoneNumbers()).extracting(it -> it.getText()).contains("+1 555-0110", "+1 555-0130");
    }

    private static Instant begins(VEvent event) {
        Object start = event.getDateTimeStart().orElseThrow().getDate();
        return start instanceof OffsetDateTime at
                ? at.toInstant()
                : Instant.from((java.time.temporal.TemporalAccessor) start);
    }

    @Test
    void eachIsWrittenInTheLanguageOfItsRenterWhereTheThemeHasIt() throws Exception {
        Path words = Files.createDirectories(fleet.resolve("themes/harbor")).resolve("words-de.properties");
        Files.writeString(
                words,
                "mail.confirmation.subject = Buchung {booking}: {coach}\n"
                        + "mail.confirmation.opening = Sie haben {coach} gebucht, f\u00fcr sich.\n");
        mail(
                HEAD + "B-1,knot,2026-06-05 10:00,2026-06-12 10:00,,,de,,,\n"
                        + "B-2,knot,2026-06-05 10:00,2026-06-12 10:00,,,fr,,,\n",
                "--as-of",
                "2026-05-20");

        Mail german = Mail.read(out.resolve("B-1.confirmation.eml"));
        assertThat(german.head().getSubject()).isEqualTo("Buchung B-1: Knot");
        assertThat(german.text()).startsWith("Sie haben Knot gebucht, f\u00fcr sich.");
        assertThat(Jsoup.parse(german.html()).select("html").attr("lang")).startsWith("de");
        assertThat(Mail.read(out.resolve("B-2.confirmation.eml")).head().getSubject())
                .isEqualTo("Booking B-2: Knot, from June 5, 2026");
    }

    @Test
    void theSameBookingGivesTheSameBytes() throws Exception {
        String row = HEAD + "B-1,knot,2026-06-06 14:00,2026-06-12 10:00,4,,,,,\n";
        mail(row, "--every", "--as-of", "2026-05-20");
        byte[] first = Files.readAllBytes(out.resolve("B-1.confirmation.eml"));
        mail(row, "--every", "--as-of", "2026-05-20");

        assertThat(Files.readAllBytes(out.resolve("B-1.confirmation.eml"))).isEqualTo(first);
    }

    @ParameterizedTest(name = "pickup {0}, return {1}: {2}")
    @CsvSource({
        "2026-06-05 17:59, 2026-06-12 10:00, staffed, staffed",
        "2026-06-05 18:00, 2026-06-12 10:00, nobody, staffed", // exactly at closing
        "2026-06-05 08:00, 2026-06-12 07:59, staffed, nobody",
        "2026-06-06 00:00, 2026-06-12 10:00, nobody, staffed", // midnight
        "2026-06-06 11:59, 2026-06-13 12:00, staffed, nobody", // a Saturday
        "2026-07-03 12:00, 2026-07-06 12:00, nobody, staffed", // a Friday on which nobody works
        "2026-06-07 12:00, 2026-06-14 12:00, nobody, nobody", // a Sunday
    })
    void whetherSomebodyIsThereIsToldByTheHours(String pickup, String back, String at, String then) throws IOException {
        mail(HEAD + "B-1,knot," + pickup + "," + back + ",,,,,,\n", "--every", "--dry-run", "--as-of", "2026-05-20");

        assertThat(said.contains("after-hours  " + pickup.substring(0, 10))).isEqualTo(at.equals("nobody"));
        assertThat(said.contains("nobody is there at the return, and `knot` has no page"))
                .isEqualTo(then.equals("nobody"));
        assertThat(said.contains("somebody is there at the return")).isEqualTo(then.equals("staffed"));
        assertThat(written()).isEmpty();
    }

    @Test
    void whatMayNotBeHandedOverWithNobodyThereIsTold() throws IOException {
        Path unit = fleet.resolve("units/knot/unit.yaml");
        String filler = "  - {id: fill, name: Water filler, roles: [fresh-fill-port], what: drinking water, side: left,"
                + " from-front: 9 ft, access: free}\n";
        Files.writeString(
                unit,
                Files.readString(unit).replace("\nconnections:\n", "\nconnections:\n" + filler)
                        + "\nhire: {after-hours-pickup: no}\n");
        mail(HEAD + "B-1,knot,2026-06-06 14:00,2026-06-12 10:00,,,,,,\n", "--every", "--as-of", "2026-05-20");

        assertThat(said)
                .contains("warning: nobody is there at the pickup, and `knot` is handed over by somebody alone");
        assertThat(written()).isNotEmpty().doesNotContain("B-1.after-hours.eml");
    }

    @Test
    void inANightOfSpringAnHourIsLeftOut() throws IOException {
        int exit = mail(
                HEAD + "B-1,knot,2027-03-14 02:30,2027-03-20 10:00,,,,,,\n"
                        + "B-2,knot,2027-03-13 14:00,2027-03-14 03:00,,,,,,\n",
                "--every",
                "--as-of",
                "2026-05-20");

        assertThat(said)
                .contains(
                        "bookings.csv:2:1: error: `pickup` is 2027-03-14 02:30, a time that the clocks of America/New_York leave out");
        assertThat(exit).isEqualTo(1);
        assertThat(written()).isNotEmpty().allMatch(name -> name.startsWith("B-2."));
    }

    @Test
    void linksAreChosenByTheBooking() throws IOException {
        mail(
                HEAD + "B-1,knot,2026-12-05 10:00,2026-12-12 10:00,,,,first,,\n"
                        + "B-2,knot,2026-06-05 10:00,2026-06-12 10:00,,,,repeat,,\n",
                "--every",
                "--dry-run",
                "--as-of",
                "2026-05-20");

        String winter = said.substring(said.indexOf("B-1  knot  week-before"), said.indexOf("B-2  knot  confirmation"));
        String summer = said.substring(said.indexOf("B-2  knot  week-before"));
        assertThat(winter).contains("has not been on a coach before");
        assertThat(summer).doesNotContain("it may freeze then").doesNotContain("has not been");
    }

    @Test
    void onTheDayOnlyWhatIsDueIsWritten() throws IOException {
        String row = HEAD + "B-1,knot,2026-06-05 10:00,2026-06-12 10:00,,,,,1,\n";
        mail(row, "--as-of", "2026-05-29");
        assertThat(written()).containsExactly("B-1.week-before.eml");
        mail(
                row,
                "--as-of",
                "2026-06-04",
                "--since",
                "2026-06-01",
                "--out",
                folder.resolve("second").toString());
        assertThat(said).contains("1 message written");
        // Who books late gets at once what others had before.
        mail(row.replace(",1,\n", ",,\n"), "--as-of", "2026-06-02", "--dry-run");
        assertThat(said)
                .contains("confirmation  2026-06-02", "week-before  2026-05-29")
                .doesNotContain("day-before");
    }

    @Test
    void eachBadRowIsToldAndTheOthersAreWritten() throws IOException {
        int exit = mail(
                "\uFEFF" + HEAD.replace(',', ';')
                        + "B-1;knot;2026-06-05 10:00;2026-06-12 10:00;;\"15 A, none\";;;;\"two\nlines\"\n"
                        + "B-2;knto;2026-06-05 10:00;2026-06-12 10:00;;;;;;\n"
                        + "B-3;knot;2026-02-30 10:00;2026-06-12 10:00;;;;;;\n"
                        + "B-4;knot;2026-06-12 10:00;2026-06-05 10:00;;;;;;\n"
                        + "B-1;knot;2026-06-05 10:00;2026-06-12 10:00;;;;;;\n"
                        + "\"B-5\r\nBcc: all@example.org\";knot;2026-06-05 10:00;2026-06-12 10:00;;;;;;\n"
                        + "=HYPERLINK(1)/..;knot;2026-06-05 10:00;2026-06-12 10:00;;lots;;repaet;;\n",
                "--as-of",
                "2026-05-29");

        assertThat(exit).isEqualTo(1);
        assertThat(said)
                .contains("bookings.csv:4:1: error: there is no coach `knto`", "did you mean `knot`?")
                .contains("bookings.csv:5:1: error: `pickup` is `2026-02-30 10:00`")
                .contains("bookings.csv:6:1: error: the return")
                .contains("bookings.csv:7:1: error: booking `B-1` is there already, in line 2")
                .contains("bookings.csv:8:1: error: `booking` is no number of one")
                .contains("bookings.csv:10:1: warning: `supply` is not told in amps", "did you mean `repeat`?");
        assertThat(written())
                .hasSize(4)
                .contains("B-1.confirmation.eml", "B-1.week-before.eml")
                .filteredOn(name -> name.startsWith("_HYPERLINK_1__.."))
                .hasSize(2);
        for (String name : written()) {
            assertThat(Files.readString(out.resolve(name))).doesNotContain("Bcc:");
        }
    }

    @Test
    void nothingOfABookingIsWrittenIntoWhatIsPublished() throws IOException {
        assertThat(SmallFleet.publish(fleet, folder.resolve("site"))).isZero();
        for (Path there :
                List.of(folder.resolve("site/web/mail"), folder.resolve("site"), fleet.resolve("units/mail"))) {
            int exit = mail(HEAD + "B-1,knot,2026-06-05 10:00,2026-06-12 10:00,,,,,,\n", "--out", there.toString());

            assertThat(exit).isEqualTo(2);
            assertThat(said).contains("that is published, or a part of the fleet");
        }
        assertThat(mail("booking,pickup,return\nB-1,2026-06-05 10:00,2026-06-12 10:00\n", "--as-of", "2026-05-29"))
                .isEqualTo(1);
        assertThat(said).contains("bookings.csv:1:1: error: the column `coach` is missing");
    }

    @Test
    void whatCannotBeWrittenIsOneSentence() throws IOException {
        Files.writeString(out, "a file where the folder would be");
        int exit = mail(HEAD + "B-1,knot,2026-06-05 10:00,2026-06-12 10:00,,,,,,\n", "--as-of", "2026-05-29");

        assertThat(exit).isNotZero();
        assertThat(said).contains(out.toString()).doesNotContain("taken apart").doesNotContain("\tat ");
        assertThat(said.strip().lines()).hasSize(1);
    }

    @Test
    void somebodyWhoHasBeenOnACoachIsToldWhatHasChanged() throws IOException {
        StringWriter text = new StringWriter();
        PrintWriter writer = new PrintWriter(text, true);
        assertThat(Folders.run(
                        writer,
                        writer,
                        "issue",
                        "knot",
                        "--note",
                        "As bought",
                        "--date",
                        "2026-05-02",
                        "--fleet",
                        fleet.toString()))
                .as(text.toString())
                .isZero();
        mail(
                HEAD + "B-1,knot,2026-06-05 10:00,2026-06-12 10:00,,,,repeat,,\n",
                "--every",
                "--dry-run",
                "--as-of",
                "2026-05-20");

        assertThat(said)
                .containsPattern(
                        "What has changed +has been on a coach before|What is new +has been on a coach before");
    }

    @Test
    void theNumberOfABookingMakesNoOtherHeader() throws IOException {
        bayfolio.render.mail.Letter letter = new bayfolio.render.mail.Letter(
                "x",
                Optional.empty(),
                "Desk\r\nBcc: all@example.org",
                Instant.EPOCH,
                "en",
                "Booking\r\nBcc: all@example.org",
                List.of("Hello"),
                List.of(),
                List.of(),
                List.of());
        byte[] mail = bayfolio.render.mail.MailFile.of(letter, new bayfolio.render.mail.LetterForm(theme()));

        DefaultMessageBuilder reader = new DefaultMessageBuilder();
        reader.setMimeEntityConfig(MimeConfig.STRICT);
        Message read = reader.parseMessage(new ByteArrayInputStream(mail));
        assertThat(read.getBcc()).isNull();
        assertThat(read.getSubject()).isEqualTo("Booking Bcc: all@example.org");
    }

    private static bayfolio.render.theme.Theme theme() throws IOException {
        try {
            return bayfolio.render.theme.Theme.load(Path.of(""), bayfolio.render.theme.Theme.BUILT_IN);
        } catch (bayfolio.render.theme.UnknownThemeException e) {
            throw new IllegalStateException(e);
        }
    }
}
