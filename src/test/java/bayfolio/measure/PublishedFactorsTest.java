package bayfolio.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class PublishedFactorsTest {
    @ParameterizedTest(name = "{1} is {2} {3}")
    @CsvFileSource(resources = "nist-sp811-factors.csv", useHeadersInDisplayName = true, encoding = "UTF-8")
    void unitsAreWorthWhatIsPublished(String quantity, String written, double kept, String unit, double tolerance)
            throws NotAQuantityException {
        Scale<?> scale = scale(quantity);

        assertThat(scale.parse(written).value()).isCloseTo(kept, within(tolerance));
        assertThat(scale.parse("1 " + unit).value()).as("kept in %s", unit).isEqualTo(1);
    }

    /** Power reference, section 3.2 and T-R1, T-R2: ASTM B258 by way of [K7]; areas to 1e-4. */
    @ParameterizedTest(name = "{0} AWG is {1} in thick, {2} mm²")
    @CsvSource({
        "14, 0.06408, 2.0809",
        "12, 0.08081, 3.3088",
        "10, 0.10190, 5.2612",
        "8, 0.12849, 8.3656",
        "6, 0.16202, 13.3018",
        "4, 0.20431, 21.1506",
    })
    void gaugesHaveTheirTabulatedSize(String size, double inches, double squareMillimeters)
            throws NotAQuantityException {
        SquareMillimeters conductor = SquareMillimeters.SCALE.parse(size + " AWG");

        assertThat(conductor.value()).isCloseTo(squareMillimeters, within(1e-4));
        assertThat(diameter(conductor)).isCloseTo(inches, within(5e-6));
        assertThat(new SquareMillimeters(squareMillimeters).in(MeasureSystem.US))
                .isEqualTo(size + " AWG");
    }

    @ParameterizedTest(name = "{0} is {1} in thick")
    @CsvSource({"36 AWG, 0.0050", "4/0 AWG, 0.4600"})
    void gaugesEndWhereTheDefinitionEnds(String size, double inches) throws NotAQuantityException {
        SquareMillimeters conductor = SquareMillimeters.SCALE.parse(size);

        assertThat(diameter(conductor)).isCloseTo(inches, within(1e-12));
    }

    private static double diameter(SquareMillimeters conductor) {
        return Math.sqrt(4 / Math.PI * conductor.value()) / 25.4;
    }

    private static Scale<?> scale(String name) {
        return Scale.all().stream()
                .filter(scale -> scale.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no scale of " + name));
    }
}
