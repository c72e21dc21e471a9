package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.source.Lazy;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.logging.LogType;

/**
 * Each kind of page of each coach, in a real browser, as WCAG 2.2 wants it: level AA, and of AAA the enhanced contrast, the
 * target of a link by its words alone, and targets for a thumb. Of each kind the page with the most on it, once more of a coach
 * that was refitted since its first edition (bars, notices, what is no longer there); with
 * {@code -Dpages=PATTERN} all whose paths match.
 *
 * @see <a href="https://github.com/dequelabs/axe-core/blob/develop/doc/rule-descriptions.md">the rules</a>
 */
class EveryKindOfPageTest {
    /** Pages that are looked at all, by a pattern of their paths. */
    private static final String MORE = System.getProperty("pages", "");

    /** A thumb in a glove; half a pixel less, as browsers round. */
    private static final double THUMB = 55.5;

    @TempDir
    @SuppressWarnings("NullAway.Init") // set before the first test
    private static Path folder;

    private static final Lazy<RefittedSite> REFITTED = new Lazy<>(() -> RefittedSite.in(folder));

    @RegisterExtension
    static final OpenSite SITE =
            new OpenSite(320, 640, () -> List.of(DemoFleet.web(), REFITTED.get().web()));

    @SuppressWarnings("NullAway.Init") // set before the first test
    private static Axe axe;

    private static final Map<String, String> PAGES = new TreeMap<>();

    @BeforeAll
    static void read() throws IOException {
        axe = Axe.read();
        Map<String, byte[]> refitted = REFITTED.get().pages();
        Map<String, byte[]> all = new TreeMap<>(DemoFleet.pages());
        all.putAll(refitted);
        Map<String, Integer> heaviest = new TreeMap<>();
        for (Map.Entry<String, byte[]> file : all.entrySet()) {
            String page = file.getKey();
            if (page.endsWith(".html") && !page.startsWith("L/")) {
                String html = new String(file.getValue(), StandardCharsets.UTF_8);
                Document parsed = Jsoup.parse(html);
                // What leads on at once, from a label or from an old address, is no page to stay on.
                if (parsed.selectFirst("meta[http-equiv=refresh]") != null) {
                    continue;
                }
                String coach = page.contains("/") ? page.substring(0, page.indexOf('/')) : "";
                String kind = coach + " " + parsed.body().className();
                // Pages of a sister are of the kinds of its model's other coaches, and look like theirs; so are those
                // of
                // a coach that was refitted, but for what tells of that.
                boolean told = refitted.containsKey(page) && RefittedSite.tellsOfIt(parsed);
                if (MORE.isEmpty() && !coach.isEmpty() && !DemoFleet.fewest().contains(coach) && !told) {
                    continue;
                }
                kind += told ? " refitted" : "";
                kind = MORE.isEmpty() ? kind : page;
                if (page.matches(MORE.isEmpty() ? ".*" : MORE) && heaviest.getOrDefault(kind, 0) < html.length()) {
                    heaviest.put(kind, html.length());
                    PAGES.put(kind, page);
                }
            }
        }
        assertThat(PAGES).hasSizeGreaterThan(MORE.isEmpty() ? 100 : 0);
        if (MORE.isEmpty()) {
            assertThat(PAGES.values())
                    .contains("knot/what-changed.html", "knot/switch/light.html", "heron/index.html")
                    .anyMatch(it -> it.matches("knot/do/.*"));
        }
    }

    @AfterEach
    void asBefore() {
        SITE.device(320, 640);
        SITE.noPreference();
    }

    /** Of all pages, one of each kind. */
    private static List<String> oneOfEach() {
        return ofEachKind().values().stream().map(pages -> pages.get(0)).toList();
    }

    private static Map<String, List<String>> ofEachKind() {
        Map<String, List<String>> kinds = new TreeMap<>();
        PAGES.forEach(
                (kind, page) -> kinds.computeIfAbsent(kind.substring(kind.indexOf(' ') + 1), it -> new ArrayList<>())
                        .add(page));
        return kinds;
    }

    /** Those of two coaches, of another two from kind to kind, and all where all are wanted. */
    private static List<String> twoOfEach() {
        if (!MORE.isEmpty() || DemoFleet.areAllWanted()) {
            return List.copyOf(PAGES.values());
        }
        List<String> two = new ArrayList<>();
        ofEachKind().forEach((kind, pages) -> {
            Collections.rotate(pages, kind.hashCode());
            two.addAll(pages.subList(0, Math.min(2, pages.size())));
        });
        return two;
    }

    private static List<?> script(String script, Object... arguments) {
        return (List<?>) Objects.requireNonNull(SITE.browser().executeScript(script, arguments));
    }

    private static void open(String page) {
        SITE.browser().get(SITE.origin() + page);
    }

    @Test
    void noRuleIsBrokenByDay() {
        SITE.device(1280, 900);
        assertThat(broken(twoOfEach())).isEmpty();
        assertThat(SITE.browser().manage().logs().get(LogType.BROWSER).getAll())
                .as("said on the console, policy violations too")
                .isEmpty();
    }

    @Test
    void noRuleIsBrokenAtNight() {
        SITE.device(1280, 900);
        SITE.preference("prefers-color-scheme", "dark");

        assertThat(broken(oneOfEach())).isEmpty();
    }

    private static List<String> broken(Iterable<String> pages) {
        return axe.broken(SITE, pages);
    }

    /** Links within a sentence are excepted, as by WCAG 2.2, 2.5.5; what may be tapped by itself is not. */
    @Test
    void allThatIsTappedIsLargeEnoughForAThumb() {
        List<String> small = new ArrayList<>();
        for (String page : twoOfEach()) {
            if (!page.contains("/do/") || !Jsoup.parse(html(page)).body().hasClass("urgent")) {
                open(page);
                List<?> found = script("""
                        document.querySelectorAll('details').forEach(it => it.open = true);
                        const alone = it => it.matches('button, summary, select, input, .tile, svg a *')
                          ? true
                          : ![...it.parentElement.childNodes].some(
                              next => next !== it && (next.nodeType === 3 ? next.textContent.trim() : next.tagName === 'A'));
                        return [...document.querySelectorAll('a[href], button, summary, select, input')]
                          .filter(it => !it.closest('svg') && !it.matches('.skip, .word') && it.checkVisibility() && alone(it))
                          .map(it => [it, it.getBoundingClientRect()])
                          .map(([it, box]) => [it, it.type === 'checkbox' ? it.labels[0].getBoundingClientRect() : box])
                          .filter(([it, box]) => box.height > 0 && (box.height < arguments[0] || box.width < arguments[0]))
                          .map(([it, box]) => it.outerHTML.slice(0, 120) + ' ' + Math.round(box.width) + ' x ' + Math.round(box.height));
                        """, THUMB);
                found.forEach(each -> small.add(page + ": " + each));
            }
        }
        assertThat(small).isEmpty();
    }

    private static String html(String page) {
        try {
            Path file = DemoFleet.web().resolve(page);
            return Files.readString(
                    Files.exists(file) ? file : REFITTED.get().web().resolve(page));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** WCAG 2.2, 1.4.4 and 1.4.12, both at once on the narrowest screen of 1.4.10. */
    @Test
    void nothingIsLostWithLargerLettersOrMoreRoomBetweenThem() {
        List<String> lost = new ArrayList<>();
        for (String page : oneOfEach()) {
            open(page);
            for (String style : List.of(
                    "document.documentElement.style.fontSize = '200%'",
                    "document.documentElement.style.fontSize = ''; const all = new CSSStyleSheet(); all.replaceSync("
                            + "'* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }"
                            + " p { margin-bottom: 2em !important }'); document.adoptedStyleSheets = [all]")) {
                List<?> found = script(style + """
                        ;
                        const wide = document.documentElement.scrollWidth > innerWidth;
                        return [...document.querySelectorAll('main *, header *, nav *, footer *')]
                          .filter(it => !it.closest('.wide, .skip, .said, svg') && it.checkVisibility())
                          .filter(it => (wide && it.getBoundingClientRect().right > innerWidth + 1)
                            || (getComputedStyle(it).overflow === 'hidden' && it.scrollHeight > it.clientHeight + 1))
                          .slice(0, 3).map(it => it.outerHTML.slice(0, 120));
                        """);
                found.forEach(each -> lost.add(page + ": " + each));
            }
        }
        assertThat(lost).isEmpty();
    }

    /** Each stop of a keyboard is seen, and lies under nothing. */
    @Test
    void whoGoesByKeyboardSeesWhereHeIs() {
        List<String> hidden = new ArrayList<>();
        for (String page : oneOfEach()) {
            open(page);
            List<?> found = script("""
                    return [...document.querySelectorAll('a[href], button, summary, select, input, [tabindex="0"]')]
                      .filter(it => it.checkVisibility() && !it.matches('.skip'))
                      .filter(it => {
                        it.focus({ focusVisible: true });
                        const style = getComputedStyle(it);
                        const box = it.getClientRects()[0];
                        if (document.activeElement !== it || !box) { return true; }
                        const ring = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
                        const top = document.elementFromPoint(
                          Math.min(innerWidth - 1, box.left + Math.min(box.width / 2, 20)),
                          Math.max(0, box.top) + Math.min(box.height / 2, 20));
                        return !ring || !(top && (it.contains(top) || top.contains(it)));
                      }).slice(0, 3).map(it => it.outerHTML.slice(0, 120));
                    """);
            found.forEach(each -> hidden.add(page + ": " + each));
        }
        assertThat(hidden).isEmpty();
    }

    /** Forced colors take fills away: what is meant stays as words and borders. */
    @Test
    void nothingIsSaidByColorAlone() {
        SITE.preference("forced-colors", "active");
        List<String> bare = new ArrayList<>();
        for (String page : oneOfEach()) {
            open(page);
            List<?> found = script("""
                    return [...document.querySelectorAll('.mark, .hazard, .tile, .bar a, button')]
                      .filter(it => it.checkVisibility())
                      .filter(it => !it.textContent.trim() && !it.getAttribute('aria-label')
                        || getComputedStyle(it.matches('.bar a') ? it.closest('.bar') : it).borderTopStyle === 'none')
                      .slice(0, 3).map(it => it.outerHTML.slice(0, 120));
                    """);
            found.forEach(each -> bare.add(page + ": " + each));
        }
        assertThat(bare).isEmpty();
    }
}
