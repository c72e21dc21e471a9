package bayfolio.render;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.nio.file.Files;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What renters want to know, by tapping from the first page: on each coach within three taps and three screens. */
final class TenTasksTest {
    private static final int TALL = 844;
    private static final int MOST_TAPS = 3;
    private static final int MOST_SCREENS = 3;

    /**
     * @param page that answers it; a coach without it has no such task
     * @param taps words of the links, one after the other
     * @param answer what must be read there, a pattern
     */
    private record Task(String name, String page, List<String> taps, String answer) {
        @Override
        public String toString() {
            return name;
        }
    }

    static List<Task> tasks() {
        return List.of(
                new Task(
                        "wake the coach",
                        "do/wake-up-coach",
                        List.of("At the coach, in the dark", "Wake up the coach"),
                        "(?s).*[Bb]attery switch.*"),
                new Task(
                        "a smaller post",
                        "do/connect-smaller-supply",
                        List.of("At a campsite", "Plug in at a smaller outlet"),
                        "(?s).*adapter.*"),
                new Task(
                        "empty the tanks through the hose",
                        "do/dump-tanks-gravity",
                        List.of("At a campsite", "Empty the waste tanks"),
                        "(?s).*[Bb]lack valve.*[Gg]ray valve.*"),
                new Task(
                        "empty the tanks with the pump",
                        "do/dump-tanks-macerator",
                        List.of("At a campsite", "Empty the tanks"),
                        "(?s).*hose.*"),
                new Task(
                        "empty the cassette",
                        "do/empty-cassette",
                        List.of("At a campsite", "Empty the toilet cassette"),
                        "(?s).*assette.*"),
                new Task(
                        "dead outlets",
                        "trouble/dead-outlets",
                        List.of("Outlets", "Some outlets are dead"),
                        "(?s).*(breaker|fuse|safety).*"),
                new Task(
                        "no heat",
                        "trouble/no-heat",
                        List.of("Cold", "The heat does not come on"),
                        "(?s).*(thermostat|[Hh]eater|[Ff]urnace).*"),
                new Task(
                        "slide stuck",
                        "trouble/slide-stuck",
                        List.of("Stuck", "The slide-out will not move"),
                        "(?s).*[Ss]lide.*"),
                new Task(
                        "the drinking hose",
                        "do/connect-city-water",
                        List.of("At a campsite", "Connect the water hose"),
                        "(?s).*[Hh]ose.*(side|locker|bay).*"),
                new Task("a bridge of 12 ft 3 in", "index", List.of(), "(?s).*Lowest sign to drive under\\s+\\S.*"),
                new Task(
                        "the heater through the night",
                        "worked-out/a-night",
                        List.of("Worked out for you", "night"),
                        "(?s).*%.*"),
                new Task(
                        "the morning of the return",
                        "do/prepare-return",
                        List.of("Giving it back", "Get the coach ready to hand back"),
                        "(?s).*(full|empty|fuel).*"));
    }

    /** Follows the first link that has the words. */
    private static final String TAP = """
            const link = [...document.querySelectorAll('main a, nav a')].find(it => it.textContent.includes(arguments[0]));
            if (link) link.click();
            return link ? '' : [...document.querySelectorAll('main a')].map(it => it.textContent).join(' | ');
            """;

    @RegisterExtension
    static final OpenSite SITE = new OpenSite(390, TALL);

    @ParameterizedTest
    @MethodSource("tasks")
    void itIsAnsweredOnEachCoachThatHasIt(Task task) {
        int coaches = 0;
        for (String coach : DemoFleet.looked()) {
            if (!Files.exists(DemoFleet.web().resolve(coach + "/" + task.page() + ".html"))) {
                continue;
            }
            coaches++;
            SITE.browser().get(SITE.origin() + coach + "/index.html");
            assertThat(task.taps().size()).isLessThanOrEqualTo(MOST_TAPS);
            for (String tap : task.taps()) {
                assertThat(SITE.browser().executeScript(TAP, tap))
                        .as("%s: `%s` among", coach, tap)
                        .isEqualTo("");
            }
            assertThat(SITE.browser().getCurrentUrl()).as(coach).contains(coach + "/" + task.page());
            // What is read without scrolling further than that.
            Object read = SITE.browser().executeScript("""
                            const most = arguments[0];
                            return [...document.querySelectorAll('main h1, main p, main li, main dt, main dd, main td')]
                              .filter(it => it.getBoundingClientRect().top < most)
                              .map(it => it.innerText).join(' \\n');
                            """, TALL * MOST_SCREENS);
            assertThat(String.valueOf(read)).as(coach).matches(task.answer());
        }
        assertThat(coaches).isPositive();
    }

    /** Height and margin, worked out by hand from the descriptions: who passes under a sign of 12 ft 3 in. */
    @ParameterizedTest
    @CsvSource({"dunlin, true", "whimbrel, false", "phalarope, false"})
    void aBridgeIsPassedOrNot(String coach, boolean passes) {
        SITE.browser().get(SITE.origin() + coach + "/index.html");

        String sign = String.valueOf(SITE.browser().executeScript("""
                        return [...document.querySelectorAll('#read-out dt')]
                          .find(it => it.textContent.startsWith('Lowest sign')).nextElementSibling.textContent;
                        """));
        Matcher feet = Pattern.compile("(\\d+) ft(?: (\\d+) in)?").matcher(sign);
        assertThat(feet.find()).as(sign).isTrue();
        int inches =
                Integer.parseInt(feet.group(1)) * 12 + (feet.group(2) == null ? 0 : Integer.parseInt(feet.group(2)));
        assertThat(inches <= 12 * 12 + 3).isEqualTo(passes);
    }
}
