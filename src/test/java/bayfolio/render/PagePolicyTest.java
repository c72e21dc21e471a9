package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a page may do, and what it tells to others: nothing. */
final class PagePolicyTest {
    private static final Map<String, byte[]> FILES = DemoFleet.pages();

    private interface Looked {
        void at(String path, Document page);
    }

    private static void everyPage(Map<String, byte[]> files, Looked looked) {
        files.forEach((path, bytes) -> {
            if (path.endsWith(".html")) {
                looked.at(path, Jsoup.parse(new String(bytes, StandardCharsets.UTF_8)));
            }
        });
    }

    @Test
    void nothingIsAllowedThatIsNotOfTheSite() {
        everyPage(FILES, (path, page) -> {
            String policy =
                    page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
            List<String> rules = Arrays.asList(policy.split("; ", -1));
            assertThat(rules).as(path).contains("default-src 'none'", "form-action 'none'", "base-uri 'none'");
            assertThat(rules).as(path).allMatch(rule -> rule.endsWith(" 'self'") || rule.endsWith(" 'none'"));
            // It holds from where it stands.
            Element first = Objects.requireNonNull(page.head().child(1));
            assertThat(first.attr("http-equiv")).as(path).isEqualTo("Content-Security-Policy");
            assertThat(page.select("meta[name=referrer]").attr("content"))
                    .as(path)
                    .isEqualTo("no-referrer");
            assertThat(page.select("meta[name=robots]").attr("content"))
                    .as(path)
                    .isEqualTo("noindex");
        });
    }

    @Test
    void noStyleAndNoScriptStandsInAPage() {
        everyPage(FILES, (path, page) -> {
            assertThat(page.select("style, script:not([src])")).as(path).isEmpty();
            for (Element element : page.getAllElements()) {
                for (Attribute attribute : element.attributes()) {
                    assertThat(attribute.getKey())
                            .as("%s: %s", path, element.tagName())
                            .isNotEqualTo("style")
                            .doesNotStartWith("on");
                }
            }
        });
    }

    @Test
    void aFleetMayWantToBeFound(@TempDir Path folder) throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path facts = fleet.resolve("units/fleet.yaml");
        Files.writeString(facts, Files.readString(facts) + "\nfindable: yes\n");

        DemoFleet.of(fleet).publish(folder.resolve("out"));

        everyPage(
                DemoFleet.files(folder.resolve("out/web")),
                (path, page) ->
                        assertThat(page.select("meta[name=robots]")).as(path).isEmpty());
    }

    /** Then it may be kept for good by whoever fetched it. */
    @Test
    void otherAssetsHaveAnotherAddress(@TempDir Path folder) throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        DemoFleet.of(fleet).publish(folder.resolve("out"));
        String before = style(folder.resolve("out/web/index.html"));
        DemoFleet.write(fleet.resolve("themes/harbor/assets/style.css"), "body { color: red }\n");

        DemoFleet.of(fleet).publish(folder.resolve("out"));

        assertThat(style(folder.resolve("out/web/index.html"))).isNotEqualTo(before);
        assertThat(folder.resolve("out/web").resolve(before)).doesNotExist();
    }

    /** RFC 9111, 5.2.2, and RFC 8246: only what has another address when it is another may be kept without asking. */
    @Test
    void aHostIsToldWhatMayBeKept() {
        Map<String, String> rules = new LinkedHashMap<>();
        for (String rule :
                new String(Objects.requireNonNull(FILES.get("_headers")), StandardCharsets.UTF_8).split("\n\n")) {
            rules.put(rule.substring(0, rule.indexOf('\n')), rule);
        }
        FILES.keySet().stream().filter(path -> !path.equals("_headers")).forEach(path -> {
            List<String> said = rules.entrySet().stream()
                    .filter(rule ->
                            ("/" + path).matches(Pattern.quote(rule.getKey()).replace("*", "\\E.*\\Q")))
                    .flatMap(rule -> rule.getValue().lines().skip(1))
                    .map(String::strip)
                    .toList();
            assertThat(said)
                    .as(path)
                    .containsExactlyInAnyOrder(
                            "Content-Security-Policy: frame-ancestors 'none'",
                            "Referrer-Policy: no-referrer",
                            "X-Content-Type-Options: nosniff",
                            "Cache-Control: "
                                    + (path.matches("assets/[0-9a-f]{12}/.*")
                                            ? "public, max-age=31536000, immutable"
                                            : "no-cache"));
        });
    }

    private static String style(Path page) throws Exception {
        return Jsoup.parse(Files.readString(page))
                .select("link[rel=stylesheet]")
                .attr("href");
    }

    /** By the Web Application Manifest of the W3C, and what browsers ask of it. */
    @Test
    void aCoachMayStandOnTheFirstScreenOfAPhone() throws Exception {
        for (String coach : DemoFleet.looked()) {
            JsonObject manifest = JsonParser.parseString(new String(
                            Objects.requireNonNull(FILES.get(coach + "/manifest.json")), StandardCharsets.UTF_8))
                    .getAsJsonObject();
            assertThat(manifest.keySet()).contains("name", "short_name", "start_url", "display", "icons");
            assertThat(FILES)
                    .containsKey(coach + "/" + manifest.get("start_url").getAsString());
            int drawn = 0;
            for (JsonElement icon : manifest.getAsJsonArray("icons")) {
                String src = icon.getAsJsonObject().get("src").getAsString();
                byte[] bytes = FILES.get(src.replace("../", ""));
                assertThat(bytes).as(src).isNotNull();
                if (src.endsWith(".png")) {
                    int width = ImageIO.read(new ByteArrayInputStream(Objects.requireNonNull(bytes)))
                            .getWidth();
                    assertThat(icon.getAsJsonObject().get("sizes").getAsString())
                            .isEqualTo(width + "x" + width);
                    drawn++;
                }
            }
            assertThat(drawn).isEqualTo(3);
            assertThat(manifest.getAsJsonArray("icons").asList())
                    .as("one that a phone may cut round")
                    .filteredOn(icon ->
                            icon.getAsJsonObject().get("purpose").getAsString().equals("maskable"))
                    .hasSize(1);
        }
        everyPage(FILES, (path, page) -> {
            if (path.contains("/")) {
                assertThat(page.select("link[rel=manifest]")).as(path).hasSize(1);
            }
        });
    }
}
