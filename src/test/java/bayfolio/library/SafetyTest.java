package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.fact.Key;
import bayfolio.measure.Kilopascals;
import bayfolio.model.Tires;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;

/** What renters read on the published pages cannot hurt them: nothing of a kind that once could have, on any page. */
final class SafetyTest {
    private static final Pattern UNPROTECTED = Pattern.compile(
            "(?<!\\b[Nn]ever )\\b(?:try|use|take|find|choose|go to|look for)\\b(?: \\w+){0,4} (?:outlet|one|post|socket)"
                    + "(?: \\w+){0,3} without\\b",
            Pattern.CASE_INSENSITIVE);

    private final List<Unit> units =
            FleetReader.read(new Folder(Path.of(""))).fleet().units();
    private final Map<String, Document> pages = pages();

    @Test
    void nobodyIsSentToAnOutletWithoutItsProtection() {
        assertThat(UNPROTECTED
                        .matcher("It trips: try one without. It trips easily.")
                        .find())
                .isTrue();
        assertThat(pages)
                .allSatisfy((path, page) -> assertThat(text(page)).as(path).doesNotContainPattern(UNPROTECTED));
    }

    @Test
    void whoseSupplyTripsAgainStopsAndUnplugsAndTellsTheSite() {
        for (Unit unit : units) {
            Element end = pages.get(unit.id() + "/trouble/supply-trips.html").selectFirst("#if-nothing-helped");

            assertThat(end).isNotNull();
            assertThat(end.text()).contains("Never go to an outlet without its protection", "Tell the site office");
            assertThat(end.select("a[href*=do/disconnect-]")).as(unit.id()).hasSize(1);
        }
    }

    /** Cold figures are said to be cold each time, since a tire is warm wherever there is a pump. */
    @Test
    void aTirePressureIsNeverToldWithoutItsBeingCold() {
        for (Unit unit : units) {
            List<String> told = new ArrayList<>();
            for (Key<Kilopascals> key : List.of(Tires.FRONT_PRESSURE, Tires.REAR_PRESSURE)) {
                String figure = unit.facts()
                        .find(Unit.TIRES)
                        .orElseThrow()
                        .facts()
                        .get(key)
                        .in(unit.region().first());
                pages.forEach((path, page) -> {
                    if (path.startsWith(unit.id() + "/do/") || path.startsWith(unit.id() + "/trouble/")) {
                        page.select("main li > p, main li:not(:has(p)), main p").stream()
                                .map(Element::text)
                                .filter(line -> line.contains(figure))
                                .forEach(told::add);
                    }
                });
            }

            assertThat(told)
                    .as(unit.id())
                    .hasSizeGreaterThan(1)
                    .allSatisfy(line -> assertThat(line).containsIgnoringCase("cold"));
        }
    }

    @Test
    void airIsNeverLetOutOfAWarmTire() {
        for (Unit unit : units) {
            assertThat(text(pages.get(unit.id() + "/trouble/tire-trouble.html")))
                    .contains("Never let air out of a warm tire", "read it again when it is cold")
                    .doesNotContain("truck stop");
        }
    }

    /** The pump and the windows before all else, and no flame is lit to prove that the gas is off. */
    @Test
    void fuelInTheDrinkingWaterIsMetByPumpOffAndWindowsOpenFirst() {
        for (Unit unit : units) {
            String steps = pages.get(unit.id() + "/do/deal-with-wrong-fuel.html")
                    .select("#steps")
                    .text();

            assertThat(steps)
                    .as(unit.id())
                    .containsSubsequence(
                            "Stop the nozzle",
                            "If fuel went into the drinking water",
                            "DANGER",
                            "Turn off the water pump",
                            "Open all windows",
                            "Leave the coach where it is");
            assertThat(pages.get(unit.id() + "/do/deal-with-wrong-fuel.html")
                            .select("#steps a[href*=close-gas-supply]"))
                    .as("a page on which a burner is lit")
                    .isEmpty();
        }
    }

    private static String text(Document page) {
        return page.select("main").text();
    }

    private static Map<String, Document> pages() {
        Map<String, Document> pages = new TreeMap<>();
        DemoFleet.files(DemoFleet.web()).forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                pages.put(path, Jsoup.parse(new String(bytes, StandardCharsets.UTF_8)));
            }
        });
        assertThat(pages).hasSizeGreaterThan(500);
        return pages;
    }
}
