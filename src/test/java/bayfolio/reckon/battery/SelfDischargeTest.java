package bayfolio.reckon.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class SelfDischargeTest {
    private static final double DAY = 86_400;

    /** T-B21: 100 Ah, 5 % a month, three months; a page on storage, inputs verified. */
    @Test
    void threeMonthsOnTheShelf() {
        SelfDischarge shelf = new SelfDischarge(new Share(0.05), 0);

        assertThat(shelf.left(new AmpHours(100), new Seconds(90 * DAY)).value()).isCloseTo(85.74, within(0.01));
    }

    /** T-B17: 20 W at 12 V take 40 Ah a day, so 200 Ah are half empty after 2.5 days when nothing else takes any. */
    @Test
    void aDrainAlone() {
        SelfDischarge drained = new SelfDischarge(new Share(0), 40.0 / 200);

        assertThat(drained.until(new Share(0.5)).orElseThrow().value() / DAY).isCloseTo(2.5, within(1e-9));
        assertThat(drained.left(new Seconds(30 * DAY)).value()).isZero();
    }

    @Test
    void whatLosesNothingLastsForEver() {
        assertThat(new SelfDischarge(new Share(0), 0).until(new Share(0.5))).isEmpty();
        assertThat(new SelfDischarge(new Share(0.05), 0).until(new Share(0))).isEmpty();
    }

    @Test
    void atTheTimeItNamesTheShareIsLeftAndADrainNeverMakesItLater() {
        Random random = new Random(13);
        for (int i = 0; i < 2000; i++) {
            Share monthly = new Share(0.2 * random.nextDouble());
            double drain = 0.2 * random.nextDouble() + 1e-4;
            Share limit = new Share(0.9 * random.nextDouble());
            SelfDischarge standing = new SelfDischarge(monthly, drain);
            Seconds until = standing.until(limit).orElseThrow();
            Optional<Seconds> without = new SelfDischarge(monthly, 0).until(limit);

            assertThat(standing.left(until).value()).isCloseTo(limit.value(), within(1e-9));
            without.ifPresent(time -> assertThat(time.value()).isGreaterThanOrEqualTo(until.value()));
        }
    }
}
