package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.cli.Bayfolio;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the small fleet says of its coach, in another language. */
final class FactTranslationTest {
    private static final String TEXTS = "units/plover/translations/de/facts.yaml";

    @TempDir
    Path folder;

    private Path fleet = Path.of("");

    @BeforeEach
    void german() throws Exception {
        fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path facts = fleet.resolve("units/fleet.yaml");
        Files.writeString(facts, Files.readString(facts).replaceAll("(?m)^languages: .*", "languages: [de-DE]"));
        Path unit = fleet.resolve("units/plover/unit.yaml");
        Files.writeString(unit, Files.readString(unit) + "\nwritten-in: en-US\n");
        DemoFleet.write(fleet.resolve("themes/harbor/words-de.properties"), "steps=Schritte\n");
    }

    private String said(String... words) {
        StringWriter said = new StringWriter();
        Bayfolio.run(new PrintWriter(said), new PrintWriter(said), words);
        return said.toString();
    }

    private String published() {
        return said(
                "publish",
                "--fleet",
                fleet.toString(),
                "--out",
                folder.resolve("out").toString());
    }

    private Document page(String path) throws Exception {
        return Jsoup.parse(Files.readString(folder.resolve("out/web/plover/" + path)));
    }

    /** The texts of the pump's switch as a translator hands them in; all others are still to be done. */
    private void translated() throws Exception {
        String texts = said("texts", "--language", "de", "--fleet", fleet.toString(), "plover");
        String german = texts.replaceFirst(
                "(of: switch/pump/name\\n    source: \"[0-9a-f]{12}\"\\n    )# text:", "$1text: Pumpenschalter");
        assertThat(german).isNotEqualTo(texts);
        DemoFleet.write(fleet.resolve(TEXTS), german);
    }

    @Test
    void whatIsTranslatedIsReadEverywhereAndTheRestSaysWhatItIs() throws Exception {
        translated();

        assertThat(published()).doesNotContain("error:", "stale-translation").contains("Published");
        Document page = page("switch/pump.html");
        assertThat(page.select("h1").text()).isEqualTo("Pumpenschalter");
        assertThat(page.select("h1").attr("lang")).isEmpty();
        assertThat(page.select(".facts dd[lang]").eachAttr("lang")).isNotEmpty().containsOnly("en-US");
        assertThat(page.select(".mark.foreign").text()).isEqualTo("Parts of this page are not in your language yet.");
        assertThat(page("switches.html").select("li a").eachText()).contains("Pumpenschalter");
        assertThat(page("do/open-the-bed.html").text()).contains("Pumpenschalter");
    }

    @Test
    void ofAnotherTextItIsToldAndNotRead() throws Exception {
        translated();
        Path unit = fleet.resolve("units/plover/unit.yaml");
        String written = Files.readString(unit);
        String name = written.replaceFirst("(?s).*\\n( *- id: pump\\n +name: )([^\\n]*)\\n.*", "$1$2");
        Files.writeString(unit, written.replace(name, name + " and lamp"));

        assertThat(published())
                .contains("warning: `switch/pump/name` has changed since it was translated into `de`")
                .contains("help: Translate what is new, then write `source: ");
        assertThat(page("switch/pump.html").select("h1").text()).endsWith("and lamp");
        assertThat(page("switch/pump.html").select("h1").attr("lang")).isEqualTo("en-US");
    }

    @Test
    void ofAFactThatIsNotThereItIsTold() throws Exception {
        translated();
        Path texts = fleet.resolve(TEXTS);
        Files.writeString(texts, Files.readString(texts).replace("of: switch/pump/name", "of: switch/pumpe/name"));

        assertThat(published())
                .contains("error: there is no text `switch/pumpe/name` to be translated")
                .contains("help: did you mean `switch/pump/name`");
    }

    @Test
    void theGlossaryIsTranslatedForAllCoaches() throws Exception {
        DemoFleet.write(
                fleet.resolve("units/shared/translations/de/facts.yaml"),
                said("texts", "--language", "de", "--fleet", fleet.toString())
                        .replaceFirst(
                                "(of: word/gray-tank/meaning\\n    source: \"[0-9a-f]{12}\"\\n    )# text:",
                                "$1text: Wasser aus Waschbecken und Dusche."));

        assertThat(published()).doesNotContain("error:").contains("Published");
        assertThat(page("words.html").select("#word-gray-tank").text()).contains("Wasser aus Waschbecken und Dusche.");
        assertThat(page("words.html").select("[lang=en-US]")).isNotEmpty();
    }
}
