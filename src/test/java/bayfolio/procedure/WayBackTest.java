package bayfolio.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.finding.Finding;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Going back follows from going there. */
final class WayBackTest {
    /** What takes back what, as a person who leaves a site does it. */
    private static final Map<String, String> BACK = Map.of(
            "connect-shore-50a", "disconnect-shore-power",
            "connect-shore-30a", "disconnect-shore-power",
            "connect-hookup-230v", "disconnect-hookup-230v",
            "level-with-jacks", "retract-jacks",
            "extend-slide-out", "retract-slide-out",
            "open-gas-supply", "close-gas-supply",
            "extend-awning", "retract-awning");

    @ParameterizedTest
    @ValueSource(strings = {"whimbrel", "dunlin", "turnstone", "phalarope", "redpoll"})
    void leavingASiteIsSettingUpFromItsEnd(String coach) {
        List<String> there = new ArrayList<>(sentTo(coach, "set-up-on-site"));
        there.retainAll(BACK.keySet());
        Collections.reverse(there);
        List<String> expected = there.stream().map(BACK::get).toList();

        List<String> back = new ArrayList<>(sentTo(coach, "break-camp"));
        back.retainAll(BACK.values());

        assertThat(expected).hasSizeGreaterThanOrEqualTo(2);
        assertThat(back).isEqualTo(expected);
    }

    private static List<String> sentTo(String coach, String id) {
        List<Finding> findings = new ArrayList<>();
        Script script = Demo.library().named(Demo.coach(coach).unit(), id).orElseThrow();
        List<String> sent = Filling.fill(
                        script, Demo.coach(coach), Demo.references(Demo.coach(coach), false), findings::add)
                .steps()
                .flatMap(step -> step.text().stream())
                .flatMap(block -> block.links())
                .map(link -> link.target())
                .filter(Target.OfProcedure.class::isInstance)
                .map(target -> ((Target.OfProcedure) target).id())
                .distinct()
                .toList();
        assertThat(findings).isEmpty();
        return sent;
    }
}
