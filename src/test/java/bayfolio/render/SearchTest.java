package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.support.ui.WebDriverWait;

/** What renters type on their phones, in a real browser. */
final class SearchTest {
    private static final Path WORDS = Path.of("src/test/resources/bayfolio/search/words.txt");

    /** For each word, what was found, as `group address`, best first. */
    private static final String TYPED = """
            const field = document.querySelector('#search input');
            return arguments[0].map(word => {
              field.value = word;
              field.dispatchEvent(new Event('input'));
              return [...document.querySelectorAll('#search .found a')].map(it => it.getAttribute('href'));
            });
            """;

    @RegisterExtension
    static final OpenSite SITE = new OpenSite(1280, 800);

    private static Map<String, List<String>> found(String coach, List<String> words) {
        SITE.browser().get(SITE.origin() + coach + "/a-z.html");
        new WebDriverWait(SITE.browser(), Duration.ofSeconds(20))
                .until(it ->
                        !it.findElements(By.cssSelector("#search[data-ready]")).isEmpty());
        List<?> found = (List<?>) Objects.requireNonNull(SITE.browser().executeScript(TYPED, words));
        Map<String, List<String>> byWord = new LinkedHashMap<>();
        for (int each = 0; each < words.size(); each++) {
            byWord.put(
                    words.get(each),
                    ((List<?>) found.get(each)).stream().map(String::valueOf).toList());
        }
        return byWord;
    }

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#looked")
    void everyWordThatRentersHaveLeadsSomewhere(String coach) throws Exception {
        Map<String, String> wanted = new LinkedHashMap<>();
        for (String line : Files.readAllLines(WORDS)) {
            if (line.contains(" = ")) {
                wanted.put(line.replaceFirst(" = .*", ""), line.replaceFirst(".* = ", ""));
            }
        }
        assertThat(wanted).hasSizeGreaterThanOrEqualTo(72);
        List<String> pages =
                new ArrayList<>(DemoFleet.files(DemoFleet.web().resolve(coach)).keySet());

        Map<String, List<String>> found = found(coach, List.copyOf(wanted.keySet()));

        List<String> missed = new ArrayList<>();
        found.forEach((word, hits) -> {
            String where = Objects.requireNonNull(wanted.get(word));
            boolean there = pages.stream().anyMatch(page -> page.startsWith(where.replaceFirst("#.*", "")));
            if (hits.isEmpty() || there && hits.stream().noneMatch(hit -> hit.contains(where))) {
                missed.add(word + " finds " + hits);
            }
        });
        assertThat(missed).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "stoev, do/use-oven",
        "refridgerator, trouble/fridge-warm",
        "awnning, do/extend-awning",
        "L6, compartment/service-bay",
        "l6 service, compartment/service-bay",
        "WATER PUMP, switch/",
        "TANK heat, switch/",
        "slide, do/extend-slide-out",
        "how do i empty the black tank, do/"
    })
    void aSlipOfTheFingerACodeAndAPlateAreFoundToo(String typed, String where) {
        assertThat(found("whimbrel", List.of(typed)).get(typed)).as(typed).anyMatch(hit -> hit.contains(where));
    }

    @Test
    void whatIsFoundStandsUnderWhatItIs() {
        found("whimbrel", List.of("black water"));

        assertThat(SITE.browser().executeScript("""
                        return [...document.querySelectorAll('#search h2')].map(it => it.textContent);
                        """))
                .asList()
                .contains("What to do", "When something is wrong", "Where it is");
    }

    /** What styles the search must not touch the bar, where a link bears its name. */
    @Test
    void theBarStandsAsOnEveryPage() {
        browserAt("whimbrel/a-z.html");
        Object here = heights();
        browserAt("whimbrel/words.html");

        assertThat(here).isEqualTo(heights());
    }

    private static void browserAt(String page) {
        SITE.browser().get(SITE.origin() + page);
    }

    private static Object heights() {
        return Objects.requireNonNull(SITE.browser().executeScript("""
                        return [...document.querySelectorAll('nav.bar a')].map(it => it.getBoundingClientRect().top);
                        """));
    }

    @Test
    void whoComesBackFindsWhatHeFound() {
        found("dunlin", List.of("stove"));
        SITE.browser().executeScript("document.querySelector('#search .found a').click()");
        SITE.browser().navigate().back();

        new WebDriverWait(SITE.browser(), Duration.ofSeconds(20))
                .until(it ->
                        !it.findElements(By.cssSelector("#search .found a")).isEmpty());
        assertThat(SITE.browser().findElement(By.cssSelector("#search input")).getDomProperty("value"))
                .isEqualTo("stove");
    }

    @Test
    void whereNothingIsFoundThereIsAWayOn() {
        assertThat(found("dunlin", List.of("xqzzw")).get("xqzzw")).isEmpty();

        assertThat(SITE.browser().findElement(By.cssSelector("#search p")).getText())
                .contains("call us");
    }
}
