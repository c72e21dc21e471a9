package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.Select;

/** All coaches side by side, in a real browser. */
class OverviewTest {
    private static final String PAGE = "fleet.html";
    private static final int HEIGHT = 3;
    private static final int LENGTH = 4;

    @RegisterExtension
    static final OpenSite SITE =
            new OpenSite(320, 640, () -> List.of(DemoFleet.wholeWeb().resolveSibling("staff")));

    @BeforeEach
    void open() {
        SITE.browser().get(SITE.origin() + PAGE);
    }

    @AfterEach
    void asBefore() {
        SITE.device(320, 640);
        SITE.noPreference();
        SITE.browser().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }

    private static List<String> shown() {
        return SITE.browser().findElements(By.cssSelector("tbody tr")).stream()
                .filter(WebElement::isDisplayed)
                .map(row -> row.findElement(By.tagName("th")).getText())
                .toList();
    }

    private static WebElement head(int column) {
        return SITE.browser().findElements(By.cssSelector("thead th button")).get(column);
    }

    private static String sorted(int column) {
        return String.valueOf(SITE.browser()
                .findElements(By.cssSelector("thead th"))
                .get(column)
                .getDomAttribute("aria-sort"));
    }

    private static String told() {
        return SITE.browser().findElement(By.cssSelector("[role=status]")).getText();
    }

    /** Meters as the file of the coach has them, by another way than ours: {@code 12 ft 7 in}, {@code 2.81 m}. */
    private static Map<String, Double> measured(String key) throws Exception {
        Map<String, Double> measured = new TreeMap<>();
        for (String coach : List.of("dunlin", "phalarope", "redpoll", "turnstone", "whimbrel")) {
            Matcher line = Pattern.compile(
                            "(?m)^size:\\n(?:  .*\\n)*?  " + key + ": (?:(\\d+) ft(?: (\\d+) in)?|([0-9.]+) m)$")
                    .matcher(Files.readString(Path.of("units", coach, "unit.yaml")));
            assertThat(line.find()).as(coach).isTrue();
            double meters = line.group(3) == null
                    ? 0.3048 * Integer.parseInt(line.group(1))
                            + (line.group(2) == null ? 0 : 0.0254 * Integer.parseInt(line.group(2)))
                    : Double.parseDouble(line.group(3));
            measured.put(Character.toUpperCase(coach.charAt(0)) + coach.substring(1), meters);
        }
        return measured;
    }

    /** Two coaches are written in feet and inches beside two in meters; as words they would stand otherwise. */
    @Test
    void rowsGoByTheTrueMeasureWhateverItIsWrittenIn() throws Exception {
        for (Map.Entry<Integer, String> column :
                Map.of(HEIGHT, "height", LENGTH, "length").entrySet()) {
            Map<String, Double> measured = measured(column.getValue());
            List<String> upward = measured.keySet().stream()
                    .sorted(Comparator.comparing(measured::get))
                    .toList();
            List<String> downward = new ArrayList<>(upward);
            java.util.Collections.reverse(downward);
            open();

            assertThat(sorted(column.getKey())).isEqualTo("null");
            head(column.getKey()).click();
            assertThat(shown()).isEqualTo(upward);
            assertThat(sorted(column.getKey())).isEqualTo("ascending");
            head(column.getKey()).click();
            assertThat(shown()).isEqualTo(downward);
            assertThat(sorted(column.getKey())).isEqualTo("descending");
        }
    }

    @Test
    void oneColumnAtATimeSaysThatItIsInOrder() {
        head(HEIGHT).click();
        head(0).click();

        assertThat(sorted(0)).isEqualTo("ascending");
        assertThat(sorted(HEIGHT)).isEqualTo("null");
        assertThat(shown()).containsExactly("Dunlin", "Phalarope", "Redpoll", "Turnstone", "Whimbrel");
    }

    @Test
    void aKeyboardSortsAndNarrows() {
        WebElement asked = SITE.browser().findElement(By.cssSelector("input[type=search]"));
        asked.sendKeys("diesel");
        assertThat(shown()).containsExactly("Phalarope", "Redpoll", "Turnstone");
        SITE.browser().executeScript("arguments[0].focus()", head(HEIGHT));
        SITE.browser().switchTo().activeElement().sendKeys(Keys.ENTER);

        assertThat(shown()).containsExactly("Redpoll", "Turnstone", "Phalarope");
        assertThat(sorted(HEIGHT)).isEqualTo("ascending");
        SITE.browser().switchTo().activeElement().sendKeys(Keys.SPACE);
        assertThat(shown()).containsExactly("Phalarope", "Turnstone", "Redpoll");
    }

    @Test
    void wordsAndChoicesNarrowTogetherAndTheCountIsTold() {
        WebElement asked = SITE.browser().findElement(By.cssSelector("input[type=search]"));
        List<WebElement> choices = SITE.browser().findElements(By.tagName("select"));
        assertThat(choices.stream()
                        .map(it -> new Select(it)
                                .getOptions().stream().map(WebElement::getText).toList()))
                .startsWith(
                        List.of("all", "bus style", "cab over", "low profile", "van"),
                        List.of("all", "16 A, 230 V", "30 A, 120 V", "50 A, 120 V"),
                        List.of("all", "diesel", "gasoline"));
        assertThat(told()).isEqualTo("Shown: 5");

        new Select(choices.get(2)).selectByVisibleText("diesel");
        assertThat(shown()).containsExactly("Phalarope", "Redpoll", "Turnstone");
        new Select(choices.get(1)).selectByVisibleText("16 A, 230 V");
        assertThat(shown()).containsExactly("Redpoll", "Turnstone");
        new Select(choices.get(3)).selectByVisibleText("After hours pickup: no");
        assertThat(shown()).containsExactly("Redpoll");
        new Select(choices.get(3)).selectByIndex(0);
        asked.sendKeys("VAN  16");
        assertThat(shown()).containsExactly("Redpoll");
        assertThat(told()).isEqualTo("Shown: 1");
        asked.sendKeys(" never");
        assertThat(shown()).isEmpty();
        assertThat(told()).isEqualTo("Shown: 0");
        asked.clear();
        new Select(choices.get(1)).selectByIndex(0);
        new Select(choices.get(2)).selectByIndex(0);
        assertThat(told()).isEqualTo("Shown: 5");
    }

    @Test
    void withoutScriptItIsAPlainTable() throws Exception {
        SITE.browser().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        open();

        assertThat(SITE.browser().findElements(By.cssSelector("tbody tr"))).hasSize(5);
        assertThat(SITE.browser().findElements(By.tagName("button"))).isEmpty();
        assertThat(SITE.browser().findElement(By.tagName("input")).isDisplayed())
                .isFalse();
        Document page = Jsoup.parse(
                Files.readString(DemoFleet.wholeWeb().resolveSibling("staff").resolve(PAGE)));
        assertThat(page.select("thead th[scope=col]").size())
                .isEqualTo(page.select("tbody tr").get(0).children().size());
    }

    /** WCAG 2.2, 1.4.10 and 1.4.4: the table alone goes sideways, and whose row it is stays to be seen. */
    @Test
    void onANarrowScreenTheNameStaysInSight() {
        for (String size : List.of("", "200%")) {
            SITE.browser().executeScript("document.documentElement.style.fontSize = arguments[0]", size);
            assertThat((Boolean) SITE.browser().executeScript("""
                            const wide = document.querySelector('.wide');
                            wide.scrollLeft = wide.scrollWidth;
                            const name = document.querySelector('tbody th a').getBoundingClientRect();
                            const last = document.querySelector('tbody td:last-child').getBoundingClientRect();
                            return document.documentElement.scrollWidth <= innerWidth
                              && wide.scrollLeft > 0 && name.left >= 0 && name.right <= innerWidth / 2
                              && last.right <= innerWidth;
                            """)).as(size).isTrue();
        }
    }

    @Test
    void allThatIsTappedIsLargeEnoughForAThumb() {
        assertThat((List<?>) SITE.browser().executeScript("""
                        return [...document.querySelectorAll('main a, button, select, input')]
                          .map(it => [it, it.getBoundingClientRect()])
                          .filter(([it, box]) => box.height < 55.5 || box.width < 55.5)
                          .map(([it, box]) => it.outerHTML.slice(0, 120) + ' ' + box.width + ' x ' + box.height);
                        """)).isEmpty();
    }

    @Test
    void noRuleOfAxeIsBrokenByDayAndAtNight() throws Exception {
        Axe axe = Axe.read();
        // As wide as the table is: what lies below the name that stays, axe cannot see.
        SITE.device(1440, 900);
        for (String scheme : List.of("light", "dark")) {
            SITE.preference("prefers-color-scheme", scheme);
            assertThat(axe.broken(SITE, List.of(PAGE, "index.html"))).as(scheme).isEmpty();
        }
        assertThat(SITE.browser().manage().logs().get(LogType.BROWSER).getAll())
                .as("said on the console, policy violations too")
                .isEmpty();
    }
}
