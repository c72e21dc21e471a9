package bayfolio.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RoundingTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "DOWN    | 1234.56 | 1 | 1,234.5",
                "UP      | 1234.51 | 1 | 1,234.6",
                "NEAREST | 1234.55 | 1 | 1,234.6",
                "DOWN    | 2.9999999999 | 0 | 3",
                "UP      | 3.0000000001 | 0 | 3",
                "DOWN    | -0.2 | 0 | -1",
                "UP      | -0.2 | 0 | 0",
                "NEAREST | 0 | 2 | 0.00"
            })
    void roundsToItsSideAndNotForASlip(Rounding toward, double value, int decimals, String shown) {
        assertThat(toward.print(value, decimals)).isEqualTo(shown);
    }

    @Test
    void roundsEachSystemByItself() {
        assertThat(Rounding.DOWN.print(new Liters(100), MeasureSystem.US).toString())
                .isEqualTo("26 gal (100 L)");
        assertThat(Rounding.UP.print(new Kilograms(100.2), MeasureSystem.METRIC).toString())
                .isEqualTo("101 kg (221 lb)");
        assertThat(Rounding.UP.print(new Meters(3.941), MeasureSystem.METRIC).toString())
                .isEqualTo("3.95 m (13 ft)");
    }

    @Test
    void nothingThatIsNoNumberIsShown() {
        assertThatThrownBy(() -> Rounding.DOWN.print(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Rounding.DOWN.print(Double.POSITIVE_INFINITY, 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
