package bayfolio.prose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ReadabilityTest {
    /** The example that the packages `flesch` and `flesch-kincaid` publish in their readmes. */
    @Test
    void thePlatypusReadsAsPublished() {
        Readability text =
                Readability.of("The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.");

        assertThat(text).isEqualTo(new Readability(1, 13, 26));
        assertThat(text.ease()).isCloseTo(24.44, within(0.005));
        assertThat(text.grade()).isCloseTo(13.08, within(0.005));
    }

    /** The ease is published with many copies of the formula; the grade follows from its counts. */
    @Test
    void theCatReadsAsPublished() {
        Readability text = Readability.of("The cat sat on the mat.");

        assertThat(text).isEqualTo(new Readability(1, 6, 6));
        assertThat(text.ease()).isCloseTo(116.145, within(0.0005));
        assertThat(text.grade()).isCloseTo(-1.45, within(0.005));
    }

    /** Computed by hand from the two formulas. */
    @Test
    void aStepOfOursReadsEasily() {
        Readability text = Readability.of("Turn the blue valve to the left until it stops.");

        assertThat(text).isEqualTo(new Readability(1, 10, 11));
        assertThat(text.ease()).isCloseTo(103.63, within(0.005));
        assertThat(text.grade()).isCloseTo(1.29, within(0.005));
    }

    @Test
    void nothingReadsAtGradeZero() {
        assertThat(Readability.of(" \u00B7 . ").grade()).isZero();
        assertThat(Readability.of("").ease()).isZero();
    }

    /** Counts as dictionaries divide the words. */
    @ParameterizedTest
    @CsvSource({
        "the, 1",
        "valve, 1",
        "valves, 1",
        "table, 2",
        "handles, 2",
        "handled, 2",
        "filled, 1",
        "switches, 2",
        "started, 2",
        "need, 1",
        "battery, 3",
        "generator, 4",
        "gauge, 1",
        "monoxide, 3",
        "fluid, 2",
        "quiet, 2",
        "going, 2",
        "layer, 2",
        "people, 2",
        "everyone, 3",
        "station, 2",
        "dial, 2",
        "whole, 1",
        "hose, 1",
        "houses, 2"
    })
    void syllablesAreCountedAsSpoken(String word, int syllables) {
        assertThat(Readability.syllables(word)).isEqualTo(syllables);
    }
}
