package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** The demo fleet in a real browser, as narrow as the smallest phone. */
class BrowserTest {
    /** The width that WCAG 2.2, 1.4.10 Reflow, asks for. */
    private static final int NARROW = 320;

    /** The least target size of WCAG 2.2, 2.5.8. */
    private static final int LEAST_TARGET = 24;

    @RegisterExtension
    static final OpenSite SITE = new OpenSite(NARROW, 640);

    /** One page of each kind, those with the most on them. */
    private static List<String> sample() {
        return List.of(
                "index.html",
                "whimbrel/index.html",
                "whimbrel/walk-round.html",
                "whimbrel/switches.html",
                "whimbrel/numbers.html",
                "whimbrel/compartment/service-bay.html",
                "whimbrel/switch/house-battery-switch.html",
                "dunlin/compartment/i1-electrical-panel.html",
                "whimbrel/connection/city-water-inlet.html",
                "whimbrel/worked-out.html",
                "whimbrel/worked-out/runs-together.html",
                "turnstone/worked-out/water-days.html",
                "whimbrel/do/dump-tanks-gravity.html",
                "whimbrel/do/start-generator.html",
                "whimbrel/words.html",
                "whimbrel/a-z.html",
                "turnstone/index.html",
                "dunlin/switches.html");
    }

    /** In danger nobody scrolls, and nobody follows a link to know what to do. */
    @Test
    void whatIsReadInDangerIsOneScreen() {
        SITE.device(360, 640);
        try {
            List<String> pages = new java.util.ArrayList<>();
            for (Map.Entry<String, byte[]> file : DemoFleet.pages().entrySet()) {
                String page = file.getKey();
                if (page.contains("/do/")) {
                    String html = new String(file.getValue(), StandardCharsets.UTF_8);
                    if (Jsoup.parse(html).body().hasClass("urgent")) {
                        visit(page);
                        pages.add(page);
                        assertThat(number("return document.documentElement.scrollHeight"))
                                .as("height of " + page)
                                .isLessThanOrEqualTo(640);
                        assertThat(number("return document.documentElement.scrollWidth"))
                                .as("width of " + page)
                                .isLessThanOrEqualTo(360);
                        assertThat(SITE.browser().executeScript("""
                                        return [...document.querySelectorAll('#steps li p, .hazard p, section p')]
                                          .map(it => parseFloat(getComputedStyle(it).fontSize))
                                          .reduce((a, b) => Math.min(a, b));
                                        """))
                                .as("smallest letters of " + page)
                                .satisfies(size -> assertThat(((Number) size).doubleValue())
                                        .isGreaterThanOrEqualTo(14));
                        assertThat(SITE.browser().executeScript("""
                                        return [...document.querySelectorAll('main a')]
                                          .map(it => it.getAttribute('href'))
                                          .filter(it => !it.startsWith('tel:') && !it.includes('#')
                                            && !/^\\.\\.\\/(switch|compartment|connection|gauge)\\//.test(it));
                                        """))
                                .as("links to other pages than those of things on " + page)
                                .isEqualTo(List.of());
                    }
                }
            }
            assertThat(pages).hasSizeGreaterThan(5 * 6);
        } finally {
            SITE.device(NARROW, 640);
        }
    }

    @Test
    void noPageScrollsSidewaysOnANarrowPhone() {
        for (String page : sample()) {
            visit(page);

            assertThat(number("return document.documentElement.scrollWidth"))
                    .as("width of %s, which sticks out with %s", page, wide())
                    .isLessThanOrEqualTo(NARROW);
        }
    }

    /** What sticks out of the page, for the message. */
    private static Object wide() {
        return String.valueOf(SITE.browser().executeScript("""
                        return [...document.body.querySelectorAll('*')]
                          .filter(it => it.getBoundingClientRect().right > window.innerWidth
                                     && !it.closest('.wide'))
                          .slice(0, 3).map(it => it.outerHTML.slice(0, 80));
                        """));
    }

    /** Links within a sentence are excepted by 2.5.8; those that begin an entry are not. */
    @Test
    void everyLinkOfAListIsHighEnoughForAThumb() {
        for (String page : sample()) {
            visit(page);

            assertThat(SITE.browser().executeScript("""
                                    document.querySelectorAll('details').forEach(it => it.open = true);
                                    return [...document.querySelectorAll('ul > li > a:first-child')]
                                      .filter(it => !it.previousSibling?.textContent.trim())
                                      .filter(it => it.getBoundingClientRect().height < arguments[0])
                                      .map(it => it.textContent
                                          + ': ' + it.getBoundingClientRect().height);
                                    """, LEAST_TARGET)).as(page).isEqualTo(List.of());
        }
    }

    @Test
    void nothingIsAskedOfAnotherServer() {
        for (String page : sample()) {
            visit(page);

            List<String> asked =
                    String.valueOf(SITE.browser().executeScript("""
                                            return performance.getEntries()
                                              .filter(it => ['navigation', 'resource']
                                                .includes(it.entryType))
                                              .map(it => it.name).join('\\n');
                                            """)).lines().toList();
            assertThat(asked)
                    .as(page)
                    .anyMatch(name -> name.startsWith(SITE.origin() + "assets/") && name.endsWith("/style.css"))
                    .allMatch(name -> name.startsWith(SITE.origin()));
        }
    }

    @Test
    void theStyleIsApplied() {
        visit("whimbrel/do/start-generator.html");

        assertThat(number("return parseFloat(getComputedStyle(document.querySelector('.hazard')).borderTopWidth)"))
                .isPositive();
    }

    @Test
    void everyLinkOfACoachIsAnswered() throws Exception {
        Map<String, Set<String>> askedBy = new TreeMap<>();
        for (Map.Entry<String, byte[]> file : DemoFleet.pages().entrySet()) {
            if (file.getKey().startsWith("whimbrel/") && file.getKey().endsWith(".html")) {
                String base = SITE.origin() + file.getKey();
                String html = new String(file.getValue(), StandardCharsets.UTF_8);
                for (Element link : Jsoup.parse(html, base).select("a[href], link[href]")) {
                    String address = link.attr("abs:href").replaceFirst("#.*", "");
                    if (!address.startsWith("tel:")) {
                        askedBy.computeIfAbsent(address, it -> new TreeSet<>()).add(file.getKey());
                    }
                }
            }
        }
        assertThat(askedBy).hasSizeGreaterThan(40);

        HttpClient client = HttpClient.newHttpClient();
        for (Map.Entry<String, Set<String>> asked : askedBy.entrySet()) {
            HttpResponse<Void> answer = client.send(
                    HttpRequest.newBuilder(URI.create(asked.getKey())).build(), HttpResponse.BodyHandlers.discarding());
            assertThat(answer.statusCode())
                    .as("%s, linked by %s", asked.getKey(), asked.getValue())
                    .isEqualTo(200);
        }
    }

    private static void visit(String page) {
        assertThat(Files.exists(DemoFleet.web().resolve(page))).as(page).isTrue();
        SITE.browser().get(SITE.origin() + page);
    }

    private static double number(String script) {
        return SITE.browser().executeScript(script) instanceof Number number ? number.doubleValue() : Double.NaN;
    }
}
