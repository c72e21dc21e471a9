package bayfolio.bookings;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.finding.Finding;
import bayfolio.finding.Findings;
import bayfolio.finding.TextReport;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bookings as other programs give them out, and all that may be wrong with them. */
final class BookingsTest {
    private static final String HEAD = "booking,coach,pickup,return,people,supply,language,trip,edition sent\n";
    private static final String GOOD = "B-1,knot,2026-05-02 15:00,2026-05-09 10:00,4,30 A,de,To the sea,2\n";

    @TempDir
    private Path folder;

    private final List<Booking> read = new ArrayList<>();

    /** What was told. */
    private String told(byte[] bytes) throws IOException {
        Path file = folder.resolve("bookings.csv");
        Files.write(file, bytes);
        List<Finding> findings = new ArrayList<>();
        read.clear();
        Bookings.read(file, List.of("knot", "plover"), Set.of(Column.EDITION_SENT), read::add, findings::add);
        return TextReport.of(Findings.of(findings), false)
                .replace(folder.toString().replace('\\', '/') + "/", "");
    }

    private String told(String text) throws IOException {
        return told(text.getBytes(StandardCharsets.UTF_8));
    }

    private List<String> ids() {
        return read.stream().map(Booking::id).toList();
    }

    @Test
    void aRowIsABooking() throws IOException {
        assertThat(told(HEAD + GOOD)).isEmpty();
        Booking booking = read.get(0);
        assertThat(booking.coach()).isEqualTo("knot");
        assertThat(booking.pickup()).hasToString("2026-05-02T15:00");
        assertThat(booking.back()).hasToString("2026-05-09T10:00");
        assertThat(booking.people()).hasValue(4);
        assertThat(booking.language()).contains("de");
        assertThat(booking.edition()).hasValue(2);
        assertThat(booking.at().line()).isEqualTo(2);
    }

    @Test
    void theOrderOfColumnsAndTheSeparatorAreFree() throws IOException {
        String text = "\uFEFFRenter;Return;Edition sent;Pickup;Coach;Booking\r\n"
                + "\"Doe, J.\";2026-05-09 10:00;;2026-05-02 15:00;plover;7\r\n";

        assertThat(told(text)).isEmpty();
        assertThat(ids()).containsExactly("7");
        assertThat(read.get(0).edition()).isEmpty();
        assertThat(read.get(0).people()).isEmpty();
    }

    @Test
    void lineBreaksWithinQuotesAreCounted() throws IOException {
        String told = told(HEAD
                + "B-1,knot,2026-05-02 15:00,2026-05-09 10:00,4,,,\"To the sea,\nthen \"\"home\"\"\r\nagain\",2\n"
                + "\n"
                + "B-2,knot,2026-06-31 15:00,2026-07-09 10:00,4,,,\"a\nb\",2\n"
                + "B-3,knot,2026-07-02 15:00,2026-07-09 10:00,4,,,,2\n"
                + "B-4,knot,then,2026-07-09 10:00,4,,,,2");

        assertThat(told)
                .contains(
                        "bookings.csv:6:1: error: `pickup` is `2026-06-31 15:00`, which is no day and time [booking-unreadable]")
                .contains("bookings.csv:9:1: error: `pickup` is `then`");
        assertThat(ids()).containsExactly("B-1", "B-3");
        assertThat(read.get(0).trip()).startsWith("To the sea,\nthen \"home\"");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "B-2,knot,2026-02-30 15:00,2026-05-09 10:00,,,,,|`pickup` is `2026-02-30 15:00`, which is no day and time",
                "B-2,knot,2026-05-02,2026-05-09 10:00,,,,,|`pickup` is `2026-05-02`, which is no day and time",
                "B-2,knot,2026-05-02 25:00,2026-05-09 10:00,,,,,|`pickup` is `2026-05-02 25:00`",
                "B-2,knot,,2026-05-09 10:00,,,,,|`pickup` is empty",
                "B-2,knot,2026-05-02 15:00,2026-05-02 14:00,,,,,|the return, 2026-05-02 14:00, is not after the pickup",
                "B-2,knto,2026-05-02 15:00,2026-05-09 10:00,,,,,|there is no coach `knto`",
                "B-2,knto,2026-05-02 15:00,2026-05-09 10:00,,,,,|help: did you mean `knot`?",
                "B-1,knot,2026-06-02 15:00,2026-06-09 10:00,,,,,|booking `B-1` is there already, in line 2",
                "' ,knot,2026-05-02 15:00,2026-05-09 10:00,,,,,'|`booking` is empty",
                "B-2,knot,2026-05-02 15:00|the row has 3 columns, and the first line 9 or more",
                "B-2,knot,2026-05-02 15:00,2026-05-09 10:00,none,,,,|`people` is `none`",
                "B-2,knot,2026-05-02 15:00,2026-05-09 10:00,0,,,,|`people` is `0`",
                "B-2,knot,2026-05-02 15:00,2026-05-09 10:00,,,German,,|`language` is `German`",
                "B-2,knot,2026-05-02 15:00,2026-05-09 10:00,,,,,last|`edition sent` is `last`"
            })
    void aBadRowIsToldAndTheOthersCount(String row, String finding) throws IOException {
        String told = told(HEAD + GOOD + row + "\n" + GOOD.replace("B-1", "B-3"));

        assertThat(told).startsWith("bookings.csv:3:1: error: ").contains(finding);
        assertThat(ids()).containsExactly("B-1", "B-3");
    }

    @Test
    void aBadFileIsTold() throws IOException {
        assertThat(told("")).contains("bookings.csv:1:1: error: the file is empty");
        assertThat(told("booking,coach,pickupp,return\nB-1,knot,a,b\n"))
                .contains("bookings.csv:1:1: error: the column `pickup` is missing", "did you mean `pickupp`?")
                .contains("the column `edition sent` is missing");
        assertThat(ids()).isEmpty();
        assertThat(told(HEAD.replace("trip", "coach") + GOOD)).contains("the column `coach` is there twice");
        assertThat(told(HEAD + GOOD + "B-2,knot,\"2026-05-02 15:00,2026-05-09 10:00\n"))
                .contains("bookings.csv:3:1: error: from this row on the file cannot be taken apart");
        assertThat(ids()).containsExactly("B-1");
        assertThat(told(new byte[] {'b', ',', (byte) 0xFF, '\n'})).contains("error: the file is no UTF-8 text");
    }

    @Test
    void noNameIsTold() throws IOException {
        assertThat(told("renter," + HEAD + "Jane Doe," + GOOD.replace("05-02", "13-02")))
                .contains("error:")
                .doesNotContain("Jane");
    }
}
