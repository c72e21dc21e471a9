package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bayfolio.DemoFleet;
import bayfolio.check.Check;
import bayfolio.check.CheckedCoach;
import bayfolio.compose.Composer;
import bayfolio.document.PageKind;
import bayfolio.document.PlainText;
import bayfolio.finding.Severity;
import bayfolio.model.Country;
import bayfolio.model.Unit;
import bayfolio.procedure.Hazard;
import bayfolio.procedure.Procedure;
import bayfolio.procedure.Script;
import bayfolio.procedure.Step;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Coaches of builds that the demo fleet does not have, on texts and files of equipment that the program brings: none needs a text
 * of its own. What a page has that is put together of what a coach has is kept as text beside their fleet; {@code
 * -Dgolden=write} writes it anew and fails, naming what it wrote.
 */
final class BuildsTest {
    static final Path BUILDS = Path.of("src/test/resources/bayfolio/builds");

    @SuppressWarnings("NullAway.Init") // set before the first test
    private static Check check;

    /** Filled in once. */
    private static final Map<String, CheckedCoach> FILLED = new TreeMap<>();

    @BeforeAll
    static void read() throws Exception {
        check = DemoFleet.of(BUILDS).check();
        check.units().forEach(unit -> FILLED.put(unit.id(), check.of(unit)));
    }

    static List<String> builds() throws Exception {
        try (Stream<Path> folders = Files.list(BUILDS.resolve("units"))) {
            return folders.filter(Files::isDirectory)
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void nothingIsWrongWithAnyBuild() {
        assertThat(check.findings().all().stream()
                        .filter(finding -> finding.severity() != Severity.NOTE)
                        .map(finding -> finding.at() + ": " + finding.message()))
                .isEmpty();
        assertThat(check.units()).hasSizeGreaterThanOrEqualTo(11);
    }

    @Test
    void noBuildHasATextOfItsOwn() throws Exception {
        try (Stream<Path> files = Files.walk(BUILDS.resolve("units"))) {
            assertThat(files.filter(Files::isRegularFile).map(Path::toString)).noneMatch(path -> path.endsWith(".md"));
        }
    }

    @ParameterizedTest
    @MethodSource("builds")
    void pagesPutTogetherOfWhatItHasReadAsBefore(String build) throws Exception {
        Path file = BUILDS.resolve(build + ".txt");
        String text = check.library().scripts().stream()
                .filter(script -> script.body().contains("{{acts."))
                .map(Script::id)
                .sorted()
                .filter(id -> has(build, id))
                .map(id -> page(build, id))
                .collect(Collectors.joining("\n"));

        if (System.getProperty("golden", "compare").equals("write")
                && !(Files.exists(file) && Files.readString(file).equals(text))) {
            DemoFleet.write(file, text);
            fail("Written, to be read and run again: " + file);
        }
        assertThat(text).isEqualTo(Files.readString(file));
    }

    @Test
    void aSouthernVanPlugsInAtItsOwnPostsAndTakesItsHoseOffAgain() {
        String van = "lapwing";

        assertThat(ways(van, "set-up-on-site"))
                .containsExactly(
                        "level-with-ramps",
                        "chock-wheels",
                        "lower-steadies",
                        "connect-hookup-240v",
                        "set-up-entry-step",
                        "connect-city-water",
                        "open-gas-supply",
                        "connect-gray-hose",
                        "extend-awning",
                        "set-up-awning-room",
                        "run-fridge-parked");
        assertThat(ways(van, "break-camp"))
                .containsSubsequence("disconnect-city-water", "empty-cassette", "take-off-waste-hose")
                .containsSubsequence("take-down-awning-room", "retract-awning", "drive-off-ramps", "pick-up-chocks")
                .containsSubsequence("take-off-waste-hose", "disconnect-hookup-240v", "drive-off-ramps")
                .containsSubsequence("raise-steadies", "drive-off-ramps");
        assertThat(page(van, "connect-hookup-240v"))
                .contains("10 A adapter with breaker")
                .doesNotContain("blue");
        assertThat(page(van, "change-over-gas")).contains("Changeover lever");
        assertThat(page(van, "refuel-engine")).contains("Turn off the fridge, if it burns gas");
        assertThat(page(van, "extend-awning")).contains("strap").doesNotContain("crank");
        assertThat(page(van, "call-emergency-services")).contains("000");
        assertThat(has(van, "connect-hookup-230v")).isFalse();
        assertThat(has(van, "no-ac-on-shore")).isTrue();
        assertThat(has(van, "dump-tanks-gravity")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"lapwing", "goldcrest"})
    void ofOtherContinentsASouthernVanSaysNothing(String van) {
        List<String> texts = Composer.compose(coach(van)).pages().stream()
                .filter(page -> page.kind() == PageKind.QUESTION)
                .flatMap(PlainText::of)
                .toList();

        assertThat(texts)
                .hasSizeGreaterThan(100)
                .noneMatch(text -> text.matches(".*(Europe|DIN VDE|BS 7671|NEC|US high).*"));
    }

    @Test
    void anElectricVanIsChargedAndNeverRefueled() {
        String van = "goldcrest";

        assertThat(ways(van, "set-up-on-site")).contains("connect-hookup-240v").doesNotContain("open-gas-supply");
        assertThat(steps(van, "check-before-driving"))
                .contains("electric-base-unplugged", "toilet-separating-shut")
                .doesNotContain("set-gas-road");
        assertThat(ways(van, "prepare-return")).contains("charge-electric-base", "empty-separating-toilet");
        assertThat(page(van, "prepare-ferry-or-tunnel")).contains("it is electric", "Turn off the air heater");
        assertThat(page(van, "run-air-heater"))
                .contains("own tank", "Fuel vapor", "makes no hot water")
                .doesNotContain("Open the gas");
        assertThat(page(van, "air-conditioner-trips")).contains("house battery").doesNotContain("household outlet");
        assertThat(page(van, "start-engine-and-move-off"))
                .contains("Turn the drive on")
                .doesNotContain("key?", " park ");
        assertThat(page(van, "winterize-coach")).doesNotContain("hot, full heater");
        assertThat(page(van, "store-lithium")).contains("about half", "0 °C");
        assertThat(has(van, "refuel-engine")).isFalse();
        assertThat(has(van, "engine-no-start")).isFalse();
        assertThat(has(van, "heat-water")).isFalse();
        assertThat(has(van, "fill-lp-at-pump")).isFalse();
    }

    @Test
    void aWetHeaterOnGasIsNeverToldToReadTheFuelAndItsDriverFillsTheTank() {
        String coach = "fieldfare";

        assertThat(page(coach, "run-wet-heater-lp"))
                .contains("radiators", "gas")
                .doesNotContain("fuel", "diesel");
        assertThat(page(coach, "no-heat")).contains("radiators").doesNotContain("warm-air vents", "Fuel gauge");
        assertThat(page(coach, "fill-lp-at-pump"))
                .contains("Gas adapter, dish", "80 percent", "The rule in Germany")
                .doesNotContain("attendant");
        assertThat(ways(coach, "prepare-return")).contains("fill-lp-at-pump");
        assertThat(ways(coach, "refuel-engine")).containsSubsequence("stop-wet-heater", "close-gas-supply");
        assertThat(steps(coach, "refuel-engine"))
                .containsSubsequence("hydronic-lp", "lp-remote-valve-off", "turn-off-gas");
        assertThat(ways(coach, "camp-below-freezing")).contains("run-wet-heater-lp");
        assertThat(page(coach, "open-gas-supply")).contains("Hob gas tap", "Heating gas tap", "Fridge gas tap");
        assertThat(page(coach, "call-emergency-services")).contains("112");
        assertThat(has(coach, "refill-lp-tank")).isFalse();
        assertThat(has(coach, "change-gas-cylinder")).isFalse();
    }

    @Test
    void aCamperOnAPickupPlugsInAtAHouseOutletAndHeatsWaterAsItRuns() {
        String camper = "siskin";

        assertThat(ways(camper, "set-up-on-site"))
                .containsExactly(
                        "level-with-ramps",
                        "chock-wheels",
                        "connect-house-outlet",
                        "set-up-entry-step",
                        "connect-city-water",
                        "open-gas-supply");
        assertThat(ways(camper, "break-camp"))
                .containsSubsequence(
                        "disconnect-city-water", "empty-cassette", "disconnect-house-outlet", "drive-off-ramps")
                .contains("stow-solar-panel");
        assertThat(page(camper, "change-gas-cylinder"))
                .contains("Make sure by lifting that the cylinder is empty")
                .doesNotContain("gauge");
        assertThat(steps(camper, "check-before-driving"))
                .contains("water-heater-tankless-off", "solar-portable-strapped");
        assertThat(steps(camper, "refuel-engine")).contains("water-heater-tankless-off");
        assertThat(page(camper, "winterize-coach")).contains("drain plugs").doesNotContain("hot, full heater");
        assertThat(page(camper, "camp-below-freezing")).doesNotContain("Leave it on with its power");
        assertThat(page(camper, "run-air-heater"))
                .contains("Open the gas", "makes no hot water")
                .doesNotContain("fuel");
        assertThat(page(camper, "no-ac-on-shore")).contains("RESET");
        assertThat(page(camper, "test-site-outlet")).contains("120 V");
        assertThat(has(camper, "connect-shore-30a")).isFalse();
        assertThat(has(camper, "connect-smaller-supply")).isFalse();
    }

    @Test
    void ofTwoGeneratorsEachGoesOff() {
        String coach = "shearwater";

        for (String page :
                List.of("refuel-engine", "prepare-ferry-or-tunnel", "leave-coach-alone", "shut-down-coach")) {
            assertThat(page(coach, page))
                    .as(page)
                    .contains("each generator", "Diesel generator switch", "Gasoline generator switch");
        }
        assertThat(page(coach, "start-generator"))
                .contains("Choose one of the generators", "Diesel generator", "Gasoline generator")
                .doesNotContain("up to 8,000 W");
        assertThat(ways(coach, "set-up-on-site"))
                .containsSubsequence("chock-wheels", "connect-shore-50a", "connect-second-inlet", "level-with-jacks")
                .containsSubsequence("connect-city-water", "connect-sewer-at-site");
        assertThat(ways(coach, "break-camp"))
                .containsSubsequence("disconnect-second-inlet", "retract-jacks", "disconnect-shore-power");
        assertThat(page(coach, "camp-below-freezing")).contains("ice maker", "washer");
        assertThat(has(coach, "open-gas-supply")).isFalse();
        assertThat(has(coach, "respond-gas-alarm")).isFalse();
    }

    @Test
    void aPortableGeneratorIsPackedColdAndNeverRunsByItself() {
        String van = "wagtail";

        assertThat(ways(van, "break-camp")).contains("pack-portable-generator", "disconnect-house-outlet");
        assertThat(steps(van, "stay-overnight-no-hookup"))
                .contains("generator-portable-off")
                .doesNotContain("set-heat-low-60");
        assertThat(steps(van, "leave-coach-alone")).contains("generator-portable-off");
        assertThat(page(van, "prepare-ferry-or-tunnel")).contains("Ask days ahead whether the portable generator");
        assertThat(page(van, "check-before-driving")).contains("strapped upright", "Cap each canister");
        assertThat(page(van, "connect-house-outlet")).contains("made for 20 A", "Adapter to 15 A");
        assertThat(page(van, "use-calorifier")).contains("The engine heats the water");
        assertThat(has(van, "start-generator")).isFalse();
        assertThat(has(van, "air-conditioner-trips")).isTrue();
    }

    @Test
    void eachCallsForHelpAsItsCountryDoes() {
        for (Unit unit : check.units()) {
            Country country = check.fleet().country(unit).orElseThrow();

            assertThat(page(unit.id(), "call-emergency-services"))
                    .as(unit.id())
                    .contains(country.emergency().get(0).number());
        }
    }

    @Test
    void aPopTopVanLivesOnCansAndABucket() {
        String van = "wren";

        assertThat(ways(van, "set-up-on-site"))
                .containsExactly(
                        "level-with-ramps",
                        "chock-wheels",
                        "connect-hookup-230v",
                        "open-gas-supply",
                        "raise-roof",
                        "turn-cab-seats",
                        "fill-water-cans",
                        "set-gray-bucket");
        assertThat(ways(van, "break-camp"))
                .containsSubsequence("put-beds-away", "lower-roof", "empty-gray-bucket", "close-gas-supply")
                .containsSubsequence("close-gas-supply", "drive-off-ramps", "pick-up-chocks");
        assertThat(steps(van, "break-camp"))
                .containsSubsequence("cab-seats-turned", "roof-lower", "turn-off-pump", "water-cans-strapped");
        assertThat(steps(van, "check-before-driving"))
                .contains(
                        "roof-down-latched",
                        "cab-seats-forward",
                        "blinds-open",
                        "water-cans-strapped",
                        "gray-bucket-stowed");
        assertThat(page(van, "check-before-driving")).contains("= Left roof latch: shut", "= Right roof latch: shut");
        assertThat(page(van, "prepare-ferry-or-tunnel"))
                .contains("Put in first gear")
                .doesNotContain("and the step");
        assertThat(page(van, "start-engine-and-move-off")).contains("clutch").doesNotContain("selector");
        assertThat(page(van, "stop-and-park")).contains("put it in first gear").doesNotContain("Put it in park");
        assertThat(page(van, "change-gas-cylinder")).contains("by lifting").doesNotContain("gauge");
        assertThat(page(van, "run-air-heater")).contains("Read the fuel", "makes no hot water");
        assertThat(page(van, "no-water")).contains("Look into the can").doesNotContain("gauge is blank");
        assertThat(page(van, "refuel-engine")).doesNotContain("water fill");
        assertThat(page(van, "winterize-coach")).doesNotContain("strainer", "hot, full heater");
        assertThat(steps(van, "winterize-coach")).containsSubsequence("water-pump-dry", "pump-submersible-out");
        assertThat(page(van, "dewinterize-coach")).doesNotContain("each heater");
        assertThat(page(van, "call-emergency-services")).contains("112", "122", "133", "144");
        for (String page :
                List.of("bad-smell", "pump-runs", "water-on-floor", "stop-water-leak", "drain-water-for-frost")) {
            assertThat(page(van, page)).as(page).doesNotContain("toilet", "eater");
        }
        assertThat(has(van, "fill-fresh-tank")).isFalse();
        assertThat(has(van, "toilet-trouble")).isFalse();
        assertThat(has(van, "gauge-wrong")).isFalse();
        assertThat(has(van, "heat-water")).isFalse();
        assertThat(has(van, "set-up-entry-step")).isFalse();
    }

    @Test
    void ofTwoFreshTanksEachIsFilledDrainedAndChosen() {
        String coach = "sandpiper";

        assertThat(ways(coach, "set-up-on-site"))
                .containsExactly(
                        "level-with-ramps",
                        "chock-wheels",
                        "connect-shore-30a",
                        "fill-fresh-tank",
                        "connect-sewer-at-site",
                        "raise-roof");
        assertThat(ways(coach, "break-camp"))
                .containsSubsequence("put-beds-away", "lower-roof", "disconnect-shore-power", "drive-off-ramps");
        assertThat(page(coach, "fill-fresh-tank"))
                .contains("Left fresh tank:", "Right fresh tank:", "Fill each other tank");
        assertThat(page(coach, "drain-fresh-tank")).contains("= Left tank drain: shut", "= Right tank drain: shut");
        assertThat(page(coach, "choose-fresh-tank")).contains("Tank chooser");
        assertThat(page(coach, "no-water")).contains("One tank is empty, the other is not");
        assertThat(page(coach, "camp-below-freezing"))
                .contains("Never warm the room with an open flame")
                .doesNotContain("the heater");
        assertThat(page(coach, "stay-overnight-no-hookup")).doesNotContain("Heat water", "Set the heat");
        assertThat(page(coach, "use-toilet-cassette")).doesNotContain("hatch", "water pump", "lamp");
        assertThat(page(coach, "empty-cassette"))
                .contains("upper half", "strapped")
                .doesNotContain("hatch", "wheel it");
        assertThat(page(coach, "prepare-ferry-or-tunnel")).doesNotContain("gas");
        assertThat(has(coach, "open-gas-supply")).isFalse();
        assertThat(has(coach, "no-heat")).isFalse();
        assertThat(has(coach, "set-up-entry-step")).isFalse();
    }

    @Test
    void anExtraAxleIsDownAndTheAirComesBeforeWhatHangsOn() {
        String coach = "osprey";

        assertThat(ways(coach, "set-up-on-site"))
                .containsExactly(
                        "chock-wheels",
                        "lower-suspension",
                        "lower-steadies",
                        "connect-shore-50a",
                        "connect-city-water",
                        "connect-sewer-at-site");
        assertThat(ways(coach, "break-camp"))
                .containsSubsequence("raise-steadies", "set-ride-height", "pick-up-chocks")
                .containsSubsequence(
                        "disconnect-city-water", "dump-tanks-gravity", "disconnect-shore-power", "set-ride-height");
        assertThat(steps(coach, "check-before-driving"))
                .contains(
                        "tag-axle-down",
                        "air-suspension-even",
                        "steadies-up",
                        "toilet-macerating-off",
                        "washer-latched");
        assertThat(page(coach, "check-before-driving")).contains("Extra axle: 100");
        assertThat(page(coach, "tire-trouble")).contains("Extra axle, when cold: 100");
        assertThat(page(coach, "set-ride-height")).contains("= Tag axle switch: driving");
        assertThat(steps(coach, "winterize-coach"))
                .containsSubsequence(
                        "open-fresh-drain-valve", "toilet-macerating-antifreeze", "toilet-macerating-pump-off");
        assertThat(page(coach, "no-heat")).contains("outlets are dead").doesNotContain("flame comes", "fuel is shut");
        assertThat(has(coach, "use-toilet-black-tank")).isFalse();
    }

    @Test
    void aCarInTowComesOffBeforeAllElseAndIsHitchedLast() {
        String coach = "wigeon";

        assertThat(ways(coach, "set-up-on-site"))
                .startsWith("uncouple-tow-car")
                .containsSubsequence(
                        "level-with-ramps",
                        "chock-wheels",
                        "connect-hookup-230v",
                        "extend-awning",
                        "set-up-awning-room");
        assertThat(ways(coach, "break-camp"))
                .containsSubsequence(
                        "take-down-awning-room",
                        "retract-awning",
                        "drive-off-ramps",
                        "pick-up-chocks",
                        "couple-tow-car")
                .containsSubsequence("couple-tow-car", "drain-gray-at-service-point");
        assertThat(steps(coach, "check-before-driving"))
                .contains("tow-car-rolls-free", "bike-rack-lights-plate", "roof-box-shut", "engine-dual-fuel-tunnels");
        assertThat(ways(coach, "refuel-engine"))
                .containsSubsequence("stop-air-heater", "close-gas-supply", "switch-to-gasoline");
        assertThat(page(coach, "prepare-ferry-or-tunnel"))
                .contains("height with the box", "length with the rack", "Put in first gear");
        assertThat(page(coach, "secure-for-wind")).doesNotContain("ladder");
        assertThat(page(coach, "stop-and-park")).doesNotContain("Put it in park");
        assertThat(has(coach, "run-fridge-parked")).isFalse();
    }

    @Test
    void aDieselStoveGoesOffForTheNightAndTheHeaterMayStayOn() {
        String coach = "pipit";

        assertThat(ways(coach, "stay-overnight-no-hookup"))
                .contains("stop-diesel-hob")
                .doesNotContain("stop-air-heater");
        assertThat(ways(coach, "refuel-engine")).contains("stop-air-heater");
        assertThat(ways(coach, "break-camp"))
                .containsSubsequence("put-beds-away", "stow-entry-step", "drive-off-ramps");
        assertThat(page(coach, "use-diesel-hob")).contains("Open a window").doesNotContain("lid");
        assertThat(page(coach, "use-vacuum-toilet")).contains("= Toilet pump breaker: on", "= Toilet pedal");
        assertThat(steps(coach, "check-before-driving"))
                .contains("toilet-vacuum-off", "hob-diesel-silent", "wheelchair-lift-locked", "bed-made-up-belts-free");
        assertThat(page(coach, "make-up-beds")).contains("Top bunk at the rear, right. For 1.");
        assertThat(page(coach, "prepare-ferry-or-tunnel")).contains("no place to park");
        assertThat(page(coach, "start-engine-and-move-off")).contains("selector in neutral");
        assertThat(has(coach, "use-toilet-black-tank")).isFalse();
        assertThat(has(coach, "open-gas-supply")).isFalse();
    }

    private static boolean has(String coach, String id) {
        return coach(coach).procedures().stream().anyMatch(it -> it.id().equals(id));
    }

    private static CheckedCoach coach(String id) {
        return Objects.requireNonNull(FILLED.get(id), id);
    }

    private static Procedure filled(String coach, String id) {
        return coach(coach).procedures().stream()
                .filter(it -> it.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(coach + " has no " + id));
    }

    private static List<String> steps(String coach, String id) {
        return filled(coach, id).steps().map(Step::id).toList();
    }

    /** The procedures that its steps lead to, in their order, without those in which the whole page begins and ends. */
    private static List<String> ways(String coach, String id) {
        return filled(coach, id)
                .steps()
                .flatMap(step -> step.text().stream())
                .flatMap(Block::links)
                .map(link -> link.target().written())
                .filter(target -> target.startsWith("procedure:"))
                .map(target -> target.substring("procedure:".length()))
                .filter(it -> !it.equals("check-before-driving"))
                .distinct()
                .toList();
    }

    /** A page as plain text, with the state that each switch is wanted in. */
    private static String page(String coach, String id) {
        Procedure procedure = filled(coach, id);
        StringBuilder page = new StringBuilder("# " + procedure.head().title() + " [" + id + "]\n");
        procedure.opening().forEach(block -> page.append(text(block)));
        for (Procedure.Part part : procedure.parts()) {
            part.title().ifPresent(title -> page.append("## ").append(title).append('\n'));
            for (Step step : part.steps()) {
                for (Hazard hazard : step.hazards()) {
                    page.append("! ").append(hazard.signal()).append(": ");
                    hazard.text().forEach(block -> page.append(text(block)));
                }
                page.append("1. ");
                step.text().forEach(block -> page.append(text(block)));
            }
            part.rest().forEach(block -> page.append("Safe to stop: ").append(text(block)));
        }
        procedure.endings().forEach(ending -> {
            page.append("## ").append(ending.title()).append('\n');
            ending.text().forEach(block -> page.append(text(block)));
        });
        return page.toString().replace('\u00a0', ' ').replace('\u202f', ' ');
    }

    private static String text(Block block) {
        if (block instanceof Block.Paragraph paragraph) {
            return Inline.plain(paragraph.text()).strip() + "\n";
        }
        if (block instanceof Block.Bullets bullets) {
            return bullets.items().stream()
                    .map(item -> "   - " + Inline.plain(item).strip() + "\n")
                    .collect(Collectors.joining());
        }
        if (block instanceof Block.Handling handling) {
            return handling.switches().stream()
                    .map(it -> "   = " + it.name() + ": " + it.state() + "\n")
                    .collect(Collectors.joining());
        }
        return "";
    }
}
