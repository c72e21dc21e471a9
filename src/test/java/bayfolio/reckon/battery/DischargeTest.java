package bayfolio.reckon.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.reckon.Given;
import bayfolio.reckon.Published;
import bayfolio.reckon.battery.Discharge.Run;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the ready-made cases of arithmetic, and against what must hold for every discharge. */
final class DischargeTest {
    private static final double HOUR = 3600;

    /** Capacity over 20 h, exponent, usable share, current, hours until the limit. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    200, 1.25, 0.5, 25, 3.181, 'T-B10: house bank to half; arithmetic'
                    200, 1.25, 0.5, 8,  12.5,  'T-B11: below the rated current, no more than is rated; arithmetic'
                    """)
    void untilTheLimit(double capacity, double exponent, double usable, double current, double hours, String from) {
        Discharge discharge = new Discharge(battery(capacity, exponent), List.of(run(current, 100)));

        assertThat(discharge.until(new Share(usable)).orElseThrow().value() / HOUR)
                .as(from)
                .isCloseTo(hours, within(0.001));
    }

    /** T-B12: 2 h at 10 A, then 5 A; arithmetic, in the manner of Miner's sum. */
    @Test
    void twoStages() {
        Peukert battery = battery(100, 1.2);
        Discharge first = new Discharge(battery, List.of(run(10, 2)));
        Discharge both = new Discharge(battery, List.of(run(10, 2), run(5, 30)));

        assertThat(100 * first.used()).isCloseTo(22.97, within(0.01));
        assertThat(both.until(new Share(1)).orElseThrow().value() / HOUR - 2).isCloseTo(15.405, within(0.001));
    }

    /** T-B13: 900 W at 90 %, page on inverters; T-B14: 1,000 W without loss, a magazine prints 83.3 A. Verified. */
    @ParameterizedTest
    @CsvSource({"900, 0.9, 83.333", "1000, 1, 83.333"})
    void currentOfAnInverter(double watts, double efficiency, double amps) {
        Inverting inverter = new Inverting(new Volts(12), given(new Share(efficiency)), given(new Watts(0)));

        assertThat(inverter.draws(new Watts(watts)).value()).isCloseTo(amps, within(0.001));
    }

    /** T-B15: 12.8 V, 100 Ah, 80 %; 300 W at 90 % and 15 W idle; arithmetic. */
    @Test
    void runTimeWithIdleDraw() {
        Inverting inverter = new Inverting(new Volts(12.8), given(new Share(0.9)), given(new Watts(15)));
        Amps current = inverter.draws(new Watts(300)).plus(inverter.idles());

        assertThat(0.8 * battery(100, 1).lasts(current).value() / HOUR).isCloseTo(2.9397, within(0.001));
    }

    /** T-B17: 20 W at 12 V for a day; arithmetic. */
    @Test
    void idleDrainOfADay() {
        Inverting inverter = new Inverting(new Volts(12), given(new Share(0.9)), given(new Watts(20)));

        assertThat(new Run(inverter.idles(), new Seconds(24 * HOUR)).drawn().value())
                .isCloseTo(40, within(1e-9));
    }

    /** T-B16: the usual shares of a published comparison, 600 and 960 Wh of 12 V and 100 Ah; verified. */
    @Test
    void usableEnergy() {
        assertThat(12 * 100 * BatteryKind.AGM.usable().value().value()).isEqualTo(600);
        assertThat(12 * 100 * BatteryKind.LITHIUM.usable().value().value()).isEqualTo(960);
    }

    @Test
    void nothingRunsForEver() {
        Discharge none = new Discharge(battery(100, 1.2), List.of(run(0, 5), run(5, 0)));

        assertThat(none.runs()).isEmpty();
        assertThat(none.used()).isZero();
        assertThat(none.until(new Share(0.5))).isEmpty();
        assertThat(Discharge.together(battery(100, 1.2), List.of()).drawn().value())
                .isZero();
    }

    @Test
    void allAtOnceTakesNoLessThanAnyOrderAndTheSameCharge() {
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            Peukert battery = battery(50 + 500 * random.nextDouble(), 1 + 0.5 * random.nextDouble());
            List<Run> runs = runs(random);
            List<Run> shuffled = new ArrayList<>(runs);
            Collections.shuffle(shuffled, random);
            Discharge together = Discharge.together(battery, runs);
            Discharge inTurn = new Discharge(battery, shuffled);

            assertThat(together.used()).isGreaterThanOrEqualTo(inTurn.used() - 1e-9);
            assertThat(together.drawn().value()).isCloseTo(inTurn.drawn().value(), within(1e-6));
            assertThat(together.used())
                    .isGreaterThanOrEqualTo(
                            together.drawn().value() / battery.rated().value() - 1e-9);
            assertThat(Discharge.together(battery, shuffled).used()).isCloseTo(together.used(), within(1e-9));
        }
    }

    @Test
    void moreCapacityNeverGivesLessTime() {
        Random random = new Random(12);
        for (int i = 0; i < 2000; i++) {
            double capacity = 50 + 500 * random.nextDouble();
            double exponent = 1 + 0.5 * random.nextDouble();
            List<Run> runs = runs(random);
            Share limit = new Share(0.1 + 0.9 * random.nextDouble());
            Discharge small = Discharge.together(battery(capacity, exponent), runs);
            Discharge large = Discharge.together(battery(1.3 * capacity, exponent), runs);

            assertThat(large.left().value()).isGreaterThanOrEqualTo(small.left().value());
            large.until(limit)
                    .ifPresent(
                            time -> assertThat(small.until(limit).orElseThrow().value())
                                    .isLessThanOrEqualTo(time.value() + 1e-6));
            assertThat(small.until(limit).isPresent()).isEqualTo(small.used() >= limit.value() - 1e-9);
        }
    }

    private static List<Run> runs(Random random) {
        List<Run> runs = new ArrayList<>();
        for (int i = random.nextInt(8); i >= 0; i--) {
            runs.add(run(60 * random.nextDouble(), 0.5 * random.nextInt(24)));
        }
        return runs;
    }

    private static Run run(double amps, double hours) {
        return new Run(new Amps(amps), new Seconds(hours * HOUR));
    }

    private static Peukert battery(double capacity, double exponent) {
        return new Peukert(new AmpHours(capacity), HouseBank.USUALLY_RATED_OVER.value(), exponent);
    }

    private static <T> Given<T> given(T value) {
        return Given.usual(new Published<>("test", value, Published.Status.PUBLISHED, "practice"));
    }
}
