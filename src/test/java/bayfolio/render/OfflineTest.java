package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.NoSuchElementException;
import org.openqa.selenium.StaleElementReferenceException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A handbook that was opened once, in a real browser, with its server stopped after that. */
final class OfflineTest {
    private static final String EVERY_FILE = """
            const done = arguments[arguments.length - 1];

            (async () => {
              const text = await (await caches.open((await caches.keys())[0])).keys();
              const lost = [];
              for (const request of text) {
                try {
                  const answer = await fetch(request.url + '?from=mail');
                  if (!answer.ok || answer.redirected) lost.push(request.url);
                } catch (gone) {
                  lost.push(request.url);
                }
              }
              done([text.length, lost.join(' ')]);
            })();
            """;

    @Test
    void itIsReadWithoutASignalAndTakesTheNextEditionAtATap(@TempDir Path folder) throws Exception {
        Path served = folder.resolve("served");
        Path site = served.resolve("books/of/ours");
        for (var file : DemoFleet.pages().entrySet()) {
            // Wherever a host puts it.
            DemoFleet.write(site.resolve(file.getKey()), file.getValue());
        }
        ChromeDriver browser = Browser.open(folder.resolve("profile"));
        try {
            String origin;
            try (SiteServer server = new SiteServer(served)) {
                origin = server.origin() + "books/of/ours/";
                browser.get(origin + "dunlin/");
                WebDriverWait wait = new WebDriverWait(browser, Duration.ofSeconds(60));
                // A page that is read anew takes the element away while it is looked at.
                wait.ignoring(StaleElementReferenceException.class, NoSuchElementException.class);
                wait.until(it -> it.findElement(By.id("saved")).getText().contains("Saved on this phone"));

                Path worker = site.resolve("dunlin/worker.js");
                Files.writeString(worker, Files.readString(worker).replaceFirst("EDITION = \"", "EDITION = \"next"));
                // A host that is in the middle of it: the script is there, and the texts are still the old ones.
                browser.get(origin + "dunlin/words.html");
                browser.executeAsyncScript("const done = arguments[0]; navigator.serviceWorker.getRegistration()"
                        + ".then((it) => it.update()).catch(() => {}).then(done)");
                wait.until(it -> Boolean.TRUE.equals(browser.executeAsyncScript(
                        "const done = arguments[0]; navigator.serviceWorker.getRegistration()"
                                + ".then((it) => done(!it.installing && !it.waiting))")));
                assertThat(browser.executeAsyncScript("caches.keys().then(arguments[0])"))
                        .asList()
                        .singleElement()
                        .asString()
                        .doesNotContain("next");
                assertThat(browser.findElement(By.id("saved")).getText()).contains("Saved on this phone");
                Path kept = site.resolve("dunlin/kept.json");
                JsonObject bundle =
                        JsonParser.parseString(Files.readString(kept)).getAsJsonObject();
                bundle.addProperty("edition", "next" + bundle.get("edition").getAsString());
                JsonObject texts = bundle.getAsJsonObject("files");
                texts.addProperty(
                        "words.html", texts.get("words.html").getAsString().replace("<h1>", "<h1>Mended: "));
                Files.writeString(kept, bundle.toString());
                browser.get(origin + "dunlin/words.html");
                assertThat(browser.findElement(By.tagName("h1")).getText()).doesNotContain("Mended");
                wait.until(
                        it -> !it.findElements(By.cssSelector("#saved button")).isEmpty());
                assertThat(browser.findElement(By.tagName("h1")).getText()).doesNotContain("Mended");
                browser.executeScript("document.querySelector('#saved button').click()");
                wait.until(it -> it.findElement(By.tagName("h1")).getText().contains("Mended"));
                wait.until(it -> it.findElement(By.id("saved")).getText().contains("Saved on this phone"));
                assertThat(browser.executeAsyncScript("caches.keys().then(arguments[0])"))
                        .asList()
                        .singleElement()
                        .asString()
                        .contains("next");
            }

            browser.executeCdpCommand("Network.enable", Map.of());
            browser.executeCdpCommand(
                    "Network.emulateNetworkConditions",
                    Map.of("offline", true, "latency", 0, "downloadThroughput", 0, "uploadThroughput", 0));
            browser.get(origin + "dunlin/?from=mail");
            new WebDriverWait(browser, Duration.ofSeconds(30))
                    .ignoring(StaleElementReferenceException.class)
                    .until(it -> it.findElement(By.id("saved"))
                            .getText()
                            .startsWith("No signal: this is the copy on this phone"));
            assertThat(browser.findElement(By.tagName("h1")).getText()).isEqualTo("Dunlin");
            List<?> found = (List<?>) Objects.requireNonNull(browser.executeAsyncScript(EVERY_FILE));
            assertThat(found.get(1)).isEqualTo("");
            long pages = DemoFleet.files(site.resolve("dunlin")).keySet().stream()
                    .filter(path -> path.endsWith(".html") || path.endsWith(".svg"))
                    .count();
            assertThat(((Number) Objects.requireNonNull(found.get(0))).longValue())
                    .isGreaterThan(pages);
            // A picture of a page is there, too, in the one size that is kept.
            browser.get(origin + "dunlin/compartment/l4-service-bay.html");
            new WebDriverWait(browser, Duration.ofSeconds(30))
                    .until(it -> Boolean.TRUE.equals(browser.executeScript("return [...document.images]"
                            + ".every((it) => { it.loading = 'eager'; return it.complete && it.naturalWidth > 0; })")));
            browser.get(origin + "dunlin/nowhere.html");
            assertThat(browser.findElements(By.cssSelector("main a[href*='do/']")))
                    .isNotEmpty();
        } finally {
            browser.quit();
        }
    }
}
