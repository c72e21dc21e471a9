package bayfolio.reckon.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against two published examples, and against arithmetic. */
final class PeukertTest {
    private static final double HOUR = 3600;

    /** Capacity, exponent, current, hours; `from` is the case, its source and how far that was verified. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    100, 1.2, 5, 14.4956, 'T-B1: an engineering blog; result printed as 14.5; verified'
                    """)
    void ratedAtOneAmpere(double capacity, double exponent, double current, double hours, String from) {
        Peukert battery = Peukert.atOneAmpere(new AmpHours(capacity), exponent);

        assertThat(battery.lasts(new Amps(current)).value() / HOUR).as(from).isCloseTo(hours, within(0.001));
    }

    /** Capacity over 20 h, exponent, current, hours, tolerance. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    7.2, 1.15,    6.020833333333, 0.7837333333, 0.00017, 'T-B2: code of a power supply project; 47.024 min, printed as 47.0; verified'
                    100, 1.2,     10,             8.7055,       0.001,   'T-B3: an encyclopedia; from memory'
                    225, 1.25,    11.25,          20,           1e-12,   'T-B4: the rated current takes the rated time, whatever the exponent; arithmetic'
                    100, 1.0,     10,             10,           1e-12,   'T-B5: without the effect; arithmetic'
                    100, 1.41504, 10,             7.5,          0.001,   'T-B6: a retailer; exponent between two discharges; inputs verified'
                    100, 1.36848, 20,             3,            0.001,   'T-B7: a page on discharge rates; the same; inputs verified'
                    """)
    void ratedOverTwentyHours(
            double capacity, double exponent, double current, double hours, double tolerance, String from) {
        assertThat(battery(capacity, exponent).lasts(new Amps(current)).value() / HOUR)
                .as(from)
                .isCloseTo(hours, within(tolerance));
    }

    /** T-B8: an electric-vehicle page measured 2.23 times the time at half the current. Inputs verified. */
    @Test
    void halfTheCurrentLastsMoreThanTwice() {
        Peukert battery = battery(150, 1.15704);

        assertThat(battery.lasts(new Amps(93)).value()
                        / battery.lasts(new Amps(186)).value())
                .isCloseTo(2.23, within(1e-4));
    }

    /** T-B9: arithmetic, 100 Ah over 20 h, exponent 1.1; a published card that says otherwise is wrong. */
    @ParameterizedTest
    @CsvSource({"10, 93.303", "20, 87.055", "50, 79.433", "100, 74.113"})
    void strongCurrentsGiveFewerAmpHours(double current, double ampHours) {
        assertThat(battery(100, 1.1).gives(new Amps(current)).value()).isCloseTo(ampHours, within(0.001));
    }

    /** T-B3: 87.06 Ah, from memory of an encyclopedia. */
    @Test
    void ampHoursAtTwiceTheRatedCurrent() {
        assertThat(battery(100, 1.2).gives(new Amps(10)).value()).isCloseTo(87.06, within(0.01));
    }

    /** T-B18: 1,000 Ah at 25 C do what 1,650 Ah do at -10 C; a battery maker's sizing note, verified. */
    @Test
    void inHardFrostItTakesALargerBattery() {
        Share holds = BatteryKind.FLOODED.holds(ANight.TEMPERATURES.get(2));

        assertThat(battery(1650, 1.25).holding(holds).rated().value()).isCloseTo(1000, within(1e-9));
    }

    @Test
    void noCurrentIsNoDischarge() {
        assertThatIllegalArgumentException().isThrownBy(() -> battery(100, 1.2).lasts(new Amps(0)));
        assertThatIllegalArgumentException().isThrownBy(() -> battery(0, 1.2));
        assertThatIllegalArgumentException().isThrownBy(() -> battery(100, 0.9));
    }

    @Test
    void moreCapacityNeverLastsLessAndNoCurrentGetsMoreThanIsRated() {
        Random random = new Random(7);
        for (int i = 0; i < 5000; i++) {
            double capacity = 1 + 999 * random.nextDouble();
            double exponent = 1 + 0.6 * random.nextDouble();
            Amps current = new Amps(0.01 + 400 * random.nextDouble());
            Amps stronger = new Amps(current.value() * (1 + random.nextDouble()));
            Peukert battery = battery(capacity, exponent);
            Peukert larger = battery(capacity * (1 + random.nextDouble()), exponent);

            assertThat(battery.gives(current).value()).isLessThanOrEqualTo(capacity * (1 + 1e-12));
            assertThat(larger.lasts(current).value())
                    .isGreaterThanOrEqualTo(battery.lasts(current).value());
            assertThat(battery.lasts(stronger).value())
                    .isLessThanOrEqualTo(battery.lasts(current).value());
            assertThat(battery.gives(stronger).value())
                    .isLessThanOrEqualTo(battery.gives(current).value() * (1 + 1e-12));
        }
    }

    private static Peukert battery(double capacity, double exponent) {
        return new Peukert(new AmpHours(capacity), new Seconds(20 * HOUR), exponent);
    }
}
