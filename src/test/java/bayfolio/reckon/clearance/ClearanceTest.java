package bayfolio.reckon.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.explain.Explained;
import bayfolio.measure.MeasureSystem;
import bayfolio.measure.Meters;
import bayfolio.measure.NotAQuantityException;
import bayfolio.reckon.Question;
import bayfolio.reckon.TestCoach;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClearanceTest {
    /** T48, own rule of the project: 148.3 in print as 12 ft 5 in and 3.77 m, on the card 3.8 m. */
    @Test
    void heightIsRoundedUp() {
        Meters height = new Meters(148.3 * 0.0254);

        assertThat(1000 * height.value()).isCloseTo(3766.8, within(0.1));
        assertThat(height.roundedUp(MeasureSystem.US).toString()).isEqualTo("12 ft 5 in");
        assertThat(height.roundedUp(MeasureSystem.METRIC).toString()).isEqualTo("3.77 m");
        assertThat(Clearance.card(height, MeasureSystem.US).toString()).isEqualTo("12 ft 5 in");
        assertThat(Clearance.card(height, MeasureSystem.METRIC).toString()).isEqualTo("3.8 m");
    }

    /** T49 [S77] VERIFIED: 12 ft 6 in are signed as 3.8 m, 13 ft 6 in as 4.1 m; T52 [S14]: 4.00 m as 13 ft 1 in. */
    @ParameterizedTest
    @CsvSource({"12 ft 6 in,METRIC,3.8", "13 ft 6 in,METRIC,4.1", "4 m,US,3.9878"})
    void signsAreRoundedDown(String limit, MeasureSystem signs, double meters) throws NotAQuantityException {
        assertThat(Clearance.asSigned(Meters.SCALE.parse(limit), signs).value()).isCloseTo(meters, within(1e-9));
    }

    /** T50, own rule: 148.3 in under 12 ft 6 in leave 1.7 in (43.2 mm), less than 6 in: do not enter. */
    @Test
    void tooLittleIsLeft() throws NotAQuantityException {
        Clearance coach = Clearance.of(new Meters(148.3 * 0.0254), MeasureSystem.US);
        Meters sign = Meters.SCALE.parse("12 ft 6 in");

        assertThat(1000 * coach.under(sign).value()).isCloseTo(43.2, within(0.05));
        assertThat(coach.fits(sign)).isFalse();
        assertThat(coach.lowestSign(MeasureSystem.US)
                        .roundedUp(MeasureSystem.US)
                        .toString())
                .isEqualTo("12 ft 11 in");
    }

    /** T51 computed: 12 ft 4 in under 3.7 m: short by 59.2 mm. */
    @Test
    void signInMetersOnly() throws NotAQuantityException {
        Clearance coach = Clearance.of(Meters.SCALE.parse("12 ft 4 in"), MeasureSystem.METRIC);

        assertThat(1000 * coach.under(new Meters(3.7)).value()).isCloseTo(-59.2, within(0.05));
        assertThat(coach.fits(new Meters(3.7))).isFalse();
    }

    /** T52 [S14] VERIFIED: 4.00 m: a coach of 13 ft 1 in passes, one of 13 ft 2 in fails. T53: 102 in are over 2.55 m. */
    @ParameterizedTest
    @CsvSource({
        "13 ft 1 in,8 ft,Height,within it",
        "13 ft 2 in,8 ft,Height,over it by 2 cm (1 in)",
        "9 ft,102 in,Width,over it by 5 cm (2 in)"
    })
    void limitsInEurope(String height, String width, String limit, String result) {
        Explained.Explanation reckoning =
                (Explained.Explanation) TestCoach.told(Question.CLEARANCE, TestCoach.of("""
                region: europe
                size: {length: 20 ft, width: %s, height: %s}
                """.formatted(width, height)));

        assertThat(reckoning.grids().get(2).rows())
                .filteredOn(row -> row.get(0).startsWith(limit))
                .extracting(row -> row.get(2))
                .containsExactly(result);
    }

    /** T53 [S81][S60] VERIFIED: 102 in fit the US width and exceed the 96 in of a tunnel road by 6 in. */
    @Test
    void limitsInAmerica() {
        Explained.Explanation reckoning = (Explained.Explanation) TestCoach.told(
                Question.CLEARANCE, TestCoach.of("size: {length: 20 ft, width: 102 in, height: 9 ft}\n"));

        assertThat(reckoning.grids().get(2).rows())
                .extracting(row -> row.get(2))
                .containsExactly("within it", "over it by 6 in (16 cm)");
        assertThat(reckoning.answer()).isEqualTo("Never drive under a sign lower than 9 ft 6 in (2.9 m).");
        assertThat(reckoning.assumed()).anyMatch(it -> it.contains("mirrors is not stated"));
    }

    /** Whimbrel is 12 ft 7 in (151 in, 3.8354 m); Phalarope 13 ft 1 in, with its antenna up 15 ft 3 in (4.6482 m). */
    @Test
    void theDemoCoaches() {
        assertThat(((Explained.Explanation) TestCoach.told(Question.CLEARANCE, TestCoach.demo("whimbrel"))).answer())
                .isEqualTo("Never drive under a sign lower than 13 ft 1 in (4.0 m). "
                        + "Stay out of gaps narrower than 10 ft 4 in (3.15 m).");
        assertThat(((Explained.Explanation) TestCoach.told(Question.CLEARANCE, TestCoach.demo("redpoll"))).answer())
                .startsWith("Never drive under a sign lower than 3.0 m (9 ft 9 in).");
        assertThat(((Explained.Explanation) TestCoach.told(Question.CLEARANCE, TestCoach.demo("phalarope")))
                        .grids()
                        .get(1)
                        .rows()
                        .get(1))
                .containsExactly("Antenna left up by mistake", "15 ft 9 in", "4.8 m");
    }

    /** Seeded: the lowest sign always fits, the one below never does, and a higher coach never needs a lower sign. */
    @Test
    void invariants() {
        Random random = new Random(19);
        for (MeasureSystem signs : MeasureSystem.values()) {
            for (int number = 0; number < 300; number++) {
                double height = random.nextInt(1000, 5000) / 1000.0;
                Clearance coach = Clearance.of(new Meters(height), signs);
                Meters lowest = coach.lowestSign(signs);
                double step = signs == MeasureSystem.US ? 0.0254 : 0.1;

                assertThat(coach.fits(lowest)).isTrue();
                assertThat(coach.fits(new Meters(lowest.value() - step))).isFalse();
                assertThat(Clearance.of(new Meters(height + random.nextDouble()), signs)
                                .lowestSign(signs)
                                .value())
                        .isGreaterThanOrEqualTo(lowest.value());
            }
        }
    }
}
