package bayfolio.reckon;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.explain.Explained;
import bayfolio.explain.Explanations;
import bayfolio.explain.Input;
import bayfolio.model.Coach;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** All figures that no published source was found for; a new one is written down here, and checked some day. */
final class UnverifiedFiguresTest {
    private static final String SPARSE = """
            charger: {rating: 30 A}
            supplies:
              - {id: shore, name: Shore, source: shore, volts: 120 V, amps: 30 A, legs: 1}
              - {id: gen, name: Generator, source: generator, volts: 120 V, amps: 25 A, legs: 1}
            generator: {power: 3000 W, volts: 120 V, legs: 1, fuel: gasoline}
            banks:
              - {id: house, name: House batteries, roles: [house-bank], chemistry: agm, volts: 12 V, amp-hours: 200 Ah}
            circuits:
              - {id: one, name: Lights, current: dc, volts: 12 V, breaker: 10 A}
              - {id: outlets, name: Outlets, current: ac, volts: 120 V, breaker: 15 A}
            loads:
              - {id: lamp, name: Lamp, circuit: one, amps: 2 A, a-night: 5 h}
              - {id: tv, name: TV, circuit: outlets, watts: 180 W, on-inverter: yes, a-night: 2 h}
            """;

    @Test
    void thereAreTheseAndNoMore() {
        Stream<Coach> coaches =
                Stream.concat(DemoFleet.coaches().stream().map(TestCoach::demo), Stream.of(TestCoach.of(SPARSE)));
        List<Input> unverified = coaches.flatMap(coach -> Explanations.of(coach, TestCoach.WORDS).stream())
                .filter(Explained.Explanation.class::isInstance)
                .flatMap(each -> ((Explained.Explanation) each).inputs().stream())
                .filter(input -> input.origin() instanceof Origin.Usual usual
                        && usual.figure().unverified())
                .toList();

        assertThat(unverified.stream().map(Input::name).distinct().sorted().toList())
                .containsExactly(
                        "Margin under signs",
                        "each person and day, generous",
                        "what comes out of the charger",
                        "what the inverter takes for itself");
        assertThat(unverified)
                .allSatisfy(input -> assertThat(TestCoach.WORDS.say("source."
                                + ((Origin.Usual) input.origin()).figure().told()))
                        .isNotBlank());
    }
}
