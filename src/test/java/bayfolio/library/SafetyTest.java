package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.fact.Key;
import bayfolio.measure.Kilopascals;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Tires;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.reckon.clearance.Clearances;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What renters read on the published pages cannot hurt them: nothing of a kind that once could have, on any page. */
final class SafetyTest {
    private static final Pattern UNPROTECTED = Pattern.compile(
            "(?<!\\b[Nn]ever )\\b(?:try|use|take|find|choose|go to|look for)\\b(?: \\w+){0,4} (?:outlet|one|post|socket)"
                    + "(?: \\w+){0,3} without\\b",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern LENGTH =
            Pattern.compile("\\d+[ \u00A0]ft(?:[ \u00A0]\\d+[ \u00A0]in)?|\\d+\\.\\d+[ \u00A0]m\\b");

    private static final Pattern LIMITS =
            Pattern.compile("\\b(?:signs?|bridges?|height limits?)\\b", Pattern.CASE_INSENSITIVE);

    private final Fleet fleet = FleetReader.read(Folders.at(Path.of(""))).fleet();
    private final List<Unit> units = fleet.units();
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
                    if (path.startsWith(unit.id() + "/")) {
                        page.select("main li:not(:has(p)), main p, main dl > div, main tr").stream()
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
                    .contains("Never let air out of a warm tire", "Read it again when it is cold")
                    .doesNotContain("truck stop");
        }
    }

    /** The pump and the windows before all else, and no flame is lit to prove that the gas is off. */
    @Test
    void fuelInTheDrinkingWaterIsMetByPumpOffAndWindowsOpenFirst() {
        for (Unit unit : units) {
            String steps = DemoFleet.whole(DemoFleet.web().resolve(unit.id() + "/do/deal-with-wrong-fuel.html"))
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
            assertThat(DemoFleet.whole(DemoFleet.web().resolve(unit.id() + "/do/deal-with-wrong-fuel.html"))
                            .select("#steps a[href*=close-gas-supply]"))
                    .as("a page on which a burner is lit")
                    .isEmpty();
        }
    }

    /** Level ground and chocks before, chains last; and nothing is set up while it hangs on. */
    @Test
    void nothingIsUnhitchedOnASlope() {
        for (Unit unit : units) {
            if (unit.has("towing-allowed")) {
                assertThat(text(DemoFleet.whole(DemoFleet.web().resolve(unit.id() + "/do/uncouple-tow.html"))))
                        .containsSubsequence(
                                "On a slope, what you unhitch rolls away",
                                "Stop on level, firm ground",
                                "Set the parking brake of the coach",
                                "Chock its wheels",
                                "until it takes the weight",
                                "Unplug the trailer lights",
                                "open the coupling",
                                "chains, last of all",
                                "If it rolls, stay clear");
                assertThat(text(DemoFleet.whole(DemoFleet.web().resolve(unit.id() + "/do/uncouple-tow-car.html"))))
                        .containsSubsequence(
                                "On a slope, what you unhitch rolls away",
                                "Stop on level, firm ground",
                                "Set the parking brake of the coach",
                                "before an arm comes off",
                                "Chock its wheels",
                                "Take off both arms",
                                "chains, last of all",
                                "If it rolls, stay clear");
                assertThat(pages.get(unit.id() + "/do/set-up-on-site.html")
                                .select("#steps a[href*=uncouple], #steps a[href*=jacks]")
                                .eachAttr("href"))
                        .containsExactly(
                                "../do/uncouple-tow-car.html",
                                "../do/uncouple-tow.html",
                                "../do/level-with-jacks.html");
            }
        }
        assertThat(pages).containsKeys("phalarope/do/uncouple-tow.html", "phalarope/do/uncouple-tow-car.html");
        assertThat(pages)
                .allSatisfy((path, page) -> assertThat(text(page))
                        .as(path)
                        .doesNotContainPattern("(?i)on a slope, un(?:hook|hitch|couple)"));
    }

    /** The same coach with a ball and a breakaway cable: no chains, no pin, no jack, no car on its own wheels. */
    @Test
    void aBallCouplingIsHitchedByItsOwnWay(@TempDir Path folder) throws Exception {
        DemoFleet.copy(Path.of(""), folder);
        Path file = folder.resolve("units/phalarope/unit.yaml");
        String described = Files.readString(file);
        DemoFleet.write(
                file,
                described.replace(
                        "    roles: [tow-hitch]\n", "    roles: [tow-hitch]\n    coupling: ball-and-cable\n"));
        DemoFleet.of(folder).publish(folder.resolve("out"), "phalarope");
        Path pages = folder.resolve("out/web/phalarope/do");
        String on = text(DemoFleet.whole(pages.resolve("couple-trailer.html")));
        String off = text(DemoFleet.whole(pages.resolve("uncouple-tow.html")));

        assertThat(off)
                .containsSubsequence("Chock its wheels", "jockey wheel", "off the ball", "breakaway cable, last");
        assertThat(on).contains("jockey wheel", "breakaway cable");
        assertThat(on + off).doesNotContain("chains", "pin in", "its jack", "own wheels");
        assertThat(pages.resolve("couple-tow-car.html")).doesNotExist();
        assertThat(pages.resolve("uncouple-tow-car.html")).doesNotExist();
    }

    /** Where a height is compared with a sign or a bridge, the margin is in it, and nowhere is there a second figure. */
    @Test
    void oneLimitForBridgesIsToldInEveryPlace() {
        for (Unit unit : units) {
            String limit =
                    Clearances.lowestSign(new Coach(fleet, unit)).orElseThrow().toString();
            List<String> figures =
                    LENGTH.matcher(limit).results().map(MatchResult::group).toList();
            List<String> told = new ArrayList<>();
            pages.forEach((path, page) -> {
                if (path.startsWith(unit.id() + "/")) {
                    sentences(page).filter(it -> LIMITS.matcher(it).find()).forEach(sentence -> {
                        List<String> lengths = LENGTH.matcher(sentence)
                                .results()
                                .map(MatchResult::group)
                                .toList();
                        if (!lengths.isEmpty()) {
                            told.add(path);
                            assertThat(figures).as(path + ": " + sentence).containsAll(lengths);
                        }
                    });
                }
            });

            assertThat(figures).hasSize(2);
            assertThat(told)
                    .as(unit.id())
                    .contains(
                            unit.id() + "/index.html",
                            unit.id() + "/stage/first-drive.html",
                            unit.id() + "/do/check-coach-fits-trip.html",
                            unit.id() + "/do/refuel-engine.html",
                            unit.id() + "/do/set-driving-position--dash.html");
            assertThat(pages.get(unit.id() + "/do/drive-long-tall-vehicle.html")
                            .select("#steps .hazard")
                            .text())
                    .contains("Stop if a sign shows less than " + limit);
        }
    }

    /** Of steps, hazards, answers and rows of facts, but not of the working of what is worked out. */
    private static Stream<String> sentences(Document page) {
        return page.select("main p, main li:not(:has(p)), main tr, main dl > div").stream()
                .filter(it -> it.closest("details") == null && it.closest("#clearance table") == null)
                .flatMap(it -> Stream.of(it.text().split("(?<=[.?!]) ")));
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
