package bayfolio.procedure;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.finding.Finding;
import bayfolio.prose.Target;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A coach is set up, and left again, in its own order, which is written down once. */
final class WayBackTest {
    /** As the people of the yard told it of each coach before there was a list. */
    @ParameterizedTest
    @CsvSource({
        "whimbrel, level-with-jacks connect-shore-50a extend-slide-out set-up-entry-step connect-city-water"
                + " open-gas-supply connect-sewer-at-site extend-awning",
        "phalarope, connect-shore-50a level-with-jacks extend-slide-out set-up-entry-step connect-city-water"
                + " connect-sewer-at-site extend-awning",
        "dunlin, level-with-ramps set-up-entry-step connect-shore-30a connect-city-water open-gas-supply"
                + " connect-sewer-at-site extend-awning",
        "turnstone, level-with-ramps set-up-entry-step connect-hookup-230v open-gas-supply extend-awning"
                + " fill-fresh-tank",
        "redpoll, level-with-ramps set-up-entry-step connect-hookup-230v open-gas-supply extend-awning"
                + " fill-fresh-tank"
    })
    void aCoachIsSetUpInItsOwnOrder(String coach, String order) {
        assertThat(sentTo(coach, "set-up-on-site")).containsSubsequence(order.split(" "));
    }

    @ParameterizedTest
    @CsvSource({
        "whimbrel, retract-awning disconnect-city-water dump-tanks-gravity close-gas-supply retract-slide-out"
                + " disconnect-shore-power stow-entry-step retract-jacks",
        "phalarope, retract-awning disconnect-city-water dump-tanks-macerator retract-slide-out retract-jacks"
                + " disconnect-shore-power stow-entry-step",
        "dunlin, retract-awning disconnect-city-water dump-tanks-gravity close-gas-supply disconnect-shore-power"
                + " stow-entry-step drive-off-ramps",
        "turnstone, retract-awning close-gas-supply disconnect-hookup-230v stow-entry-step drive-off-ramps",
        "redpoll, retract-awning close-gas-supply disconnect-hookup-230v stow-entry-step drive-off-ramps"
    })
    void leavingASiteIsSettingUpFromItsEndAndCleanHandsFirst(String coach, String order) {
        assertThat(sentTo(coach, "break-camp")).containsSubsequence(order.split(" "));
    }

    /** No page tells another order; each that has a turn sends to the list. */
    @ParameterizedTest
    @ValueSource(strings = {"whimbrel", "phalarope"})
    void eachPageThatHasATurnSendsToTheOneOrder(String coach) {
        for (String id : List.of("retract-slide-out", "retract-jacks", "disconnect-shore-power")) {
            assertThat(linksOf(coach, id)).as(id).contains("break-camp");
        }
        for (String id : List.of("extend-slide-out", "level-with-jacks")) {
            assertThat(linksOf(coach, id)).as(id).contains("set-up-on-site");
        }
    }

    private static List<String> linksOf(String coach, String id) {
        return procedure(coach, id)
                .links()
                .map(link -> link.target())
                .filter(Target.OfProcedure.class::isInstance)
                .map(target -> ((Target.OfProcedure) target).id())
                .toList();
    }

    private static List<String> sentTo(String coach, String id) {
        return procedure(coach, id)
                .steps()
                .flatMap(step -> step.text().stream())
                .flatMap(block -> block.links())
                .map(link -> link.target())
                .filter(Target.OfProcedure.class::isInstance)
                .map(target -> ((Target.OfProcedure) target).id())
                .distinct()
                .toList();
    }

    private static Procedure procedure(String coach, String id) {
        List<Finding> findings = new ArrayList<>();
        Script script = Demo.library().named(Demo.coach(coach).unit(), id).orElseThrow();
        Procedure procedure = ProcedureFiller.fill(
                script, Demo.coach(coach), Demo.references(Demo.coach(coach), false), findings::add);
        assertThat(findings).isEmpty();
        return procedure;
    }
}
