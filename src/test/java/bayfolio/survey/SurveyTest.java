package bayfolio.survey;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.check.Check;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.render.Means;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;
import nu.validator.validation.SimpleDocumentValidator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** What is to be looked up at a coach: all of it, and nothing else. */
final class SurveyTest {
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init") // set before each test
    private SpoiltFleet fleet;

    @BeforeEach
    void setUp() throws IOException {
        fleet = SpoiltFleet.in(folder);
    }

    private Check check(String day) throws Exception {
        FleetReader.Reading reading = FleetReader.read(Folders.at(folder));
        return Check.of(
                day.isEmpty() ? reading.fleet() : reading.fleet().asOf(LocalDate.parse(day)),
                reading.library(),
                Theme.load(folder, Theme.BUILT_IN).catalogs(),
                reading.findings());
    }

    private static Unit unit(Check check, String coach) {
        return check.units().stream()
                .filter(it -> it.id().equals(coach))
                .findFirst()
                .orElseThrow();
    }

    private Survey survey(String day) throws Exception {
        Check check = check(day);
        return Survey.of(check, unit(check, SpoiltFleet.COACH));
    }

    /** {@code OWN tires / age-code}. */
    private static List<String> asked(Survey survey) {
        return survey.stops().stream()
                .flatMap(stop -> stop.asks().stream())
                .map(ask -> ask.why().stream().map(Why::reason).toList() + " " + ask.at())
                .toList();
    }

    @Test
    void nothingIsToBeLookedUpAtTheDemoCoaches() throws Exception {
        Check check = DemoFleet.of(Path.of("")).check();
        for (Unit unit : check.units()) {
            assertThat(asked(Survey.of(check, unit))).as(unit.id()).isEmpty();
        }
    }

    @Test
    void whatIsMissingIsAskedForWithItsReason() throws Exception {
        fleet.without("roles: [house-battery-switch", "\n    on-look: .*", "")
                .without("tires:", "\n  age-code: .*", "")
                .without("people:", "\n  sleeping-places: .*", "")
                .without("id: smoke-alarm", "\n    replace-by: .*", "")
                .without("as-weighed:", "    front: .*\n", "")
                .without("engine:", "\n  consumption: .*", "")
                .without("\nsize:", "\n  width: .*", "\n  width: eight feet");

        assertThat(asked(survey("")))
                .containsExactlyInAnyOrder(
                        "[REQUIRED] people / sleeping-places",
                        "[OWN] tires / age-code",
                        "[OWN] weights / as-weighed / front",
                        "[QUESTION] engine / consumption",
                        "[QUESTION, REQUIRED, TO_CONFIRM] size / width",
                        "[PROCEDURE] switches / house-battery-switch / on-look",
                        "[OWN] gauges / smoke-alarm / replace-by");
    }

    /** A record that is not there is asked for by the facts in it. */
    @Test
    void aWeighingThatNobodyMadeIsAskedFor() throws Exception {
        fleet.without("weights:", "  as-weighed:\n(    .*\n)+", "");

        assertThat(asked(survey("")))
                .contains(
                        "[QUESTION, OWN] weights / as-weighed / on",
                        "[QUESTION, OWN] weights / as-weighed / total",
                        "[QUESTION, OWN] weights / as-weighed / state")
                .allMatch(it -> it.contains(" weights / as-weighed / "));
    }

    @Test
    void whatNobodyHasLookedAtForLongIsLookedAtAgain() throws Exception {
        assertThat(asked(survey("2029-03-01"))).isEmpty();
        List<String> after = asked(survey("2029-04-10"));
        assertThat(after)
                .contains("[OLD] compartments / l2-left-storage / width", "[OWN] weights / as-weighed / total");
        // The coach itself was walked some days later than that compartment.
        assertThat(after).doesNotContain("[OLD] tires / size");
        assertThat(asked(survey("2029-05-01"))).contains("[OLD] tires / size");
        String rule = Files.readString(folder.resolve("units/fleet.yaml"));
        Files.writeString(folder.resolve("units/fleet.yaml"), rule + "\ncheck-every: 60\n");
        assertThat(asked(survey("2029-05-01"))).isEmpty();
    }

    @Test
    void whatIsToBeConfirmedIsAskedForInWalkingOrder() throws Exception {
        Files.writeString(
                fleet.description(),
                Files.readString(fleet.description()).replaceAll("(?m)^    where: .*$", "$0\n    to-confirm: [where]"));

        Survey survey = survey("");

        assertThat(survey.count()).isGreaterThan(50);
        assertThat(asked(survey)).allMatch(it -> it.startsWith("[TO_CONFIRM] ") && it.endsWith(" / where"));
        List<String> stops = survey.stops().stream()
                .flatMap(stop -> stop.thing().stream())
                .map(Thing::id)
                .toList();
        assertThat(survey.coach().walked().map(Thing::id).filter(stops::contains))
                .containsSubsequence(stops);
    }

    @Test
    void thePageAndTheSheetHoldEachFact() throws Exception {
        fleet.without("roles: [house-battery-switch", "\n    on-look: .*", "")
                .without("\nsize:", "\n  width: .*", "\n  width: \"</script><b>8 & ft\"")
                .without("engine:", "\n  air-brakes: .*", "\n  air-brakes: perhaps");
        Check check = check("2029-04-10");
        Survey survey = Survey.of(check, unit(check, SpoiltFleet.COACH));
        Means means = new Means(Theme.load(folder, Theme.BUILT_IN), check.catalogs(), check.fleet(), Printing.USUAL);
        Map<String, byte[]> files = SurveyFiles.of(survey, means);

        byte[] page = files.getOrDefault("survey.html", new byte[0]);
        assertThat(faults(page)).isEmpty();
        Document read = Jsoup.parse(new ByteArrayInputStream(page), "UTF-8", "");
        assertThat(read.select("#asked .ask").eachAttr("data-path"))
                .containsExactlyInAnyOrderElementsOf(survey.stops().stream()
                        .flatMap(stop -> stop.asks().stream())
                        .map(ask -> ask.at().toString())
                        .toList());
        assertThat(read.select(".ask[data-path='size / width'] .stated").text())
                .isEqualTo("Stated now: </script><b>8 & ft");
        assertThat(read.select(".ask[data-path='engine / air-brakes'] option").eachAttr("value"))
                .containsExactly("", "yes", "no");
        assertThat(read.select("[src], link[href], a[href]")).isEmpty();
        byte[] sheet = files.getOrDefault("survey.pdf", new byte[0]);
        try (PDDocument document = Loader.loadPDF(sheet)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text).contains("To look up at D7 Dunlin", "ON looks like", "</script><b>8 & ft");
        }
        assertThat(failures(sheet)).isEmpty();
        assertThat(SurveyFiles.of(survey, means)).containsExactlyInAnyOrderEntriesOf(files);
    }

    private static List<String> faults(byte[] page) throws Exception {
        List<String> told = new ArrayList<>();
        ErrorHandler handler = new ErrorHandler() {
            @Override
            public void warning(SAXParseException message) {
                told.add(message.toString());
            }

            @Override
            public void error(SAXParseException message) {
                told.add(message.toString());
            }

            @Override
            public void fatalError(SAXParseException message) {
                told.add(message.toString());
            }
        };
        SimpleDocumentValidator validator = new SimpleDocumentValidator(true, true, true);
        validator.setUpMainSchema("http://s.validator.nu/html5-rdfalite.rnc", handler);
        validator.setUpValidatorAndParsers(handler, false, false);
        InputSource source = new InputSource(new ByteArrayInputStream(page));
        source.setEncoding("UTF-8");
        source.setSystemId("http://localhost/survey.html");
        validator.checkHtmlInputSource(source);
        // It knows no digests of what stands in the page; a browser does, and SurveyPageTest reads what it says.
        told.removeIf(it -> it.contains(" violates Content Security Policy (meta tag)"));
        return told;
    }

    private static List<String> failures(byte[] pdf) throws Exception {
        LogManager.getLogManager().reset();
        Logger.getLogger("").setLevel(Level.OFF);
        VeraGreenfieldFoundryProvider.initialise();
        List<String> failures = new ArrayList<>();
        for (String standard : List.of("ua1", "3a")) {
            PDFAFlavour flavour = PDFAFlavour.fromString(standard);
            try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
                    PDFAValidator validator =
                            Foundries.defaultInstance().createValidator(flavour, 20, false, false, false)) {
                validator
                        .validate(parser)
                        .getTestAssertions()
                        .forEach(it -> failures.add(standard + ": " + it.getRuleId() + " " + it.getMessage()));
            }
        }
        return failures;
    }

    @Test
    void whatIsPublishedIsNoPlaceForIt() throws Exception {
        for (String out : List.of("site-out/web", "site-out/web/x/..", "site-out/staff/survey")) {
            SpoiltFleet.Said said = fleet.run(
                    "survey",
                    "dunlin",
                    "--fleet",
                    folder.toString(),
                    "--out",
                    folder.resolve(out).toString());
            assertThat(said.exit()).as(out).isEqualTo(2);
            assertThat(said.err()).contains("is published; choose another folder");
        }
        assertThat(fleet.run("survey").exit()).isEqualTo(2);
        assertThat(fleet.run("survey", "sandpiper", "--fleet", folder.toString())
                        .exit())
                .isEqualTo(2);
        assertThat(Files.exists(folder.resolve("site-out"))).isFalse();
    }
}
