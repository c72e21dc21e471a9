package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.measure.Liters;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** What is published agrees with facts that others have published; each row of the table names its source and status. */
final class PublishedFactsTest {
    private static final double GALLON = 3.785411784;

    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(resources = "/bayfolio/library/published-facts.csv", numLinesToSkip = 1, maxCharsPerColumn = 400)
    void pagesSayWhatIsKnown(String fact, String page, String says, String source, String status) throws Exception {
        assertThat(source).isNotBlank();
        assertThat(status).isNotBlank();
        assertThat(text(page)).as(fact + " (" + source + ", " + status + ")").containsPattern(Pattern.compile(says));
    }

    /**
     * The dose of a state health authority, 50 mg/L, worked out for each tank by another way: from its own recipe, 1.5 fl
     * oz of 8.25 % in 5 gal for 200 mg/L (verified, agency), by proportion.
     */
    @Test
    void doseOfBleachIsThatOfTheAuthority() throws Exception {
        for (Unit unit : FleetReader.read(Folders.at(Path.of(""))).fleet().units()) {
            double tank = unit.tanks().stream()
                    .filter(it -> it.contents() == Tank.Contents.FRESH)
                    .mapToDouble(it -> it.facts().get(Tank.CAPACITY).value())
                    .findFirst()
                    .orElseThrow();
            double expected = 1.5 * GALLON / 128 / 4 * tank / (5 * GALLON);
            Matcher strong = Pattern.compile("or ([^,]*?) of 8\\.25 % bleach")
                    .matcher(text("staff:" + unit.id() + "/do/sanitize-fresh-water.html"));

            assertThat(strong.find()).as(unit.id()).isTrue();
            assertThat(liters(strong.group(1))).as(unit.id()).isBetween(expected * 0.93, expected * 1.07);
        }
    }

    private static double liters(String printed) throws Exception {
        Matcher metric = Pattern.compile("([\\d.]+)[ \u00A0](mL|L)\\b").matcher(printed);
        assertThat(metric.find()).as(printed).isTrue();
        return Liters.SCALE.parse(metric.group(1) + " " + metric.group(2)).value();
    }

    /** House batteries run slides, jacks and 12 V things; no text says that they crank the engine by themselves. */
    @Test
    void noTextSaysThatTheHouseBatteryCranksTheEngine() {
        List<String> said = DemoFleet.files(DemoFleet.web()).entrySet().stream()
                .filter(file -> file.getKey().endsWith(".html"))
                // What stands in one place: two titles in a row are no sentence.
                .flatMap(file -> Jsoup.parse(new String(file.getValue(), java.nio.charset.StandardCharsets.UTF_8))
                        .select("title, h1, h2, h3, h4, p, li, td, th, dt, dd, summary, figcaption, a")
                        .eachText()
                        .stream())
                .filter(text -> Pattern.compile(
                                "house batter(?:y|ies) (?:also )?(?:starts?|cranks?) the engine",
                                Pattern.CASE_INSENSITIVE)
                        .matcher(text)
                        .find())
                .toList();

        assertThat(said).isEmpty();
    }

    private static String text(String page) throws Exception {
        Path file = page.startsWith("staff:")
                ? DemoFleet.web().resolveSibling("staff").resolve(page.substring("staff:".length()))
                : DemoFleet.web().resolve(page);
        Element main = DemoFleet.whole(file).selectFirst("main");
        assertThat(main).isNotNull();
        return main.text();
    }
}
