package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
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

    private GermanFleet fleet = new GermanFleet(Path.of(""));

    @BeforeEach
    void german() throws Exception {
        fleet = GermanFleet.in(folder);
    }

    private void translated(String digest, String capacity) throws Exception {
        DemoFleet.write(
                fleet.file("units/plover/translations/de/procedures/bett.md"), GERMAN.formatted(digest, capacity));
    }

    private String digest() throws Exception {
        translated("000000000000", "{{tank.fresh.capacity}}");
        Matcher told = DIGEST.matcher(fleet.published());
        assertThat(told.find()).isTrue();
        return told.group(1);
    }

    @Test
    void readersGetItInTheirLanguageEverywhere() throws Exception {
        translated(digest(), "{{tank.fresh.capacity}}");

        assertThat(fleet.published()).doesNotContain("error:").contains("Published");
        Document page = fleet.page("do/open-the-bed.html");
        assertThat(page.select("h1").text()).isEqualTo("Das Bett aufklappen");
        assertThat(page.select("[lang]").eachAttr("lang")).containsExactly("de-DE");
        assertThat(page.select(".foreign")).isEmpty();
        assertThat(page.select("#steps h2").text()).isEqualTo("Schritte");
        assertThat(page.select("#done-when").text()).contains("Leisten", "L");
        assertThat(fleet.page("procedures.html").select("li a"))
                .extracting(Element::ownText)
                .contains("Das Bett aufklappen");
    }

    @Test
    void ofAnOlderTextItIsNotShownButTheTextAsItIsWritten() throws Exception {
        String digest = digest();
        translated(digest, "{{tank.fresh.capacity}}");
        Path source = fleet.file("units/plover/procedures/open-the-bed.md");
        Files.writeString(
                source, Files.readString(source).replace("the long one at the rear", "the long one in front"));

        assertThat(fleet.published()).contains("warning: `open-the-bed` has changed since it was translated into `de`");
        Document page = fleet.page("do/open-the-bed.html");
        assertThat(page.select("h1").text()).isEqualTo("Open the bed");
        assertThat(page.select("h1").attr("lang")).isEqualTo("en-US");
        assertThat(page.select(".foreign").text()).isEqualTo("This text is not in your language yet.");
    }

    @Test
    void whatItRefersToMustBeThere() throws Exception {
        translated(digest(), "{{tank.gray.capacity}}");

        assertThat(fleet.published())
                .contains(
                        "units/plover/translations/de/procedures/bett.md:16:59: error: no tank of this coach has the role `gray`")
                .contains("Nothing was published.");
    }
}
