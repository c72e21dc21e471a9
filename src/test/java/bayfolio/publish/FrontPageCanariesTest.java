package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Canaries;
import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.bookings.Booked;
import bayfolio.bookings.Booking;
import bayfolio.bookings.Bookings;
import bayfolio.bookings.Column;
import bayfolio.check.Check;
import bayfolio.finding.Findings;
import bayfolio.model.Country;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A word that stands nowhere else, in each column of the bookings and in each field for staff: on no page, in no data, in no PDF
 * of renters; and of a booking nothing but number, coach and time on the staff's first page, and nowhere else.
 */
final class FrontPageCanariesTest {
    private static final String STAFF = "quokkawort";
    private static final String NUMBER = "ZX-numbat";

    /** Each column that may be in the file, and some that others put there; coach and times are what they must be. */
    private static final Map<String, String> CELLS = new TreeMap<>(Map.of(
            "booking", NUMBER,
            "coach", "plover",
            "pickup", "2026-05-04 13:37",
            "return", "2026-06-07 03:59",
            "people", "90817",
            "supply", "canary-supply",
            "language", "qxz",
            "trip", "canary-trip"));

    private static final List<String> OTHERS =
            List.of("renter", "phone", "mail", "address", "born", "license", "card", "remarks");

    /** What may stand nowhere. */
    private static final Set<String> SECRET = Stream.concat(
                    Stream.of("90817", "canary-supply", "qxz", "canary-trip", "03:59", "2026-06-07", "June 7, 2026"),
                    OTHERS.stream().map(it -> "canary-" + it))
            .collect(Collectors.toSet());

    @TempDir
    private static Path folder;

    /** Words of each file by its path below both roots, with that path. */
    private static final Map<String, String> WORDS = new TreeMap<>();

    @BeforeAll
    static void publish() throws Exception {
        Path root = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path facts = root.resolve("units/fleet.yaml");
        Files.writeString(
                facts,
                Files.readString(facts) + "notices:\n  - {id: gate, text: " + STAFF
                        + " is shut., since: 2026-05-01, for: staff}\n");
        for (String photo : List.of(STAFF, "open")) {
            Path file = root.resolve("units/plover/photos/" + photo + ".jpg");
            Files.createDirectories(file.getParent());
            ImageIO.write(new BufferedImage(1200, 900, BufferedImage.TYPE_INT_RGB), "jpg", file.toFile());
        }
        Theme theme = Theme.load(root, Theme.BUILT_IN);
        FleetReader.Reading reading = FleetReader.read(Folders.at(root));
        List<Unit> units = reading.fleet().units().stream()
                .map(unit -> Canaries.in(unit, STAFF))
                .toList();
        Fleet read = reading.fleet();
        Fleet fleet = new Fleet(
                        new FleetFacts(Canaries.in(read.facts().facts(), STAFF)),
                        units,
                        read.shared()
                                .with(read.countries().stream()
                                        .map(country -> new Country(Canaries.in(country.facts(), STAFF)))
                                        .toList()))
                .asOf(LocalDate.of(2031, 7, 1));
        Check check = new Check(fleet, reading.library(), theme.catalogs(), Findings.of(List.of()), Map.of());
        Path out = folder.resolve("out");
        Publisher.publish(
                check,
                FleetState.of(root),
                theme,
                new Publisher.Wanted(
                        List.of("plover"),
                        List.of(),
                        Publisher.ways(),
                        Printing.USUAL,
                        Optional.of(new Booked(booked(), true)),
                        true,
                        true,
                        false,
                        coach -> {}),
                out);
        for (Map.Entry<String, String> file : BothRoots.of(out).entrySet()) {
            byte[] bytes = file.getValue().getBytes(StandardCharsets.ISO_8859_1);
            WORDS.put(file.getKey(), file.getKey() + "\n" + words(file.getKey(), bytes));
        }
        WORDS.put("ledger", Files.readString(root.resolve("units/addresses.ledger")));
    }

    private static List<Booking> booked() throws IOException {
        List<String> names = new ArrayList<>(CELLS.keySet());
        names.addAll(OTHERS);
        Path file = folder.resolve("bookings.csv");
        Files.writeString(
                file,
                String.join(",", names) + "\n"
                        + names.stream()
                                .map(name -> CELLS.getOrDefault(name, "canary-" + name))
                                .collect(Collectors.joining(","))
                        + "\n");
        List<Booking> booked = new ArrayList<>();
        Bookings.read(file, List.of("plover"), Set.<Column>of(), booked::add, finding -> {
            throw new AssertionError(finding.message());
        });
        // The day of the fleet is that of the words for staff.
        return booked.stream()
                .map(it -> new Booking(
                        it.id(),
                        it.coach(),
                        LocalDate.of(2031, 7, 1).atTime(13, 37),
                        it.back().withYear(2032),
                        it.people(),
                        it.supply(),
                        it.language(),
                        it.trip(),
                        it.edition(),
                        it.at()))
                .toList();
    }

    private static String words(String path, byte[] bytes) throws IOException {
        if (path.endsWith(".pdf")) {
            return PdfWords.of(bytes);
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        return path.endsWith(".html") ? text + "\n" + Jsoup.parse(text).text() : text;
    }

    /** Where a word stands, whatever is set around it and however it is cut into lines. */
    private static Set<String> with(String word) {
        return WORDS.entrySet().stream()
                .filter(file -> file.getValue()
                        .replaceAll("\\s+", " ")
                        .toLowerCase(java.util.Locale.ROOT)
                        .contains(word.toLowerCase(java.util.Locale.ROOT)))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void ofABookingNothingStandsButNumberCoachAndTimeOnTheStaffsFirstPage() {
        assertThat(with(NUMBER)).containsExactly("staff/index.html");
        assertThat(WORDS.get("staff/index.html")).contains("13:37, Plover, booking " + NUMBER);
        for (String secret : SECRET) {
            assertThat(with(secret)).as(secret).isEmpty();
        }
    }

    @Test
    void whatIsForStaffIsInNoFileOfRenters() {
        Set<String> found = with(STAFF);

        assertThat(found).noneMatch(path -> path.startsWith("web/"));
        assertThat(with("July 4, 2031")).noneMatch(path -> path.startsWith("web/"));
        // That it can be found is shown by what staff get.
        assertThat(found)
                .contains("staff/index.html", "staff/plover/service.html", "staff/plover/search.json")
                .anyMatch(path -> path.startsWith("staff/") && path.endsWith(".pdf"));
    }

    /** Of each kind of file there is one, so that nothing is left out unseen. */
    @Test
    void allKindsOfFilesAreLookedThrough() {
        assertThat(WORDS.keySet().stream()
                        .filter(path -> path.startsWith("web/"))
                        .map(path -> path.replaceFirst(".*[./]", "")))
                .contains("html", "json", "pdf", "js", "jpg", "_headers");
    }
}
