package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;

/**
 * A page with its style comes in the first flight of a connection: ten packets of 1,460 bytes.
 *
 * @see <a href="https://www.rfc-editor.org/rfc/rfc6928">RFC 6928, the initial window of TCP</a>
 */
final class PageWeightTest {
    private static final int FIRST_FLIGHT = 14_600;

    @Test
    void everyPageComesInTheFirstFlight() {
        Map<String, byte[]> files = DemoFleet.files(DemoFleet.web());
        Map<String, Integer> heavy = new TreeMap<>();
        int[] pages = {0};
        files.forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                pages[0]++;
                int weight = packed(bytes);
                Document page = Jsoup.parse(new String(bytes, StandardCharsets.UTF_8));
                for (String style : page.select("link[rel=stylesheet]").eachAttr("href")) {
                    weight += packed(Objects.requireNonNull(files.get(style.replaceAll("^/|[.][.]/", ""))));
                }
                if (weight >= FIRST_FLIGHT) {
                    heavy.put(path, weight);
                }
            }
        });

        assertThat(heavy).isEmpty();
        assertThat(pages[0]).isGreaterThan(1000);
    }

    /**
     * What a phone loads to keep a coach, packed as hosts pack texts: some ten seconds at 400 kbit/s. Our own bar; all that it
     * then holds is what iOS and Android give any site.
     */
    @Test
    void aCoachIsKeptWithinHalfAMegabyte() {
        Map<String, byte[]> files = DemoFleet.files(DemoFleet.web());
        Map<String, Integer> loaded = new TreeMap<>();
        files.forEach((path, bytes) -> {
            if (path.endsWith("/worker.js")) {
                String coach = path.substring(0, path.indexOf('/') + 1);
                byte[] texts = Objects.requireNonNull(files.get(coach + "kept.json"));
                int packed = packed(bytes) + packed(texts);
                int kept = texts.length;
                Matcher picture =
                        Pattern.compile("\"([^\"]+\\.jpg)\"").matcher(new String(bytes, StandardCharsets.UTF_8));
                while (picture.find()) {
                    int size = Objects.requireNonNull(files.get(coach + picture.group(1))).length;
                    packed += size;
                    kept += size;
                }
                loaded.put(coach, packed);
                assertThat(kept).as(coach).isLessThan(5_000_000);
            }
        });
        System.out.println("PageWeightTest, bytes loaded to keep a coach: " + loaded);

        assertThat(loaded).hasSameSizeAs(DemoFleet.coaches());
        assertThat(loaded.values()).allSatisfy(size -> assertThat(size).isLessThan(500_000));
    }

    private static int packed(byte[] bytes) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return packed.size();
    }
}
