package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.survey.SpoiltFleet;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.support.ui.Select;
import org.openqa.selenium.support.ui.WebDriverWait;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/** A survey from the desk to the coach and back: the page is filled in by a real browser, from the storage of the phone. */
final class SurveyPageTest {
    @TempDir(cleanup = CleanupMode.NEVER)
    private Path folder;

    private static void enter(ChromeDriver browser, String path, String text) {
        WebElement field = browser.findElement(By.cssSelector(".ask[data-path='" + path + "'] .answer"));
        if (field.getTagName().equals("select")) {
            new Select(field).selectByValue(text);
        } else if ("date".equals(field.getAttribute("type"))) {
            browser.executeScript(
                    "arguments[0].value = arguments[1]; arguments[0].dispatchEvent(new Event('input', {bubbles: true}))",
                    field,
                    text);
        } else {
            field.sendKeys(text);
        }
    }

    private static void ready(ChromeDriver browser, String attribute) {
        new WebDriverWait(browser, Duration.ofSeconds(20))
                .until(it -> !browser.findElements(By.cssSelector("body[" + attribute + "]"))
                        .isEmpty());
    }

    private Path picture() throws IOException {
        BufferedImage picture = new BufferedImage(2400, 1800, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 2400; x++) {
            picture.setRGB(x, x % 1800, Color.ORANGE.getRGB());
        }
        Path file = folder.resolve("seen.jpg");
        ImageIO.write(picture, "jpg", file.toFile());
        return file;
    }

    /** Facts that are missing, one that cannot be read, one that is still true; and none of it is lost on the way. */
    @Test
    void whatIsFoundAtTheCoachComesIntoItsDescription() throws Exception {
        String before = Files.readString(Path.of("units/dunlin/unit.yaml"));
        SpoiltFleet fleet = SpoiltFleet.in(folder)
                .without("roles: [house-battery-switch", "\n    on-look: .*", "")
                .without("tires:", "\n  age-code: .*", "")
                .without("people:", "\n  sleeping-places: .*", "")
                .without("id: smoke-alarm", "\n    replace-by: .*", "")
                .without("\nsize:", "\ndrive-side: left|\n  width: .*", "\n  width: eight feet")
                .without("\ndrive-side", "left", "both");
        SpoiltFleet.Said made = fleet.run(
                "survey",
                "dunlin",
                "--fleet",
                folder.toString(),
                "--out",
                folder.resolve("out").toString());
        assertThat(made.err()).isEmpty();
        assertThat(made.exit()).isZero();
        assertThat(fleet.run("check", "dunlin", "--fleet", folder.toString()).exit())
                .isEqualTo(1);

        Path answers = answered(folder.resolve("out/dunlin/survey.html"), before);

        String spoilt = fleet.text();
        SpoiltFleet.Said shown = fleet.run("take", answers.toString(), "--fleet", folder.toString());
        assertThat(shown.exit()).isEqualTo(1);
        assertThat(shown.err()).isEqualTo("Nothing was written.\n");
        assertThat(shown.out()).contains("--- units/dunlin/unit.yaml", "\n-drive-side: both\n+drive-side: left\n");
        assertThat(fleet.text()).isEqualTo(spoilt);

        SpoiltFleet.Said taken = fleet.run("take", answers.toString(), "--fleet", folder.toString(), "--yes");
        assertThat(taken.err()).isEmpty();
        assertThat(taken.exit()).isZero();
        assertThat(fleet.run("check", "dunlin", "--fleet", folder.toString()))
                .isEqualTo(new SpoiltFleet.Said(0, "", ""));
        JsonNode now = new YAMLMapper().readTree(fleet.text());
        JsonNode was = new YAMLMapper().readTree(before);
        for (String facts : List.of("tires", "people", "size", "drive-side")) {
            assertThat(now.get(facts)).isEqualTo(was.get(facts));
        }
        assertThat(fleet.text().lines().filter(it -> it.strip().startsWith("#")))
                .containsExactlyElementsOf(
                        before.lines().filter(it -> it.strip().startsWith("#")).toList());
        assertThat(fleet.text().lines().toList())
                .as("facts that were missing stand behind the others of their record")
                .containsExactlyInAnyOrderElementsOf(before.lines().toList());
        List<Path> photos;
        try (Stream<Path> all = Files.list(folder.resolve("units/dunlin/photos"))) {
            photos = all.filter(it -> it.getFileName().toString().startsWith("smoke-alarm-"))
                    .toList();
        }
        assertThat(photos).hasSize(1);
        assertThat(ImageIO.read(photos.get(0).toFile()).getWidth()).isEqualTo(1600);

        SpoiltFleet.Said again = fleet.run("take", answers.toString(), "--fleet", folder.toString(), "--yes");
        assertThat(again.exit()).isZero();
        assertThat(again.out()).isEqualTo("All that could be taken is so already.\n");
    }

    /** @return the file that the page gave out */
    private Path answered(Path page, String before) throws Exception {
        JsonNode was = new YAMLMapper().readTree(before);
        Path downloads = Files.createDirectories(folder.resolve("downloads"));
        ChromeDriver browser = Browser.open(folder.resolve("profile"));
        try {
            browser.executeCdpCommand(
                    "Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath", downloads.toString()));
            browser.executeCdpCommand(
                    "Emulation.setDeviceMetricsOverride",
                    Map.of("width", 320, "height", 640, "deviceScaleFactor", 1, "mobile", false));
            browser.get(page.toUri().toString());
            ready(browser, "data-ready");
            assertThat(browser.findElement(By.id("progress")).getText()).isEqualTo("0 of 6 looked up");
            browser.findElement(By.id("by")).sendKeys("yard");
            enter(
                    browser,
                    "people / sleeping-places",
                    was.get("people").get("sleeping-places").asString());
            enter(browser, "tires / age-code", was.get("tires").get("age-code").asString());
            enter(browser, "size / width", was.get("size").get("width").asString());
            enter(browser, "drive-side", "left");
            was.get("switches").forEach(each -> {
                if (each.get("id").asString().equals("house-battery-switch")) {
                    enter(
                            browser,
                            "switches / house-battery-switch / on-look",
                            each.get("on-look").asString());
                }
            });
            was.get("gauges").forEach(each -> {
                if (each.get("id").asString().equals("smoke-alarm")) {
                    enter(
                            browser,
                            "gauges / smoke-alarm / replace-by",
                            each.get("replace-by").asString());
                }
            });
            browser.findElement(By.cssSelector("[data-path='gauges / smoke-alarm'] .picture"))
                    .sendKeys(picture().toString());
            ready(browser, "data-kept='pictures'");
            assertThat(
                            browser.executeScript(
                                    "return [...document.querySelectorAll('#asked .ask:not(.answered)')].map(it => it.dataset.path + it.querySelector('.answer').outerHTML)"))
                    .isEqualTo(List.of());
            assertThat(browser.findElement(By.id("progress")).getText()).isEqualTo("6 of 6 looked up");

            browser.navigate().refresh();
            ready(browser, "data-ready");
            assertThat(browser.findElement(By.id("progress")).getText()).isEqualTo("6 of 6 looked up");
            assertThat(browser.findElement(By.id("by")).getAttribute("value")).isEqualTo("yard");
            assertThat(browser.findElements(By.cssSelector(".taken img"))).hasSize(1);
            assertThat(((Number) Objects.requireNonNull(
                                    browser.executeScript("return document.documentElement.scrollWidth")))
                            .intValue())
                    .isLessThanOrEqualTo(320);
            assertThat(broken(browser)).isEmpty();
            browser.executeCdpCommand(
                    "Emulation.setEmulatedMedia",
                    Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", "dark"))));
            assertThat(broken(browser)).isEmpty();
            assertThat(browser.executeScript("return performance.getEntriesByType('resource').map(it => it.name)"
                            + ".filter(it => !it.startsWith('data:') && !it.startsWith('blob:'))"))
                    .isEqualTo(List.of());
            assertThat(browser.manage().logs().get(LogType.BROWSER).getAll())
                    .as("said on the console, policy violations too")
                    .isEmpty();

            browser.executeScript("document.getElementById('save').click()");
            return downloaded(browser, downloads);
        } finally {
            browser.quit();
        }
    }

    private static Path downloaded(ChromeDriver browser, Path downloads) {
        return new WebDriverWait(browser, Duration.ofSeconds(20)).until(it -> {
            try (Stream<Path> files = Files.list(downloads)) {
                return files.filter(file -> file.toString().endsWith(".json"))
                        .findFirst()
                        .orElse(null);
            } catch (IOException e) {
                return null;
            }
        });
    }

    private static List<?> broken(ChromeDriver browser) throws IOException {
        try (InputStream in = Objects.requireNonNull(SurveyPageTest.class.getResourceAsStream("/axe.min.js"))) {
            return (List<?>) Objects.requireNonNull(
                    browser.executeAsyncScript(new String(in.readAllBytes(), StandardCharsets.UTF_8) + """
                    ;
                    const done = arguments[arguments.length - 1];
                    document.querySelectorAll('footer').forEach(it => it.style.position = 'static');
                    axe.run(document, {
                      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
                    }).then(
                      all => done([...all.violations].flatMap(
                        rule => rule.nodes.map(node => rule.id + ' | ' + node.html.slice(0, 120)))),
                      error => done([String(error)]));
                    """));
        }
    }
}
