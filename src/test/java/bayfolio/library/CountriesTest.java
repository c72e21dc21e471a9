package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.model.Coach;
import bayfolio.model.Country;
import bayfolio.model.EmergencyNumber;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.read.Overlay;
import bayfolio.source.Located;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the law and public bodies of countries say, as renters are told it. */
final class CountriesTest {
    private static final Fleet FLEET = FleetReader.read(Folders.at(Path.of(""))).fleet();

    /** Each seen on a page of the public body that answers the call, or of the one that rules it. */
    @ParameterizedTest
    @CsvSource({
        "us, 911",
        "ca, 911",
        "gb, 999 112",
        "ie, 112 999",
        "at, 112 122 133 144",
        "de, 112 110",
        "es, 112",
        "it, 112",
        "nl, 112",
        "ch, 112 118 144",
        "no, 110 112 113",
        "se, 112",
        "au, 000",
        "nz, 111"
    })
    void emergencyNumbersAreThoseThatAreAnswered(String country, String numbers) {
        assertThat(country(country).emergency())
                .extracting(EmergencyNumber::number)
                .containsExactly(numbers.split(" "));
    }

    /** Norway, Austria: who dials a wrong one loses time, so each says whom it reaches. */
    @Test
    void numbersThatReachDifferentServicesAllSayWhich() {
        assertThat(country("no").emergency())
                .extracting(EmergencyNumber::number, number -> number.reaches().orElse(""))
                .containsExactly(tuple("110", "fire"), tuple("112", "police"), tuple("113", "ambulance"));
        for (Country country : FLEET.countries()) {
            assertThat(country.emergency().size() == 1
                            || country.emergency().stream()
                                    .allMatch(number -> number.reaches().isPresent()))
                    .as(country.id())
                    .isTrue();
        }
    }

    /** The plug says nothing: a coach built for 120 V may be hired out anywhere. */
    @ParameterizedTest
    @CsvSource({"dunlin, nz, 111", "dunlin, no, 110 112 113", "turnstone, us, 911"})
    void whereACoachIsHiredOutDecidesAndNotItsPlug(String unit, String country, String numbers) throws Exception {
        Overlay overlay = new Overlay(Folders.at(Path.of("")));
        overlay.fleet(file("units/fleet.yaml"), Optional.empty());
        overlay.coach(file("units/" + unit + "/unit.yaml"), Optional.of(new SourceFile("test", "country: " + country)));
        FleetReader.Reading reading = overlay.read();

        assertThat(reading.findings()).isEmpty();
        assertThat(new Coach(reading.fleet(), reading.fleet().units().get(0))
                        .country()
                        .orElseThrow()
                        .emergency())
                .extracting(EmergencyNumber::number)
                .containsExactly(numbers.split(" "));
    }

    private static SourceFile file(String path) throws IOException {
        return new SourceFile(path, Files.readString(Path.of(path)));
    }

    /** Nothing about a country is told from memory: what nobody has read is for staff. */
    @Test
    void everyValueOfACountryThatRentersReadNamesWhatWasRead() {
        assertThat(FLEET.countries()).hasSize(15);
        for (Country country : FLEET.countries()) {
            assertThat(country.facts().has(Country.CHECKED_ON)).as(country.id()).isTrue();
            assertThat(records(country.facts().forRenters()))
                    .noneMatch(
                            record -> record.find("from-memory", Boolean.class).orElse(false));
            assertThat(records(country.facts()))
                    .isNotEmpty()
                    .filteredOn(
                            record -> !record.find("from-memory", Boolean.class).orElse(false))
                    .allSatisfy(record -> assertThat(record.find("source", String.class))
                            .as("%s at %s", record.shape(), record.at())
                            .isPresent());
        }
    }

    private static List<Facts> records(Facts facts) {
        List<Facts> records = new ArrayList<>();
        facts.each((key, value) -> {
            List<?> values = value.value() instanceof List<?> list
                    ? list.stream().map(it -> ((Located<?>) it).value()).toList()
                    : List.of(value.value());
            values.stream().filter(Described.class::isInstance).forEach(it -> records.add(((Described) it).facts()));
        });
        return records;
    }

    /** On every page of both copies, whatever says it: the number of that country, to be tapped, and no other's. */
    @Test
    void emergencyNumbersArePrintedAsLinksOnlyAndOnlyThoseOfTheCountry() {
        Set<String> all = FLEET.countries().stream()
                .flatMap(country -> country.emergency().stream())
                .map(EmergencyNumber::number)
                .collect(Collectors.toCollection(TreeSet::new));
        Pattern typed = Pattern.compile(
                "(?i)\\b(?:call|phone|dial)\\b[^.!?]*(?<![\\d.,/-])(?:" + String.join("|", all) + ")(?![\\d/-])");
        for (Unit unit : FLEET.units()) {
            Coach coach = new Coach(FLEET, unit);
            Set<String> own = Stream.concat(coach.country().stream(), coach.abroad().stream())
                    .flatMap(country -> country.emergency().stream())
                    .map(number -> "tel:" + number.number())
                    .collect(Collectors.toSet());
            int links = 0;
            for (Map.Entry<String, Document> page : pages(unit.id()).entrySet()) {
                List<String> dialed = page.getValue().select("a[href^=tel:]").stream()
                        .map(link -> link.attr("href"))
                        .filter(href -> href.length() == "tel:".length() + 3)
                        .toList();
                assertThat(own).as(page.getKey()).containsAll(dialed);
                links += dialed.size();
                page.getValue().select("a").remove();
                assertThat(page.getValue().text()).as(page.getKey()).doesNotContainPattern(typed);
            }
            assertThat(links).as(unit.id()).isGreaterThan(15);
        }
    }

    @Test
    void everyEmergencyPageThatSaysPhoneHasTheNumberToTap() {
        for (Unit unit : FLEET.units()) {
            Map<String, Document> pages = pages(unit.id());
            for (String page : List.of(
                    "call-emergency-services",
                    "escape-fire",
                    "respond-co-alarm",
                    "respond-crash",
                    "respond-electric-shock",
                    "shelter-from-storm")) {
                assertThat(pages.get("web/" + unit.id() + "/do/" + page + ".html")
                                .select("main a[href^=tel:]")
                                .eachAttr("href"))
                        .as(unit.id() + " " + page)
                        .anyMatch(href -> href.length() == "tel:".length() + 3);
            }
        }
    }

    /** A border is crossed in a day, and in danger nobody looks up another page. */
    @Test
    void whereACoachMayBeTakenAbroadEveryNumberIsOnThePagesForDanger() {
        for (String page : List.of("call-emergency-services", "escape-fire", "respond-crash")) {
            assertThat(text("redpoll", "web", "do/" + page))
                    .contains("112 (any help), 122 (fire), 133 (police) or 144 (ambulance); in Italy and France 112");
            assertThat(text("turnstone", "web", "do/" + page)).doesNotContain("; in ");
        }
        assertThat(text("redpoll", "web", "index")).contains("Emergency in Italy and France: 112");
    }

    /** Once at its head is enough for a card. */
    @Test
    void aCardNamesTheNumbersOfOtherCountriesOnce() {
        assertThat(text("redpoll", "web", "night-card"))
                .containsOnlyOnce("in Italy")
                .contains("Phone 112 (any help), 122 (fire), 133 (police) or 144 (ambulance). Never go back in.");
    }

    @Test
    void aPageForEachCountryAbroadTellsWhatIsOtherwiseThereItsNumbersFirst() {
        assertThat(text("redpoll", "web", "country/it"))
                .contains("Local rules, signs and the people on the spot go first.")
                .containsSubsequence("Emergency", "112", "What is otherwise here", "Speed limits")
                .contains("On other roads: 90 km/h")
                .contains("Not above: 5 °C (41 °F). (as reported)")
                .as("three and a half tons, and no fixed tank")
                .doesNotContain("On other roads: 80 km/h")
                .doesNotContain("Filling the gas tank")
                .contains("The same as where you picked it up Side of the road");
        assertThat(text("redpoll", "web", "country/fr"))
                .contains("114 takes text, app, video and fax, day and night. (as reported, 2024)")
                .as("three and a half tons, six meters")
                .contains("Toll class 2")
                .doesNotContain("Toll class 3")
                .doesNotContain("leftmost");
        assertThat(pages("turnstone")).doesNotContainKey("web/turnstone/country/at.html");
    }

    /** Staff see what is only remembered, and that it is; renters never do. */
    @Test
    void whatIsOnlyRememberedIsForStaff() {
        assertThat(text("redpoll", "staff", "country/it"))
                .contains("From memory, not for renters: LP gas at a pump is called GPL.")
                .contains("Source: road code, article 142, as quoted");
        assertThat(text("redpoll", "web", "country/it")).doesNotContain("GPL").doesNotContain("article 142");
        List<String> remembered = FLEET.countries().stream()
                .flatMap(country -> records(country.facts()).stream())
                .filter(record -> record.find("from-memory", Boolean.class).orElse(false))
                .map(record -> record.find("rule", String.class).orElseThrow())
                .toList();
        assertThat(remembered).hasSizeGreaterThan(20);
        for (Unit unit : FLEET.units()) {
            pages(unit.id()).forEach((path, page) -> {
                if (path.startsWith("web/")) {
                    assertThat(remembered.stream().filter(page.text()::contains))
                            .as(path)
                            .isEmpty();
                }
            });
        }
    }

    private static String text(String unit, String reader, String page) {
        return Objects.requireNonNull(pages(unit).get(reader + "/" + unit + "/" + page + ".html"))
                .text();
    }

    private static Map<String, Document> pages(String unit) {
        Path out = DemoFleet.web().resolveSibling("");
        return DemoFleet.files(out).entrySet().stream()
                .filter(file -> file.getKey().matches("(web|staff)/" + unit + "/.*\\.html"))
                .collect(Collectors.toMap(
                        Map.Entry::getKey, file -> Jsoup.parse(new String(file.getValue(), StandardCharsets.UTF_8))));
    }

    private static Country country(String id) {
        return FLEET.countries().stream()
                .filter(country -> country.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
