package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.cli.Bayfolio;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A procedure of the small fleet in another language. */
final class TranslationTest {
    private static final String GERMAN = """
            ---
            of: open-the-bed
            title: Das Bett aufklappen
            source: %s
            ---
            Stell dich ohne Schuhe an die Hecktür: [](door:rear-doors). Das Bett nimmt die ganze Breite ein.

            1. Schalte die Pumpe aus: [](switch:pump).

            > **CAUTION** Das Brett fällt, sobald der Gurt ab ist. Es quetscht Finger. Halte es mit einer Hand.

            1. Nimm den Gurt ab und lass das Brett herunter.
            1. Leg die Polster darauf, das lange ans Heck.

            ## Done when
            Das Brett liegt auf beiden Leisten, der Frischwassertank (%s) noch darunter.

            ## If not
            Ruf an: [](phone:hours).
            """;
    private static final Pattern DIGEST = Pattern.compile("write `source: ([0-9a-f]{12})`");

    @TempDir
    Path folder;

    private Path fleet = Path.of("");

    @BeforeEach
    void german() throws Exception {
        fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path facts = fleet.resolve("units/fleet.yaml");
        Files.writeString(facts, Files.readString(facts).replaceAll("(?m)^languages: .*", "languages: [de-DE]"));
        DemoFleet.write(fleet.resolve("themes/harbor/words-de.properties"), "steps=Schritte\n");
    }

    private void translated(String digest, String capacity) throws Exception {
        DemoFleet.write(
                fleet.resolve("units/plover/translations/de/procedures/bett.md"), GERMAN.formatted(digest, capacity));
    }

    /** What the program says of the fleet; it publishes as well as it can. */
    private String published() {
        StringWriter said = new StringWriter();
        Bayfolio.run(
                new PrintWriter(said),
                new PrintWriter(said),
                "publish",
                "--fleet",
                fleet.toString(),
                "--out",
                folder.resolve("out").toString());
        return said.toString();
    }

    private Document page(String path) throws Exception {
        return Jsoup.parse(Files.readString(folder.resolve("out/web/plover/" + path)));
    }

    private String digest() throws Exception {
        translated("000000000000", "{{tank.fresh.capacity}}");
        Matcher told = DIGEST.matcher(published());
        assertThat(told.find()).isTrue();
        return told.group(1);
    }

    @Test
    void readersGetItInTheirLanguageEverywhere() throws Exception {
        translated(digest(), "{{tank.fresh.capacity}}");

        assertThat(published()).doesNotContain("error:").contains("Published");
        Document page = page("do/open-the-bed.html");
        assertThat(page.select("h1").text()).isEqualTo("Das Bett aufklappen");
        assertThat(page.select("[lang]").eachAttr("lang")).containsExactly("de-DE");
        assertThat(page.select(".foreign")).isEmpty();
        assertThat(page.select("#steps h2").text()).isEqualTo("Schritte");
        assertThat(page.select("#done-when").text()).contains("Leisten", "L");
        assertThat(page("procedures.html").select("li a").eachText()).contains("Das Bett aufklappen");
    }

    @Test
    void ofAnOlderTextItIsNotShownButTheTextAsItIsWritten() throws Exception {
        String digest = digest();
        translated(digest, "{{tank.fresh.capacity}}");
        Path source = fleet.resolve("units/plover/procedures/open-the-bed.md");
        Files.writeString(
                source, Files.readString(source).replace("the long one at the rear", "the long one in front"));

        assertThat(published()).contains("warning: `open-the-bed` has changed since it was translated into `de`");
        Document page = page("do/open-the-bed.html");
        assertThat(page.select("h1").text()).isEqualTo("Open the bed");
        assertThat(page.select("h1").attr("lang")).isEqualTo("en-US");
        assertThat(page.select(".foreign").text()).isEqualTo("This text is not in your language yet.");
    }

    @Test
    void whatItRefersToMustBeThere() throws Exception {
        translated(digest(), "{{tank.gray.capacity}}");

        assertThat(published())
                .contains(
                        "units/plover/translations/de/procedures/bett.md:16:59: error: no tank of this coach has the role `gray`")
                .contains("Nothing was published.");
    }
}
