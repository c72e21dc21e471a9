package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;

/** Steps one at a time, and lists that are ticked off, as one goes through them in a real browser. */
final class StepsTest {
    private static final String DUMP = "whimbrel/do/dump-tanks-gravity.html";
    private static final String BEFORE_DRIVING = "dunlin/do/check-before-driving.html";

    @RegisterExtension
    static final OpenSite SITE = new OpenSite(360, 640);

    @BeforeEach
    void asOnANewPhone() {
        SITE.browser().get(SITE.origin() + DUMP);
        SITE.browser().executeScript("localStorage.clear()");
    }

    private static void visit(String page) {
        SITE.browser().get(SITE.origin() + page);
    }

    private static void tap(String words) {
        SITE.browser().findElements(By.tagName("button")).stream()
                .filter(it -> it.isDisplayed() && it.getText().equals(words))
                .findFirst()
                .map(StepsTest::inSight)
                .orElseThrow(() -> new AssertionError("no button `" + words + "` on "
                        + SITE.browser().findElements(By.tagName("button")).stream()
                                .filter(WebElement::isDisplayed)
                                .map(WebElement::getText)
                                .toList()))
                .click();
    }

    /** Not under the bar. */
    private static WebElement inSight(WebElement element) {
        SITE.browser().executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
        return element;
    }

    private static List<String> shown() {
        return SITE.browser().findElements(By.cssSelector("#steps .steps > li")).stream()
                .filter(WebElement::isDisplayed)
                .map(it -> Objects.requireNonNull(it.getDomAttribute("id")))
                .toList();
    }

    private static String way() {
        return SITE.browser().findElement(By.cssSelector(".way span")).getText();
    }

    @Test
    void oneStepIsShownAndTheNextIsAtTheThumb() {
        visit(DUMP);
        assertThat(shown()).hasSizeGreaterThan(3);

        tap("One step at a time");
        assertThat(shown()).containsExactly("step-shut-black-valve-open");
        assertThat(way()).isEqualTo("Step 1 / 5");
        assertThat(SITE.browser().findElement(By.cssSelector(".now .hazard")).isDisplayed())
                .isTrue();
        assertThat(SITE.browser()
                        .findElement(By.cssSelector(".pace .go"))
                        .getRect()
                        .getY())
                .isGreaterThan(640 / 2);

        tap("Done, next");
        assertThat(shown()).containsExactly("step-shut-gray-valve-open");
        tap("Back");
        assertThat(shown()).containsExactly("step-shut-black-valve-open");
        tap("All steps");
        assertThat(shown()).hasSizeGreaterThan(3);
    }

    @Test
    void whoFollowsALinkComesBackToHisStep() {
        visit(DUMP);
        tap("One step at a time");
        tap("Done, next");
        tap("Done, next");
        SITE.browser().executeScript("document.querySelector('.now .where a').click()");
        assertThat(SITE.browser().getCurrentUrl()).doesNotContain("dump-tanks");

        visit(DUMP);

        assertThat(way()).isEqualTo("Step 3 / 5");
    }

    @Test
    void theLastStepLeadsToTheNextPartInTheSameWay() {
        visit(DUMP);
        tap("One step at a time");
        for (int step = 1; step < 5; step++) {
            tap("Done, next");
        }
        tap("Done");
        SITE.browser().executeScript("document.querySelector('#safe-to-stop .links a').click()");

        assertThat(SITE.browser().getCurrentUrl()).contains("dump-tanks-gravity--empty");
        assertThat(way()).isEqualTo("Step 1 / 4");
    }

    @Test
    void whatDoesNotWorkHasAWayOut() {
        visit("whimbrel/do/dump-tanks-gravity--clean-up.html");
        tap("One step at a time");
        tap("It did not work");

        assertThat(SITE.browser()
                        .findElement(By.cssSelector(".now .answers, .now .branch"))
                        .getText())
                .isNotEmpty();
    }

    /** A step that may have to be stopped asks before one goes on. */
    @Test
    void aStopLineIsAskedFor() {
        String page = DemoFleet.files(DemoFleet.web()).entrySet().stream()
                .filter(file -> file.getKey().matches("whimbrel/do/.*html"))
                .filter(file -> new String(file.getValue(), StandardCharsets.UTF_8).contains("<div class=\"stop\">"))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
        visit(page);
        SITE.browser().executeScript("""
                const step = document.querySelector('.handling .stop').closest('.steps > li');
                localStorage.setItem('bayfolio ' + location.pathname,
                  JSON.stringify({cards: true, on: Date.now(), at: step.id}));
                """);
        visit(page);
        String before = way();

        inSight(SITE.browser().findElement(By.cssSelector(".pace .go"))).click();

        assertThat(way()).isEqualTo(before);
        assertThat(SITE.browser().findElement(By.cssSelector(".ask")).getText()).contains("Look before you go on.");
        inSight(SITE.browser().findElement(By.cssSelector(".ask .go"))).click();
        assertThat(SITE.browser().findElements(By.cssSelector(".ask"))).isEmpty();
    }

    @Test
    void ticksStayWithTheirTime() {
        visit(BEFORE_DRIVING);
        WebElement box = inSight(SITE.browser().findElement(By.cssSelector(".ticked > li .box")));
        box.click();
        assertThat(box.getDomAttribute("aria-pressed")).isEqualTo("true");
        assertThat(box.getText()).containsPattern("\\d");

        visit(BEFORE_DRIVING);

        assertThat(SITE.browser().findElement(By.cssSelector(".count")).getText())
                .startsWith("1 / ");
        tap("Begin again");
        assertThat(SITE.browser().findElement(By.cssSelector(".count")).getText())
                .startsWith("0 / ");
    }

    @Test
    void whereOneStandsHasMinutesAndTicksToo() {
        visit("turnstone/now/dark.html");

        assertThat(SITE.browser().findElements(By.cssSelector(".links li .box")))
                .hasSameSizeAs(SITE.browser().findElements(By.cssSelector(".links li")));
        assertThat(SITE.browser().findElements(By.cssSelector(".links .note")))
                .allMatch(it -> it.getText().matches("about \\d+ min"));
    }

    /** As in a private window, or on a phone that is full. */
    @Test
    void aPhoneThatKeepsNothingSaysSo() {
        Object refuses = SITE.browser()
                .executeCdpCommand(
                        "Page.addScriptToEvaluateOnNewDocument",
                        Map.of("source", "Storage.prototype.setItem = () => { throw new DOMException('full'); }"))
                .get("identifier");
        try {
            visit(BEFORE_DRIVING);

            inSight(SITE.browser().findElement(By.cssSelector(".ticked > li .box")))
                    .click();

            assertThat(SITE.browser()
                            .findElement(By.cssSelector(".ticks .note"))
                            .isDisplayed())
                    .isTrue();
            assertThat(SITE.browser().findElement(By.cssSelector(".count")).getText())
                    .startsWith("1 / ");
        } finally {
            SITE.browser().executeCdpCommand("Page.removeScriptToEvaluateOnNewDocument", Map.of("identifier", refuses));
        }
    }

    @Test
    void withoutScriptItIsThePlainList() {
        SITE.browser().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            visit(DUMP);

            assertThat(shown()).hasSize(5);
            assertThat(SITE.browser().findElements(By.tagName("button"))).isEmpty();
        } finally {
            SITE.browser().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }
}
