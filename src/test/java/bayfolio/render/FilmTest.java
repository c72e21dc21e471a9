package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.TinyFilm;
import bayfolio.render.html.FilmTracks;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A film and its chapters, before a real browser; what the browser reads in a file of cues is what we read in it. */
final class FilmTest {
    private static final String FILM = "dunlin/film/walk-round.html";
    private static final String SERVICE_BAY = "dunlin/compartment/l4-service-bay.html";

    @RegisterExtension
    static final OpenSite SITE = new OpenSite(360, 640);

    @TempDir
    private Path root;

    private static Document page(Path web, String path) throws Exception {
        return Jsoup.parse(Files.readString(web.resolve(path)), "https://handbook.example/" + path);
    }

    private static double now() {
        Object time = SITE.browser().executeScript("return document.querySelector('video').currentTime");
        return ((Number) Objects.requireNonNull(time)).doubleValue();
    }

    private static void waitUntil(String condition) {
        new WebDriverWait(SITE.browser(), Duration.ofSeconds(20))
                .until(it -> Boolean.TRUE.equals(SITE.browser().executeScript("return " + condition)));
    }

    @Test
    void everyPageOfAThingInTheFilmLeadsToItsMoment() throws Exception {
        for (Element chapter : page(DemoFleet.web(), FILM).select(".chapters li")) {
            Element there = Objects.requireNonNull(chapter.selectFirst(".page"));
            String path = there.absUrl("href")
                    .replace("https://handbook.example/", "")
                    .replaceFirst("#.*", "");

            assertThat(page(DemoFleet.web(), path).select("a[href$=#" + chapter.id() + "]"))
                    .as(path)
                    .hasSize(1)
                    .first()
                    .extracting(link -> link.absUrl("href"))
                    .isEqualTo("https://handbook.example/" + FILM + "#" + chapter.id());
        }
    }

    @Test
    void whoComesFromThePageOfAThingSeesItsMoment() {
        SITE.browser().get(SITE.origin() + SERVICE_BAY);
        SITE.browser()
                .executeScript(
                        "document.querySelector(\"a[href*='/film/walk-round']\").scrollIntoView({block: 'center'})");
        SITE.browser()
                .findElement(By.cssSelector("a[href*='/film/walk-round']"))
                .click();

        waitUntil("document.querySelector('video').readyState > 1 && !document.querySelector('video').seeking");
        assertThat(now()).isEqualTo(47);
        assertThat(SITE.browser().executeScript("return document.querySelector('video').paused"))
                .as("nothing runs before somebody asks for it")
                .isEqualTo(true);
    }

    @Test
    void aTapOnAChapterLetsTheFilmRunFromThere() {
        SITE.browser().get(SITE.origin() + FILM);
        SITE.browser().executeScript("document.querySelectorAll('.moment')[3].scrollIntoView({block: 'center'})");
        SITE.browser().findElements(By.cssSelector(".moment")).get(3).click();

        waitUntil("document.querySelector('video').currentTime > 23");
        assertThat(now()).isBetween(23.0, 28.0);
        assertThat(SITE.browser().findElements(By.cssSelector(".chapters [aria-current=true] span")))
                .extracting(it -> it.getText())
                .containsExactly("R4 Furnace");
    }

    @Test
    void withoutAScriptAChapterIsALinkIntoTheFilm() throws Exception {
        Element moment = Objects.requireNonNull(page(DemoFleet.web(), FILM).selectFirst(".moment"));

        // Media Fragments URI 1.0, 4.2.1: a moment in normal play time.
        assertThat(moment.absUrl("href")).isEqualTo("https://handbook.example/dunlin/films/walk-round.mp4#t=4");
    }

    @Test
    void aFilmThatDoesNotComeIsNoBlackFrame() throws Exception {
        Path web = published("WEBVTT\n\nl4-service-bay\n00:01.000 --> 00:02.000\nGloves on.\n");
        Files.delete(web.resolve("dunlin/films/walk-round.mp4"));
        try (SiteServer server = new SiteServer(web)) {
            SITE.browser().get(server.origin() + FILM);
            assertThat(SITE.browser().findElement(By.cssSelector(".film .lost")).isDisplayed())
                    .isFalse();
            SITE.browser().findElement(By.cssSelector(".moment")).click();

            new WebDriverWait(SITE.browser(), Duration.ofSeconds(20))
                    .until(it -> it.findElement(By.cssSelector(".film .lost")).isDisplayed());
        }
    }

    @Test
    void aBrowserReadsTheSameCues() throws Exception {
        String written = "\ufeffWEBVTT - a walk round\r\nKind: chapters\r\n\r\n"
                + "NOTE not shown --\r\nnor this\r\n\r\n"
                + "l4-service-bay\r\n00:00:01.500 --> 00:00:02.250 line:80% align:start\r\n"
                + "Water &amp; waste,\r\n<v Yard crew>side <b>by</b> side</v>\r\n\r\n\r\n"
                + "l5-cord\r\n  00:02.250\t-->\t00:59.999  \r\n1 &lt; 2\r\n\r\n"
                + "NOTE\r\n\r\nl1-fuel-door\r\n01:00:00.000 --> 100:00:00.000\r\n";
        Path web = published(written.replace("\nKind: chapters\r\n", "\n"));
        Document page = page(web, FILM);
        List<String> ours = new ArrayList<>();
        page.select(".chapters li")
                .forEach(li -> ours.add(Objects.requireNonNull(li.selectFirst(".moment"))
                                .attr("data-from") + " " + li.select("p").text()));
        Files.writeString(web.resolve("dunlin/films/written.vtt"), written.replace("\nKind: chapters\r\n", "\n"));
        try (SiteServer server = new SiteServer(web)) {
            List<String> theirs = cues(server.origin() + FILM, "../films/written.vtt");
            List<String> givenOut = cues(server.origin() + FILM, "../films/walk-round-chapters.vtt");

            assertThat(theirs)
                    .containsExactly(
                            "l4-service-bay 1.5 2.25 Water & waste, side by side",
                            "l5-cord 2.25 59.999 1 < 2",
                            "l1-fuel-door 3600 360000 ");
            assertThat(ours).containsExactly("1.5 Water & waste, side by side", "2.25 1 < 2", "3600 ");
            assertThat(givenOut)
                    .containsExactly(
                            "film.compartment-l4-service-bay 1.5 2.25 L4 Service bay",
                            "film.compartment-l5-cord 2.25 59.999 L5 Cord",
                            "film.compartment-l1-fuel-door 3600 360000 L1 Fuel door");
        }
    }

    /** What is written beside captions is for whoever writes them. */
    @Test
    void notesBesideCaptionsAreNotGivenOut() {
        assertThat(
                        FilmTracks.withoutNotes(
                                "WEBVTT\r\n\r\nNOTE ask the yard\r\nfor the key\r\n\r\n1\r\n00:01.000 --> 00:02.000\r\nHello\r\n"))
                .isEqualTo("WEBVTT\n\n1\n00:01.000 --> 00:02.000\nHello\n");
    }

    /** As the browser reads a file of cues: name, begin, end, text. */
    private static List<String> cues(String page, String file) {
        SITE.browser().get(page);
        Object cues = SITE.browser().executeAsyncScript("""
                        const done = arguments[1];
                        const track = document.createElement("track");
                        track.src = arguments[0];
                        track.kind = "chapters";
                        document.querySelector("video").append(track);
                        track.track.mode = "hidden";
                        track.onerror = () => done(["not read"]);
                        track.onload = () => done([...track.track.cues].map((cue) =>
                          `${cue.id} ${cue.startTime} ${cue.endTime} ${cue.getCueAsHTML().textContent.replace("\\n", " ")}`));
                        """, file);
        return ((List<?>) Objects.requireNonNull(cues))
                .stream().map(Objects::toString).toList();
    }

    /** One coach with a film of which these are the chapters. */
    private Path published(String chapters) throws Exception {
        Path fleet = root.resolve("fleet");
        for (Map.Entry<String, byte[]> file :
                DemoFleet.files(Path.of("units/dunlin")).entrySet()) {
            DemoFleet.write(fleet.resolve("units/dunlin").resolve(file.getKey()), file.getValue());
        }
        // One that does not tell how long it is.
        DemoFleet.write(fleet.resolve("units/dunlin/films/walk-round.mp4"), TinyFilm.of(0, false));
        DemoFleet.write(fleet.resolve("units/fleet.yaml"), Files.readAllBytes(Path.of("units/fleet.yaml")));
        DemoFleet.write(fleet.resolve("units/dunlin/films/walk-round.vtt"), chapters);
        DemoFleet.of(fleet).publish(root.resolve("out"), "dunlin");
        return root.resolve("out/web").toRealPath();
    }
}
