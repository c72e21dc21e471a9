package bayfolio.start;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Jvm;
import bayfolio.Main;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty folder to a published first coach, by the commands of the README, each in a program of its own. */
class FirstCoachTest {
    /** What nobody could know before the walk. */
    private static final Map<String, String> FOUND = Map.of(
            "number", "R1",
            "size / measured-on", "2026-05-02",
            "gauges / smoke-alarm / replace-by", "2031-05-01",
            "gauges / co-alarm / replace-by", "2031-05-01");

    @TempDir
    Path folder;

    private record Said(int exit, String text) {}

    private Said run(String... words) throws Exception {
        List<String> all = Stream.concat(Stream.of(words), Stream.of("--fleet", folder.toString()))
                .toList();
        Process process = Jvm.start(List.of("-Djava.awt.headless=true"), Main.class, all.toArray(String[]::new));
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Said(process.waitFor(), text);
    }

    @Test
    void anEmptyFolderBecomesAPublishedCoach() throws Exception {
        assertThat(run("add", "--fleet-name", "Reed Coaches", "--country", "us"))
                .satisfies(said -> assertThat(said.exit).isEqualTo(2))
                .satisfies(said -> assertThat(said.text)
                        .startsWith("A fleet needs --base-address, --language, --phone, --after-hours-phone,"));
        Said fleet = run(
                "add",
                "--fleet-name",
                "Reed Coaches",
                "--base-address",
                "https://handbook.reed.example",
                "--country",
                "us",
                "--language",
                "en-US",
                "--phone",
                "+1 555-0142",
                "--after-hours-phone",
                "+1 555-0143",
                "--roadside-phone",
                "+1 555-0144",
                "--address",
                "2 Reed Lane");
        assertThat(fleet.text).startsWith("Written: units/fleet.yaml.");
        assertThat(folder.resolve(".gitattributes")).hasContent("units/addresses.ledger merge=union");
        assertThat(run("check")).isEqualTo(new Said(0, ""));
        assertThat(run("add", "heron").exit).isZero();

        Said before = run("check", "heron");
        assertThat(before.exit).isEqualTo(1);
        assertThat(before.text.lines().filter(line -> line.contains("error: ")))
                .hasSizeGreaterThan(10)
                .allMatch(line -> line.endsWith("[to-be-confirmed]"));
        assertThat(run("publish", "heron").exit).isEqualTo(1);
        assertThat(folder.resolve("site-out")).doesNotExist();

        assertThat(run("survey", "heron").exit).isZero();
        Document page = Jsoup.parse(folder.resolve("site-out/survey/heron/survey.html"));
        Path answers = Files.writeString(
                folder.resolve("survey-heron.json"), answered(page).toString());
        Said taken = run("take", answers.toString(), "--yes");
        assertThat(taken.text).contains("Taken: ");
        assertThat(taken.exit).as(taken.text).isZero();

        assertThat(run("check", "heron")).isEqualTo(new Said(0, ""));
        Said published = run("publish", "heron");
        assertThat(published.exit).as(published.text).isZero();
        assertThat(folder.resolve("site-out/web/heron/index.html")).exists();
        assertThat(folder.resolve("site-out/web/heron/print/book-letter.pdf")).exists();
    }

    /** As the page gives it out: all is as stated, but what was not. */
    private static JsonObject answered(Document page) {
        JsonArray facts = new JsonArray();
        JsonObject was = JsonParser.parseString(
                        page.select("script[type=application/json]").get(0).data())
                .getAsJsonObject()
                .getAsJsonObject("was");
        for (Element ask : page.select("#asked .ask")) {
            String path = ask.attr("data-path");
            JsonObject fact = new JsonObject();
            fact.addProperty("path", path);
            fact.addProperty("when", "2026-05-02T09:30:00.000Z");
            if (was.has(path)) {
                fact.add("was", was.get(path));
            }
            fact.addProperty("now", was.has(path) ? was.get(path).getAsString() : FOUND.get(path));
            facts.add(fact);
        }
        JsonObject all = new JsonObject();
        all.addProperty("form", "bayfolio-survey-1");
        all.addProperty("coach", "heron");
        all.addProperty("edition", "0123456789ab");
        all.addProperty("by", "yard");
        all.add("facts", facts);
        all.add("compared", new JsonArray());
        all.add("pictures", new JsonArray());
        return all;
    }
}
