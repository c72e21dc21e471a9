package bayfolio.library;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On the published pages a switch or valve is explained in the step that works it. */
final class SwitchInItsStepTest {
    private static final Pattern WORKS = Pattern.compile(
            "^(?:Open|Shut|Turn (?:on|off)|Turn (?:this|it) (?:on|off)|Switch (?:on|off)|See that .* (?:shut|open|on|off):).*",
            Pattern.DOTALL);

    private static final String SWITCH = "a[href*=#switch-], a[href*=/switch/]";

    private final Map<String, byte[]> files = DemoFleet.files(DemoFleet.web());

    @Test
    void everyStepThatWorksASwitchSaysHowAndWhatIsRightAndWrong() {
        List<String> bare = new ArrayList<>();
        int explained = 0;
        for (String path : files.keySet()) {
            // What is read in danger fits on one screen.
            if (!path.contains("/do/") || page(path).body().hasClass("urgent")) {
                continue;
            }
            for (Element step : page(path).select(".steps > li")) {
                boolean works = step.selectFirst(SWITCH) != null
                        && WORKS.matcher(step.select("> p").text()).matches();
                boolean told = step.select(".handling .act, .handling .state").size() > 0;
                explained += works && told ? 1 : 0;
                if (works && !told) {
                    bare.add(path + ": " + step.select("> p").text());
                }
            }
        }

        assertThat(bare).isEmpty();
        assertThat(explained).isGreaterThan(150);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
                    dunlin, dump-tanks-gravity, gray-dump-valve, Push it in, The T-handle is in, The T-handle is out
                    phalarope, dump-tanks-macerator, gray-dump-valve, PUSH it in, The round handle touches, The round handle stands out
                    whimbrel, dump-tanks-gravity, gray-dump-valve, Pull it DOWN, The D-handle hangs down, The D-handle is up
                    """)
    void aGrayValveThatWorksTheOtherWayRoundIsExplainedWhereItIsOpenedAndWhereItMustBeShut(
            String coach, String procedure, String valve, String open, String openLook, String shutLook) {
        List<Element> steps = page(coach + "/do/" + procedure + ".html").select(".steps > li").stream()
                .filter(step ->
                        step.selectFirst("a[href$=#switch-" + valve + "], a[href$=/switch/" + valve + ".html]") != null)
                .toList();

        assertThat(steps)
                .satisfiesExactly(
                        seen -> {
                            assertThat(seen.select(".look").text()).contains(shutLook);
                            assertThat(seen.select(".wrong").text()).contains(openLook);
                        },
                        opened -> {
                            assertThat(opened.select(".act").text()).contains(open);
                            assertThat(opened.select(".look").text()).contains(openLook);
                            assertThat(opened.select(".wrong").text()).contains(shutLook);
                        },
                        shut -> {
                            assertThat(shut.select(".act").text()).doesNotContain(open);
                            assertThat(shut.select(".look").text()).contains(shutLook);
                        });
    }

    @Test
    void theNoticeOfASwitchThatSpringsBackStandsAtThatSwitch() {
        Element notice = page("whimbrel/do/wake-up-coach.html").selectFirst(".hazard:contains(springs back)");

        Element step = Objects.requireNonNull(notice).parent();
        assertThat(Objects.requireNonNull(step).select(SWITCH).eachAttr("href"))
                .singleElement()
                .asString()
                .endsWith("/switch/house-battery-switch.html");
    }

    @Test
    void aColdRenterIsSentToNoThermostatThatOnlyCools() {
        for (String path : List.of("do/run-furnace", "trouble/no-heat")) {
            List<String> switches =
                    page("whimbrel/" + path + ".html").select(SWITCH).eachAttr("href");

            assertThat(switches).anyMatch(it -> it.endsWith("/switch/hall-thermostat.html"));
            assertThat(switches).noneMatch(it -> it.endsWith("/switch/bedroom-thermostat.html"));
        }
        assertThat(page("whimbrel/do/run-air-conditioner.html").select(SWITCH).eachAttr("href"))
                .anyMatch(it -> it.endsWith("/switch/bedroom-thermostat.html"));
    }

    @Test
    void theButtonThatChoosesAFuelIsNotToldToTurnTheFridgeOff() {
        assertThat(page("dunlin/do/prepare-ferry-or-tunnel.html").select(".steps > li:contains(Turn the fridge off)"))
                .singleElement()
                .satisfies(step -> assertThat(step.select(SWITCH).eachText()).containsExactly("Fridge ON/OFF button"));
    }

    @Test
    void ofSeveralThatEachDoOneIsEnough() {
        assertThat(page("dunlin/do/find-safety-equipment.html")
                        .select("p.any-of + ul.where")
                        .eachText())
                .anyMatch(where -> where.contains("Fire extinguisher in the cab"));
        assertThat(page("phalarope/do/refuel-engine.html")
                        .select("p.any-of + ul.where")
                        .eachText())
                .anyMatch(where -> where.contains("Diesel filler, left") && where.contains("Diesel filler, right"));
    }

    private static Document page(String path) {
        return DemoFleet.whole(DemoFleet.web().resolve(path));
    }
}
