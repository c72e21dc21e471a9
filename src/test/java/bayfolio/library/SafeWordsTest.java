package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.measure.Celsius;
import bayfolio.model.Fleet;
import bayfolio.model.Hire;
import bayfolio.model.Unit;
import bayfolio.procedure.Head;
import bayfolio.procedure.Script;
import bayfolio.read.FleetReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What could hurt a renter is not said on any page, and what keeps them safe is. */
final class SafeWordsTest {
    private static final FleetReader.Reading READING = FleetReader.read(Folders.at(Path.of("")));
    private static final Fleet FLEET = READING.fleet();

    /** A coach of the demo fleet as others are: hired out in another country, with another way to flush, good in frost. */
    @TempDir
    @SuppressWarnings("NullAway.Init") // set before the first test
    static Path other;

    private static Path otherWeb;

    @BeforeAll
    static void publishTheOther() throws Exception {
        for (Map.Entry<String, byte[]> file : DemoFleet.files(Path.of("units")).entrySet()) {
            if (file.getKey().matches("(shared|whimbrel)/.*|[^/]+")) {
                DemoFleet.write(other.resolve("units").resolve(file.getKey()), file.getValue());
            }
        }
        Path description = other.resolve("units/whimbrel/unit.yaml");
        String text = Files.readString(description);
        for (List<String> edit : List.of(
                List.of("region: north-america\n", "region: north-america\ncountry: de\n"),
                List.of("  flush-valve: open\n", "  flush-valve: shut\n"),
                List.of("  lowest-night: 32 °F\n", "  lowest-night: 20 °F\n"),
                List.of("  return-in-frost: ", "  # return-in-frost: "))) {
            assertThat(text).contains(edit.get(0));
            text = text.replace(edit.get(0), edit.get(1));
        }
        Files.writeString(description, text);
        DemoFleet.of(other).publish(other.resolve("out"), "whimbrel");
        otherWeb = other.resolve("out/web");
    }

    // ---- severe weather ----

    /** One way for each danger: what saves in a tornado kills in lightning and in a flood. */
    @Test
    void eachDangerOfTheWeatherHasItsOwnPageAndSource() {
        List<List<String>> sources = List.of("shelter-from-storm", "shelter-from-lightning", "escape-flood").stream()
                .map(id -> script(id).head().facts().all(Head.SOURCES))
                .toList();

        assertThat(sources)
                .doesNotHaveDuplicates()
                .allSatisfy(each -> assertThat(each).isNotEmpty().doesNotContain("common-practice"));
    }

    @Test
    void inLightningNobodyIsToldToLieDownAndAMetalVehicleIsARefuge() {
        for (Unit unit : FLEET.units()) {
            String page = text(unit, "do/shelter-from-lightning.html");

            assertThat(page)
                    .contains("Never lie flat or crouch")
                    .contains("hard metal roof")
                    .contains("30 minutes after the last thunder");
            assertThat(page.replace("Never lie flat or crouch", ""))
                    .doesNotContainPattern("(?i)\\b(lie|crouch|squat)\\b");
        }
    }

    @Test
    void inAFloodNobodyIsSentToLowGroundOrThroughWater() {
        for (Unit unit : FLEET.units()) {
            assertThat(text(unit, "do/escape-flood.html"))
                    .contains("go to high ground")
                    .contains("Keep off low ground")
                    .contains("Never drive into water")
                    .doesNotContainPattern("(?i)\\b(lie|ditch|lower than)\\b");
        }
    }

    /** The bodies differ, so each country's own words are printed, and none where none are known. */
    @Test
    void inATornadoTheCountryOfTheCoachSaysWhatToDoWithoutABuilding() {
        assertThat(text("whimbrel", "do/shelter-from-storm.html")).contains("head below the windows");
        assertThat(text("redpoll", "do/shelter-from-storm.html"))
                .doesNotContain("head below the windows")
                .doesNotContain("ditch");
    }

    @Test
    void noPageTellsAnyoneToLieDownWhateverTheDanger() {
        assertNowhere("(?:[.!?,] |Then )[Ll]ie (?:low|flat|down)\\b", "");
    }

    // ---- food ----

    @Test
    void foodIsJudgedByAThermometerAndTheLimitOfTheCountry() {
        Map<String, String> limits = Map.of(
                "whimbrel", "40 °F (4 °C)",
                "dunlin", "40 °F (4 °C)",
                "phalarope", "40 °F (4 °C)",
                "turnstone", "7 °C (45 °F)",
                "redpoll", "5 °C (41 °F)");
        limits.forEach((unit, limit) -> {
            for (String page : List.of(
                    "do/keep-fridge-cold-on-road.html", "do/run-fridge-parked.html", "trouble/fridge-warm.html")) {
                assertThat(text(unit, page))
                        .as(unit + " " + page)
                        .contains(limit)
                        .contains("thermometer")
                        .contains("ever taste");
            }
        });
        assertThat(text("whimbrel", "trouble/fridge-warm.html")).contains("Warmer for more than 2 h: throw away");
        assertThat(text("turnstone", "trouble/fridge-warm.html")).contains("as reported, 2023");
        assertNowhere("46 °F|(?i)feel the food|cold to the hand", "");
    }

    @Test
    void everyScriptThatSpeaksOfWarmFoodNamesASourceForIt() {
        assertThat(READING.library().scripts())
                .filteredOn(script -> script.body().contains("country.food"))
                .hasSize(3)
                .allSatisfy(script ->
                        assertThat(script.head().facts().all(Head.SOURCES)).contains("cold-food"));
    }

    // ---- ferry and tunnel ----

    /** A big diesel coach carries no gas, and its generator can start by itself on a closed car deck. */
    @Test
    void everyCoachThatBurnsFuelHasAFerryPageThatTurnsEachOff() {
        for (Unit unit : FLEET.units()) {
            String page = text(unit, "do/prepare-ferry-or-tunnel.html");
            for (Map.Entry<String, String> off : Map.of(
                            "generator-autostart", "Turn off the automatic start",
                            "generator", "Stop the generator",
                            "hydronic", "Turn off the burner",
                            "blown-air-heater", "Turn off the heater",
                            "furnace", "Turn off the furnace",
                            "water-heater-gas", "Turn off the water heater",
                            "lp-tank", "Shut off the gas",
                            "gas-cylinders", "Shut off the gas")
                    .entrySet()) {
                if (unit.has(off.getKey())) {
                    assertThat(page).as(unit.id()).contains(off.getValue());
                }
            }
            assertThat(text(unit, "stage/first-drive.html")).contains("all that burns or starts by itself");
        }
        assertThat(text("phalarope", "do/prepare-ferry-or-tunnel.html"))
                .containsSubsequence("automatic start", "The wide key reads OFF", "Stop the generator", "burner");
    }

    // ---- frost ----

    /** Its head said that no water may stay on board, and its steps filled the tank. */
    @Test
    void aNightBelowFreezingIsSpentWithWaterOnlyWhereThatMayStay() {
        int without = 0;
        for (Unit unit : FLEET.units()) {
            boolean stays = unit.facts()
                    .find(Unit.HIRE)
                    .flatMap(hire -> hire.facts().find(Hire.LOWEST_NIGHT))
                    .filter(night -> night.value() < new Celsius(0).value())
                    .isPresent();
            String page = text(unit, "do/camp-below-freezing.html");
            if (stays) {
                assertThat(page).as(unit.id()).contains("Fill the fresh tank", "Live from the tank");
            } else {
                without++;
                assertThat(page)
                        .as(unit.id())
                        .contains("No water may stay in this coach", "Let the water out")
                        .doesNotContain("Fill the fresh tank", "Live from the tank", "Water still runs");
            }
        }
        // Dunlin and whimbrel, and the three of one model.
        assertThat(without).isEqualTo(5);
        assertThat(otherText("do/camp-below-freezing.html")).contains("colder than 20 °F", "Live from the tank");
    }

    @Test
    void whoHandsBackInFrostIsToldOfHeatingWaterAndPlug() {
        for (Unit unit : FLEET.units()) {
            if (unit.has("after-hours-pickup")) {
                String page = text(unit, "do/return-after-hours.html");
                assertThat(page)
                        .as(unit.id())
                        .contains("If it may freeze, leave heating, water and plug as follows")
                        .containsPattern(Pattern.compile("(?i)plug(ged)? in|cord wound in"));
                if (!unit.has("water-in-frost")) {
                    assertThat(page).as(unit.id()).contains("leave no water in it");
                }
            }
        }
        assertThat(otherText("do/return-after-hours.html")).contains("call us before you leave the coach");
    }

    // ---- the black tank ----

    @Test
    void aTankThatIsFlushedWithItsValveShutIsFlushedByTheClock() {
        assertThat(otherText("do/flush-black-tank.html"))
                .containsSubsequence(
                        "Shut this valve",
                        "two minutes",
                        "Open the spigot",
                        "Shut the spigot after two minutes",
                        "Open it")
                .doesNotContain("watch the hose");
        assertThat(text("whimbrel", "do/flush-black-tank.html"))
                .contains("Open this valve, if it is shut", "watch the hose")
                .doesNotContain("two minutes");
    }

    // ---- what the country decides ----

    @Test
    void whoMayFillGasIsTheCountrysRuleAndNoLawIsMadeUp() {
        assertThat(text("whimbrel", "do/refill-lp-tank.html"))
                .contains("The rule in the United States, as reported (undated): Only trained people fill it.");
        assertThat(otherText("do/refill-lp-tank.html"))
                .contains("The rule in Germany, as reported (undated): You may fill a fixed one yourself at a pump.");
        assertThat(text("turnstone", "do/change-gas-cylinder.html")).contains("The rule in Germany");
        assertThat(text("redpoll", "do/change-gas-cylinder.html")).doesNotContain("The rule in");
        assertNowhere("(?i)by law", "");
    }

    // ---- what there is not ----

    /** A renter who believes in a saved copy drives off without a handbook. */
    @Test
    void noCopyForUseWithoutASignalIsPromisedWhileNoneIsPublished() {
        assertThat(DemoFleet.files(out()).keySet())
                .noneMatch(file -> file.matches(".*(\\.webmanifest|\\.pdf|sw\\.js)"));
        assertNowhere(
                "(?i)save (it|this handbook) on|signal off|turn off the signal|book on board|printed (copy|book)", "");
    }

    /** @param but files in which it may stand */
    private static void assertNowhere(String said, String but) {
        Map<String, String> found = new TreeMap<>();
        Pattern pattern = Pattern.compile(said);
        for (Map.Entry<String, byte[]> file : DemoFleet.files(out()).entrySet()) {
            if (file.getKey().endsWith(".html")
                    && (but.isEmpty()
                            || !Pattern.compile(but).matcher(file.getKey()).find())) {
                var matcher = pattern.matcher(plain(new String(file.getValue(), StandardCharsets.UTF_8)));
                if (matcher.find()) {
                    found.put(file.getKey(), matcher.group());
                }
            }
        }
        assertThat(found).isEmpty();
    }

    private static Path out() {
        return DemoFleet.web().resolveSibling("");
    }

    private static Script script(String id) {
        return READING.library().scripts().stream()
                .filter(script -> script.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String text(Unit unit, String page) {
        return text(unit.id(), page);
    }

    private static String text(String unit, String page) {
        return read(DemoFleet.web().resolve(unit).resolve(page));
    }

    private static String otherText(String page) {
        return read(otherWeb.resolve("whimbrel").resolve(page));
    }

    private static String read(Path file) {
        return DemoFleet.whole(file).text().replace('\u00A0', ' ');
    }

    private static String plain(String html) {
        return Jsoup.parse(html).text().replace('\u00A0', ' ');
    }
}
