package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.publish.BusyDay;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The first page of the staff's copy in a real browser, in a folder of its host. */
class StaffFrontPageTest {
    private static final String FOLDER = "staff/";
    private static final List<String> PAGES =
            List.of(FOLDER + "index.html", FOLDER + "fleet.html", FOLDER + "due.html");

    @RegisterExtension
    static final OpenSite SITE =
            new OpenSite(320, 640, () -> List.of(BusyDay.published().out()));

    @BeforeEach
    void open() {
        // A page that is only loaded again keeps what was looked for.
        SITE.browser().get("about:blank");
        SITE.browser().get(SITE.origin() + FOLDER);
    }

    @AfterEach
    void asBefore() {
        SITE.device(320, 640);
        SITE.noPreference();
        SITE.browser().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }

    private static WebElement field() {
        return SITE.browser().findElement(By.id("asked"));
    }

    private static Select choice() {
        return new Select(SITE.browser().findElement(By.id("of")));
    }

    private static void type(String words) {
        field().clear();
        field().sendKeys(words);
        ready();
    }

    /** Until all is looked through. */
    private static void ready() {
        new WebDriverWait(SITE.browser(), Duration.ofSeconds(20))
                .until(it ->
                        !it.findElements(By.cssSelector("#search[data-ready]")).isEmpty());
    }

    private static List<?> script(String script, Object... arguments) {
        return (List<?>) Objects.requireNonNull(SITE.browser().executeScript(script, arguments));
    }

    private static List<?> found() {
        return script("""
                return [...document.querySelectorAll('#search .found a')]
                  .map(it => it.querySelector('b').textContent + ' > ' + it.getAttribute('href'));
                """);
    }

    /** Lists that were loaded, by their coaches. */
    private static List<?> loaded() {
        return script("""
                return performance.getEntriesByType('resource').map(it => it.name)
                  .filter(it => it.endsWith('search.json')).map(it => it.split('/').at(-2)).sort();
                """);
    }

    private static String told() {
        return SITE.browser()
                .findElement(By.cssSelector("#search [role=status]"))
                .getText();
    }

    @Test
    void whatIsFoundNamesItsCoachAndIsOneTapAway() {
        type("extinguisher");

        assertThat(List.copyOf(found()))
                .asList()
                .map(String::valueOf)
                .contains(
                        "Knot: Fire extinguisher > knot/on-board.html#item-extinguisher",
                        "Plover: Fire extinguisher > plover/on-board.html#item-extinguisher",
                        "Dotterel: Fire extinguisher > dotterel/on-board.html#item-extinguisher");
        assertThat(told()).startsWith("Found: ");
        SITE.browser()
                .findElement(By.cssSelector("#search .found a[href^='knot/on-board']"))
                .click();
        assertThat(SITE.browser().getCurrentUrl()).startsWith(SITE.origin() + FOLDER + "knot/on-board.html");
        assertThat(SITE.browser().findElements(By.cssSelector(".staff-copy"))).hasSize(1);
    }

    @Test
    void aSlipOfTheFingerAndTheNameOfACoachAreUnderstood() {
        type("plover extingisher");

        assertThat(found()).first().asString().startsWith("Plover: Fire extinguisher > ");
    }

    /** The data is that of the staff's copy. */
    @Test
    void sheetsForStaffAreFound() {
        type("inventory");

        assertThat(List.copyOf(found()))
                .asList()
                .map(String::valueOf)
                .contains("Knot: Inventory sheet > knot/inventory.html");
    }

    @Test
    void nothingIsLoadedBeforeTheFirstKeyAndOfOneCoachNothingElse() {
        assertThat(loaded()).isEqualTo(List.of());
        choice().selectByVisibleText("Plover");
        assertThat(loaded()).isEqualTo(List.of());

        type("pump");
        assertThat(loaded()).isEqualTo(List.of("plover"));
        assertThat(found()).isNotEmpty().allMatch(it -> String.valueOf(it).contains(" > plover/"));

        choice().selectByVisibleText("all coaches");
        ready();
        assertThat(loaded()).isEqualTo(List.of("dotterel", "knot", "plover"));
        assertThat(found())
                .anyMatch(it -> String.valueOf(it).contains(" > knot/"))
                .anyMatch(it -> String.valueOf(it).contains(" > dotterel/"));
    }

    @Test
    void aKeyboardGoesFromTheFieldToWhatIsFound() {
        type("pump");
        field().sendKeys(Keys.TAB);
        assertThat(SITE.browser().switchTo().activeElement().getDomAttribute("id"))
                .isEqualTo("of");
        SITE.browser().switchTo().activeElement().sendKeys(Keys.TAB);
        SITE.browser().switchTo().activeElement().sendKeys(Keys.ENTER);

        assertThat(SITE.browser().getCurrentUrl()).matches(".*/staff/(knot|plover|dotterel)/.*");
    }

    @Test
    void whoComesBackFindsWhatHeFound() {
        choice().selectByVisibleText("Knot");
        type("pump");
        List<?> before = found();
        SITE.browser().executeScript("document.querySelector('#search .found a').click()");
        SITE.browser().navigate().back();
        ready();

        assertThat(found()).isNotEmpty().isEqualTo(before);
        assertThat(choice().getFirstSelectedOption().getText()).isEqualTo("Knot");
    }

    /** The host has lost one list: the others are looked through, and it is told which is not. */
    @Test
    void aListThatCannotBeLoadedIsTold() {
        SITE.browser().executeScript("""
                const all = window.fetch;
                window.fetch = (of) => all(of.startsWith('knot/') ? 'none.json' : of);
                """);
        type("pump");

        assertThat(found()).isNotEmpty().noneMatch(it -> String.valueOf(it).contains(" > knot/"));
        assertThat(told()).endsWith("Could not be looked through: Knot.");
        SITE.browser().manage().logs().get(LogType.BROWSER);
    }

    @Test
    void whereNothingIsFoundItIsSaid() {
        type("xqzzw");

        assertThat(found()).isEmpty();
        assertThat(told()).startsWith("Nothing on these coaches has that name.");
    }

    /** While lists come one behind the other, what is said stays as it is until there is something else to say. */
    @Test
    void whatIsFoundIsSaidInOneLine() {
        assertThat(told()).isEmpty();
        choice().selectByVisibleText("Knot");
        type("extinguisher");

        assertThat(script(
                        "return [...document.querySelectorAll('#search [role=status]')].map(it => it.children.length)"))
                .isEqualTo(List.of(0L));
        assertThat(told()).isEqualTo("Found: " + found().size() + ".");
        choice().selectByVisibleText("all coaches");
        type("pump");
        assertThat(told()).matches("Found: [0-9]+[.] Not all are shown: say more, or choose a coach[.]");
    }

    @Test
    void withoutScriptTheDayAndTheCoachesAreThere() {
        SITE.browser().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        open();

        assertThat(SITE.browser().findElements(By.cssSelector("#search *"))).isEmpty();
        assertThat(SITE.browser().findElements(By.cssSelector(".needed a"))).isNotEmpty();
        SITE.browser()
                .findElement(By.cssSelector(".coaches a[href^='plover/']"))
                .click();
        assertThat(SITE.browser().findElement(By.tagName("h1")).getText()).contains("Plover");
    }

    @Test
    void noRuleOfAxeIsBrokenByDayAndAtNight() throws IOException {
        Axe axe = Axe.read();
        SITE.browser().manage().logs().get(LogType.BROWSER);
        for (int wide : List.of(320, 1440)) {
            SITE.device(wide, 900);
            for (String scheme : List.of("light", "dark")) {
                SITE.preference("prefers-color-scheme", scheme);
                // Of a table that goes sideways axe cannot see what lies below the name that stays.
                assertThat(axe.broken(SITE, wide == 320 ? PAGES.subList(0, 1) : PAGES))
                        .as(wide + " " + scheme)
                        .isEmpty();
            }
        }
        assertThat(SITE.browser().manage().logs().get(LogType.BROWSER).getAll())
                .as("said on the console, policy violations too")
                .isEmpty();
    }

    /** WCAG 2.2, 1.4.4 and 1.4.10, with something found. */
    @Test
    void nothingSticksOutOnANarrowScreen() {
        type("pump");
        for (String size : List.of("", "200%")) {
            SITE.browser().executeScript("document.documentElement.style.fontSize = arguments[0]", size);
            assertThat(script("""
                            return [...document.querySelectorAll('main *')]
                              .filter(it => it.checkVisibility() && it.getBoundingClientRect().right > innerWidth + 1)
                              .map(it => it.outerHTML.slice(0, 120));
                            """)).as(size).isEmpty();
        }
    }

    @Test
    void allThatIsTappedIsLargeEnoughForAThumb() {
        type("pump");
        assertThat(script("""
                        return [...document.querySelectorAll('main a, button, select, input')]
                          .map(it => [it, it.getBoundingClientRect()])
                          .filter(([it, box]) => box.height < 55.5 || box.width < 55.5)
                          .map(([it, box]) => it.outerHTML.slice(0, 120) + ' ' + box.width + ' x ' + box.height);
                        """)).isEmpty();
    }
}
