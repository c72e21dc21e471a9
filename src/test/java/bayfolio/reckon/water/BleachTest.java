package bayfolio.reckon.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bayfolio.measure.Liters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against figures that were published for other tanks. */
final class BleachTest {
    private static final double GALLON = 3.785411784;
    private static final double FLUID_OUNCE = GALLON / 128;

    /** The wall wash of a state health authority: 1.5 fl oz of 8.25 % in 5 gal for 200 mg/L. Verified. */
    @Test
    void theWallWashOfAHealthAuthority() {
        Liters bleach = Bleach.STRONG.toReach(200, new Liters(5 * GALLON));

        assertThat(bleach.value()).isCloseTo(1.5 * FLUID_OUNCE, within(0.005));
    }

    /** An operator's manual: 1/4 cup a 15 gal gives 50 ppm; the rule dates from bleach of 5.25 %. Common practice. */
    @ParameterizedTest
    @CsvSource({"15, 60", "57.5, 230"})
    void theQuarterCupOfOlderBleach(double gallons, double milliliters) {
        double quarterCups = gallons / 15 * GALLON / 64 * 1000;

        assertThat(Bleach.WEAK.toReach(50, new Liters(gallons * GALLON)).value() * 1000)
                .isCloseTo(quarterCups, within(0.12 * milliliters));
    }

    /** 4 cups of 5.25 % in 100 gal are 134 mg/L, says an advice page. Common practice. */
    @Test
    void fourCupsInAHundredGallons() {
        assertThat(Bleach.WEAK.toReach(134, new Liters(100 * GALLON)).value()).isCloseTo(4 * GALLON / 16, within(0.01));
    }

    @Test
    void aTinyTankGetsWhatCanBeMeasured() {
        assertThat(Bleach.WEAK.toReach(50, new Liters(0.5)).value()).isEqualTo(0.005);
    }
}
