package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * At 400 kbit/s and 400 ms, as at a campsite: nothing moves under the thumb while a page comes. When its first words are seen
 * is printed, and asserted nowhere.
 *
 * @see <a href="https://web.dev/articles/cls">Cumulative layout shift</a>
 */
final class SlowNetworkTest {
    /** Our own bar; a tenth is what browsers call good. */
    private static final double MOST = 0.02;

    private static final List<String> PAGES = List.of(
            "index.html",
            "dunlin/index.html",
            "dunlin/now/dark.html",
            "dunlin/do/dump-tanks-gravity.html",
            "dunlin/do/check-before-driving.html",
            "dunlin/do/connect-smaller-supply.html",
            "dunlin/do/escape-fire.html",
            "dunlin/compartment/l4-service-bay.html",
            "dunlin/film/walk-round.html",
            "dunlin/worked-out/a-night.html",
            "dunlin/walk-round.html",
            "dunlin/a-z.html",
            "dunlin/trouble/no-12v.html",
            "dunlin/numbers.html");

    private static final String WATCH = """
            window.moved = [];
            new PerformanceObserver((list) => list.getEntries().forEach((entry) => {
              if (!entry.hadRecentInput) {
                window.moved.push([entry.value, ...entry.sources.map((it) => it.node ? (it.node.id || it.node.className || it.node.nodeName) : "")]);
              }
            })).observe({ type: "layout-shift", buffered: true });
            """;

    @RegisterExtension
    static final OpenSite SITE = new OpenSite(360, 640);

    @Test
    void nothingMovesWhileAPageComes() {
        SITE.browser().executeCdpCommand("Network.enable", Map.of());
        SITE.browser().executeCdpCommand("Network.setCacheDisabled", Map.of("cacheDisabled", true));
        SITE.browser().executeCdpCommand("Network.setBypassServiceWorker", Map.of("bypass", true));
        SITE.browser()
                .executeCdpCommand(
                        "Network.emulateNetworkConditions",
                        Map.of(
                                "offline",
                                false,
                                "latency",
                                400,
                                "downloadThroughput",
                                50_000,
                                "uploadThroughput",
                                50_000));
        SITE.browser().executeCdpCommand("Page.addScriptToEvaluateOnNewDocument", Map.of("source", WATCH));
        Map<String, Double> moved = new TreeMap<>();
        Map<String, Object> seen = new TreeMap<>();
        Map<String, Object> what = new TreeMap<>();
        for (String page : PAGES) {
            SITE.browser().get(SITE.origin() + page);
            new WebDriverWait(SITE.browser(), Duration.ofSeconds(60))
                    .until(
                            it -> Boolean.TRUE.equals(
                                    SITE.browser()
                                            .executeScript(
                                                    "return document.readyState === 'complete' && performance.getEntriesByType('paint').length > 1")));
            Object all = SITE.browser()
                    .executeAsyncScript(
                            "const done = arguments[0]; requestAnimationFrame(() => setTimeout(() => done(window.moved.reduce((sum, it) => sum + it[0], 0)), 100))");
            moved.put(page, ((Number) Objects.requireNonNull(all)).doubleValue());
            what.put(page, SITE.browser().executeScript("return JSON.stringify(window.moved)"));
            seen.put(
                    page,
                    SITE.browser()
                            .executeScript(
                                    "return Math.round(performance.getEntriesByName('first-contentful-paint')[0].startTime)"));
        }
        System.out.println("SlowNetworkTest, milliseconds to the first words: " + seen);

        assertThat(moved)
                .as(what.toString())
                .allSatisfy((page, sum) -> assertThat(sum).isLessThanOrEqualTo(MOST));
    }
}
