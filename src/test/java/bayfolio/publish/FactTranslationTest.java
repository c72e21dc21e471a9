package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.model.Coach;
import bayfolio.model.Fleet;
import bayfolio.model.Rewording;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the small fleet says of its coach, in another language. */
final class FactTranslationTest {
    private static final String TEXTS = "units/plover/translations/de/facts.yaml";

    @TempDir
    Path folder;

    private GermanFleet fleet = new GermanFleet(Path.of(""));

    @BeforeEach
    void german() throws Exception {
        fleet = GermanFleet.in(folder);
        Path unit = fleet.file("units/plover/unit.yaml");
        Files.writeString(unit, Files.readString(unit) + "\nwritten-in: en-US\n");
    }

    /** The texts of the pump's switch as a translator hands them in; all others are still to be done. */
    private void translated() throws Exception {
        String texts =
                fleet.said("texts", "--language", "de", "--fleet", fleet.root().toString(), "plover");
        String german = texts.replaceFirst(
                "(of: switch/pump/name\\n    source: \"[0-9a-f]{12}\"\\n    )# text:", "$1text: Pumpenschalter");
        assertThat(german).isNotEqualTo(texts);
        DemoFleet.write(fleet.file(TEXTS), german);
    }

    @Test
    void whatIsTranslatedIsReadEverywhereAndTheRestSaysWhatItIs() throws Exception {
        translated();

        assertThat(fleet.published())
                .doesNotContain("error:", "stale-translation")
                .contains("Published");
        Document page = fleet.page("switch/pump.html");
        assertThat(page.select("h1").text()).isEqualTo("Pumpenschalter");
        assertThat(page.select("h1").attr("lang")).isEmpty();
        assertThat(page.select(".facts dd[lang]").eachAttr("lang")).isNotEmpty().containsOnly("en-US");
        assertThat(page.select(".mark.foreign").text()).isEqualTo("Parts of this page are not in your language yet.");
        assertThat(fleet.page("switches.html").select("li a"))
                .extracting(Element::ownText)
                .contains("Pumpenschalter");
        assertThat(fleet.page("do/open-the-bed.html").text()).contains("Pumpenschalter");
    }

    @Test
    void ofAnotherTextItIsToldAndNotRead() throws Exception {
        translated();
        Path unit = fleet.file("units/plover/unit.yaml");
        String written = Files.readString(unit);
        String name = written.replaceFirst("(?s).*\\n( *- id: pump\\n +name: )([^\\n]*)\\n.*", "$1$2");
        Files.writeString(unit, written.replace(name, name + " and lamp"));

        assertThat(fleet.published())
                .contains("warning: `switch/pump/name` has changed since it was translated into `de`")
                .contains("help: Translate what is new, then write `source: ");
        assertThat(fleet.page("switch/pump.html").select("h1").text()).endsWith("and lamp");
        assertThat(fleet.page("switch/pump.html").select("h1").attr("lang")).isEqualTo("en-US");
    }

    @Test
    void ofAFactThatIsNotThereItIsTold() throws Exception {
        translated();
        Path texts = fleet.file(TEXTS);
        Files.writeString(texts, Files.readString(texts).replace("of: switch/pump/name", "of: switch/pumpe/name"));

        assertThat(fleet.published())
                .contains("error: there is no text `switch/pumpe/name` to be translated")
                .contains("help: did you mean `switch/pump/name`");
    }

    @Test
    void theGlossaryIsTranslatedForAllCoaches() throws Exception {
        DemoFleet.write(
                fleet.file("units/shared/translations/de/facts.yaml"),
                fleet.said("texts", "--language", "de", "--fleet", fleet.root().toString())
                        .replaceFirst(
                                "(of: word/gray-tank/meaning\\n    source: \"[0-9a-f]{12}\"\\n    )# text:",
                                "$1text: Wasser aus Waschbecken und Dusche."));

        assertThat(fleet.published()).doesNotContain("error:").contains("Published");
        assertThat(fleet.page("words.html").select("#word-gray-tank").text())
                .contains("Wasser aus Waschbecken und Dusche.");
        assertThat(fleet.page("words.html").select("[lang=en-US]")).isNotEmpty();
    }

    /** What renters' pages are held against is made of a fleet without all that is for staff. */
    @Test
    void eachFleetIsReadInItsOwnFacts() throws Exception {
        translated();
        DemoFleet one = DemoFleet.of(fleet.root());
        Path facts = fleet.file("units/fleet.yaml");
        Files.writeString(facts, Files.readString(facts).replaceAll("(?m)^name: .*", "name: Another fleet"));
        DemoFleet other = DemoFleet.of(fleet.root());
        Rewording texts = one.check().library().translations().facts();

        assertThat(name(texts, one)).isNotEqualTo("Another fleet");
        assertThat(name(texts, other)).isEqualTo("Another fleet");
    }

    private static String name(Rewording texts, DemoFleet fleet) {
        Fleet all = fleet.check().fleet();
        return texts.in("de", new Coach(all, all.units().get(0))).fleet().name();
    }

    @Test
    void whatCouldNotBeReadIsToldOnce() throws Exception {
        translated();
        Path unit = fleet.file("units/plover/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replaceFirst("- id: pump\\n", "- id: [pump]\n"));

        assertThat(fleet.published()).contains("error:").doesNotContain("Something failed");
    }
}
