package bayfolio.reckon.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.LitersPerHour;
import bayfolio.measure.Share;
import bayfolio.measure.Watts;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RechargeTest {
    private static final double HOUR = 3600;
    private static final double GALLON = 3.785411784;

    /** 100 Ah into lithium at 50 A and 99 %: arithmetic. */
    @Test
    void aSteadyCurrentToTheEnd() {
        Recharge lithium = recharge(200, 50, 100, 0.99, 1, 1);

        assertThat(lithium.time(new AmpHours(100)).value() / HOUR).isCloseTo(100 / (0.99 * 50), within(1e-9));
    }

    /**
     * 100 Ah at 20 A, no loss, from half: 30 Ah up to 80 % take 1.5 h; then the current falls with what is missing, and
     * from 20 % to 5 % missing takes {@code ln 4} h. Arithmetic.
     */
    @Test
    void fallingFromTheKneeOn() {
        Recharge lead = recharge(100, 20, 20, 1, 0.8, 0.95);

        assertThat(lead.time(new AmpHours(50)).value() / HOUR).isCloseTo(1.5 + Math.log(4), within(1e-9));
        assertThat(lead.time(new AmpHours(10)).value() / HOUR).isCloseTo(Math.log(2), within(1e-9));
        assertThat(lead.time(new AmpHours(3)).value()).isZero();
    }

    /** The published pair: 100 Ah of lithium take 80 A, 400 Ah take 240 A; what is taken here lies below. Verified. */
    @ParameterizedTest
    @CsvSource({"100, 80", "400, 240"})
    void lithiumTakesNoMoreThanAColumnSays(double capacity, double amps) {
        assertThat(capacity * BatteryKind.LITHIUM.accepts().value()).isLessThanOrEqualTo(amps);
    }

    @Test
    void whatCannotBeChargedIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> recharge(0, 20, 20, 1, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> recharge(100, 20, 20, 1, 0.8, 1));
    }

    @Test
    void aStrongerChargerNeverTakesLonger() {
        Random random = new Random(14);
        for (int i = 0; i < 2000; i++) {
            double capacity = 50 + 500 * random.nextDouble();
            double accepts = capacity * (0.05 + random.nextDouble());
            double current = 1 + 200 * random.nextDouble();
            AmpHours missing = new AmpHours(capacity * random.nextDouble());
            double weak = recharge(capacity, current, accepts, 0.8, 0.8, 0.95)
                    .time(missing)
                    .value();
            double strong = recharge(capacity, 1.5 * current, accepts, 0.8, 0.8, 0.95)
                    .time(missing)
                    .value();
            double more = recharge(capacity, current, accepts, 0.8, 0.8, 0.95)
                    .time(new AmpHours(Math.min(capacity, 1.2 * missing.value())))
                    .value();

            assertThat(strong).isLessThanOrEqualTo(weak + 1e-6);
            assertThat(more).isGreaterThanOrEqualTo(weak - 1e-6);
        }
    }

    /** T-G9 (8 kW diesel, 0.54 gal/h at 6 kW: industry charts, verified) and T-G11 (2 kW by the same line: drawn on). */
    @ParameterizedTest
    @CsvSource({"6000, 0.54, false", "8000, 0.69, false", "4000, 0.39, false", "2000, 0.24, true"})
    void fuelAtAShareOfTheLoad(double watts, double gallons, boolean drawnOn) {
        ChargingFuel fuel =
                new ChargingFuel(new Watts(8000), new LitersPerHour(0.39 * GALLON), new LitersPerHour(0.69 * GALLON));

        assertThat(fuel.at(new Watts(watts)).value() / GALLON).isCloseTo(gallons, within(1e-9));
        assertThat(fuel.drawnOn(new Watts(watts))).isEqualTo(drawnOn);
    }

    /** A line as steep as this would say that an idling generator makes fuel. */
    @Test
    void fuelIsNeverLessThanInProportion() {
        ChargingFuel steep = new ChargingFuel(new Watts(4000), new LitersPerHour(1), new LitersPerHour(3));

        assertThat(steep.at(new Watts(400)).value()).isCloseTo(0.2, within(1e-9));
    }

    private static Recharge recharge(
            double capacity, double current, double accepts, double givesBack, double knee, double charged) {
        return new Recharge(
                new AmpHours(capacity),
                new Amps(current),
                new Amps(accepts),
                new Share(givesBack),
                new Share(knee),
                new Share(charged));
    }
}
