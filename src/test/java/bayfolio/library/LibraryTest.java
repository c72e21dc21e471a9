package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.model.Equipment;
import bayfolio.model.EquipmentKinds;
import bayfolio.model.PublishedSource;
import bayfolio.model.Role;
import bayfolio.model.Switch;
import bayfolio.model.Unit;
import bayfolio.procedure.Form;
import bayfolio.procedure.Head;
import bayfolio.procedure.Script;
import bayfolio.procedure.Stage;
import bayfolio.read.FleetReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shared library is whole: everything there is to do on a trip, for every coach of the demo fleet. */
final class LibraryTest {
    private static final Pattern NAMED = Pattern.compile("\\b([a-z]+)[:.]([a-z0-9]+(?:-[a-z0-9]+)*)");

    private static final Pattern WARNS = Pattern.compile("> \\*\\*(?:DANGER|WARNING|CAUTION|NOTICE)\\*\\*");

    @SuppressWarnings("NullAway.Init") // set before the first test
    private static FleetReader.Reading reading;

    @BeforeAll
    static void read() {
        reading = FleetReader.read(Folders.at(Path.of("")));
    }

    @Test
    void everyProcedureAndSymptomOfTheTripIsThere() throws Exception {
        Set<String> wanted = Files.readAllLines(Path.of("src/test/resources/bayfolio/library/whole-trip.txt")).stream()
                .filter(line -> !line.startsWith("#"))
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> there = reading.library().scripts().stream()
                .map(script -> script.form().scheme() + " " + script.id())
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(wanted).hasSize(102 + 29);
        assertThat(there).containsAll(wanted);
    }

    @Test
    void everyScriptAppliesToACoachOfTheFleetOrOfTheBuilds() {
        List<Unit> coaches = Stream.concat(reading.fleet().units().stream(), builds().fleet().units().stream())
                .toList();

        assertThat(reading.library().scripts())
                .allSatisfy(script -> assertThat(coaches.stream().filter(script::appliesTo))
                        .as(script.id())
                        .isNotEmpty());
    }

    @Test
    void everyKindOfEquipmentIsOnACoachOfTheFleetOrOfTheBuilds() {
        EquipmentKinds kinds = reading.fleet().equipment();
        Set<String> there = Stream.of(reading, builds())
                .flatMap(each ->
                        each.fleet().units().stream().flatMap(unit -> each.fleet().equipment().on(unit).stream()))
                .map(Equipment::id)
                .collect(Collectors.toCollection(TreeSet::new));

        assertThat(there).containsAll(kinds.all().stream().map(Equipment::id).toList());
    }

    private static FleetReader.Reading builds() {
        return FleetReader.read(Folders.at(BuildsTest.BUILDS));
    }

    @Test
    void everyStageHasAPageOfQuestions() {
        assertThat(reading.library().scripts().stream()
                        .filter(script -> script.form() == Form.STAGE)
                        .map(script -> script.head().stage()))
                .containsExactlyInAnyOrder(Stage.values());
    }

    @Test
    void everyRoleIsSpokenOf() {
        Set<String> spoken = new TreeSet<>();
        for (Script script : reading.library().texts()) {
            Matcher named = NAMED.matcher(script.body());
            while (named.find()) {
                spoken.add(named.group(1) + ":" + named.group(2));
            }
        }

        assertThat(spoken)
                .containsAll(reading.fleet().roles().stream()
                        .map((Role role) -> role.kind() + ":" + role.id())
                        .toList());
    }

    /** Where there is a warning, there is a source, or it is said that there is none but the practice of the trade. */
    @Test
    void everyScriptWithAHazardSaysWhatBacksIt() {
        assertThat(reading.library().scripts())
                .filteredOn(script -> WARNS.matcher(script.body()).find())
                .hasSizeGreaterThan(60)
                .allSatisfy(script -> assertThat(script.head().facts().all(Head.SOURCES))
                        .as(script.id())
                        .isNotEmpty());
    }

    @Test
    void everySourceBacksSomething() {
        assertThat(reading.library().scripts().stream()
                        .flatMap(script -> script.head().facts().all(Head.SOURCES).stream()))
                .containsAll(reading.fleet().sources().stream()
                        .map(PublishedSource::id)
                        .toList());
    }

    @Test
    void staffReadTheSourcesAndRentersDoNot() throws Exception {
        Script script = reading.library().scripts().stream()
                .filter(it -> it.id().equals("find-safety-equipment"))
                .findFirst()
                .orElseThrow();
        List<String> titles = script.head().facts().all(Head.SOURCES).stream()
                .map(id -> reading.fleet().source(id).orElseThrow().title())
                .toList();

        assertThat(titles).isNotEmpty();
        assertThat(page(DemoFleet.web().resolveSibling("staff").resolve("whimbrel/do/find-safety-equipment.html"))
                        .text())
                .contains(titles);
        assertThat(page(DemoFleet.web().resolve("whimbrel/do/find-safety-equipment.html"))
                        .text())
                .doesNotContain(titles);
    }

    /** Nothing works until each one is on, so the page has exactly those of this coach. */
    @Test
    void wakingUpNamesEveryBatterySwitchOfTheCoach() throws Exception {
        for (Unit unit : reading.fleet().units()) {
            Set<String> has = unit.switches().stream()
                    .filter(it -> it.roles().contains("house-battery-switch")
                            || it.roles().contains("chassis-battery-switch"))
                    .map(Switch::id)
                    .collect(Collectors.toSet());
            Set<String> named = page(DemoFleet.web().resolve(unit.id() + "/do/wake-up-coach.html"))
                    .select("#steps ol > li > p > a, #steps ol > li > ul.where > li > a")
                    .stream()
                    .flatMap(link -> Pattern.compile("(?:#switch-|\\.\\./switch/)([a-z0-9-]+)")
                            .matcher(link.attr("href"))
                            .results()
                            .map(found -> found.group(1)))
                    .filter(id -> id.contains("battery") || has.contains(id))
                    .collect(Collectors.toSet());

            assertThat(has).as(unit.id()).isNotEmpty();
            assertThat(named).as(unit.id()).isEqualTo(has);
        }
    }

    @Test
    void everySymptomIsTwoTapsFromTheHomePage() throws Exception {
        for (Unit unit : reading.fleet().units()) {
            Path folder = DemoFleet.web().resolve(unit.id());
            Set<String> oneTap = links(folder.resolve("index.html"));
            assertThat(oneTap).contains("trouble.html");
            Set<String> twoTaps = links(folder.resolve("trouble.html"));
            List<String> guides = new ArrayList<>();
            reading.library().of(unit).stream()
                    .filter(script -> script.form() == Form.TROUBLE)
                    .forEach(guide -> guides.add("trouble/" + guide.id() + ".html"));

            assertThat(guides).as(unit.id()).hasSizeGreaterThan(15);
            assertThat(twoTaps).as(unit.id()).containsAll(guides);
        }
    }

    /** Each ends in a call, and says what to have ready. */
    @Test
    void everyGuideEndsInACall() throws Exception {
        for (Unit unit : reading.fleet().units()) {
            for (Script guide : reading.library().of(unit)) {
                if (guide.form() == Form.TROUBLE) {
                    Document page = page(DemoFleet.web().resolve(unit.id() + "/trouble/" + guide.id() + ".html"));

                    assertThat(page.select("#if-nothing-helped a[href^=tel:]"))
                            .as(unit.id() + " " + guide.id())
                            .isNotEmpty();
                    assertThat(page.select("#if-nothing-helped").text().toLowerCase(java.util.Locale.ROOT))
                            .as(unit.id() + " " + guide.id())
                            .containsAnyOf("have ready", "have this ready", "have these ready", "tell", "say");
                }
            }
        }
    }

    private static Set<String> links(Path file) throws Exception {
        return page(file).select("main a").stream()
                .map(link -> link.attr("href"))
                .collect(Collectors.toSet());
    }

    private static Document page(Path file) throws Exception {
        return Jsoup.parse(Files.readString(file));
    }
}
