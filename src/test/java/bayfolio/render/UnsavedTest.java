package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A phone that keeps nothing: pages are read all the same, and none says that it is kept. */
final class UnsavedTest {
    private static final String STEPS = "dunlin/do/use-water-pump.html";

    @RegisterExtension
    static final OpenSite SITE = new OpenSite(360, 640);

    private String spoilt = "";

    @AfterEach
    void mend() {
        SITE.browser().executeCdpCommand("Storage.overrideQuotaForOrigin", Map.of("origin", origin()));
        if (!spoilt.isEmpty()) {
            SITE.browser().executeCdpCommand("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", spoilt));
        }
    }

    private static String origin() {
        return SITE.origin().replaceFirst("/$", "");
    }

    private void before(String script) {
        spoilt = Objects.toString(SITE.browser()
                .executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", script))
                .get("identifier"));
    }

    private static String said(String page) {
        SITE.browser()
                .executeCdpCommand("Storage.clearDataForOrigin", Map.of("origin", origin(), "storageTypes", "all"));
        SITE.browser().get(SITE.origin() + page);
        new WebDriverWait(SITE.browser(), Duration.ofSeconds(60))
                .until(it -> !it.findElement(By.id("saved")).getText().isEmpty());
        return SITE.browser().findElement(By.id("saved")).getText();
    }

    private static void isRead(String page) {
        assertThat(said(page)).startsWith("Not saved on this phone.");
        assertThat(SITE.browser().findElements(By.cssSelector("#steps .steps > li")))
                .isNotEmpty();
    }

    @Test
    void aWindowOfAMailProgramHasNoWorkers() {
        before("delete Navigator.prototype.serviceWorker;");

        isRead(STEPS);
    }

    @Test
    void aPrivateWindowRefusesThem() {
        before(
                "ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException('refused', 'SecurityError'));");

        isRead(STEPS);
    }

    @Test
    void aPhoneThatIsFullKeepsNothing() {
        SITE.browser().get(SITE.origin() + "index.html");
        SITE.browser()
                .executeCdpCommand("Storage.overrideQuotaForOrigin", Map.of("origin", origin(), "quotaSize", 400_000));

        isRead(STEPS);
        assertThat(SITE.browser().executeAsyncScript("caches.keys().then((all) => arguments[0](all.length))"))
                .as("nothing is half kept")
                .isEqualTo(0L);
    }

    @Test
    void stepsGoOnWhereTheirPlaceCannotBeKept() {
        before("Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };");
        SITE.browser().get(SITE.origin() + STEPS);
        SITE.browser().findElement(By.cssSelector("button.begin")).click();
        SITE.browser().findElement(By.cssSelector(".pace .go")).click();

        assertThat(SITE.browser().findElement(By.cssSelector(".way span")).getText())
                .startsWith("Step 2 /");
    }
}
