package bayfolio.compose;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.document.Audience;
import bayfolio.document.Content.Steps.Answer;
import bayfolio.document.From;
import bayfolio.document.NodeId;
import bayfolio.document.Stamp;
import bayfolio.finding.Finding;
import bayfolio.procedure.Demo;
import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

final class ActAndPlacesTest {
    private final List<Finding> findings = new ArrayList<>();

    private List<Answer> answers(String points) {
        List<Block> step = Demo.fill("whimbrel", "1. Look at the lamp.\n" + points + """

                        ## Done when
                        It is done.

                        ## If not
                        Call us.
                        """, findings::add)
                .steps()
                .findFirst()
                .orElseThrow()
                .text();
        Stamp stamp = new Stamp(NodeId.of("do/x"), Audience.EVERYBODY, From.PROGRAM, "en-US");
        return new ActAndPlaces(stamp, step, it -> it).answers();
    }

    /** The states that the pieces below an answer speak of. */
    private static String states(Answer answer) {
        return answer.where().stream()
                .flatMap(it -> it.pieces().stream())
                .filter(piece -> piece.sort() == Block.Sort.LOOK)
                .map(Block.Piece::state)
                .collect(Collectors.joining(","));
    }

    @Test
    void anAnswerIsToldTheStateThatItAsksFor() {
        List<Answer> answers = answers("""
                   - **It is dark:** turn it on: [](switch:house-battery-switch "on").
                   - **It blinks:** turn it on: [](switch:house-battery-switch "on").
                   - **It smells:** turn it off: [](switch:house-battery-switch "off").
                """);

        assertThat(findings).isEmpty();
        assertThat(answers.stream().map(ActAndPlacesTest::states)).containsExactly("on", "", "off");
        assertThat(answers.stream().map(it -> Inline.plain(it.then())))
                .containsExactly("turn it on.", "turn it on.", "turn it off.");
    }

    @Test
    void whereAnAnswerLeadsStandsBelowIt() {
        List<Answer> answers = answers("""
                   - **It is out:** bring it in: [](procedure:retract-awning).
                   - **You smell gas:** [](procedure:respond-gas-alarm)
                   - **It is dim:** go to [](trouble:battery-flat).
                """);

        assertThat(findings).isEmpty();
        assertThat(answers.stream().map(it -> Inline.plain(it.look())))
                .containsExactly("It is out:", "You smell gas:", "It is dim:");
        assertThat(answers.stream()
                        .map(it -> it.where().stream()
                                .map(way -> way.thing().target().written())
                                .toList()))
                .containsExactly(
                        List.of("procedure:retract-awning"), List.of("procedure:respond-gas-alarm"), List.of());
    }
}
