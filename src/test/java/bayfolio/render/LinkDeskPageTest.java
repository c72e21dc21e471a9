package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The page of links, as staff use it; and a short address, as a renter types it. */
class LinkDeskPageTest {
    @RegisterExtension
    static final OpenSite SITE =
            new OpenSite(320, 640, () -> List.of(DemoFleet.web().resolveSibling("staff"), DemoFleet.web()));

    @Test
    void aButtonCopiesTheAddressAndNothingElse() {
        SITE.browser()
                .executeCdpCommand(
                        "Browser.grantPermissions",
                        Map.of("permissions", List.of("clipboardReadWrite", "clipboardSanitizedWrite")));
        SITE.browser().get(SITE.origin() + "whimbrel/links.html");
        WebElement link = SITE.browser().findElement(By.id("day-before-return.do-prepare-return"));
        WebElement address = link.findElement(By.cssSelector("[data-copy=short]"));
        WebElement button = address.findElement(By.tagName("button"));
        // Not below the bar at the thumb.
        SITE.browser().executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
        button.click();
        new WebDriverWait(SITE.browser(), Duration.ofSeconds(5))
                .until(it -> address.findElement(By.cssSelector("[role=status]"))
                        .getText()
                        .equals("Copied"));

        assertThat(SITE.browser()
                        .executeAsyncScript("navigator.clipboard.readText().then(arguments[arguments.length - 1])"))
                .isEqualTo("https://handbook.hollinbay.example/L/WHIMBREL/RETURN");
        assertThat(SITE.browser()
                        .executeScript(
                                "return document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                .isEqualTo(true);
    }

    @ParameterizedTest
    @ValueSource(strings = {"l/whimbrel/return", "L/Whimbrel/Return/", "L/WHIMBREL/RETURN"})
    void aShortAddressLeadsThereHoweverItIsTyped(String typed) {
        SITE.browser().get(SITE.origin() + typed);

        new WebDriverWait(SITE.browser(), Duration.ofSeconds(5))
                .until(it -> String.valueOf(it.getCurrentUrl()).endsWith("whimbrel/do/prepare-return.html"));
    }
}
