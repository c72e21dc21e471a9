package bayfolio.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearNamesTest {
    /**
     * From published examples: `CA` and `ABC` is the textbook case in which optimal string
     * alignment gives 3 and the full Damerau-Levenshtein distance gives 2 (van der Loo, "The
     * stringdist package for approximate string matching", The R Journal 6/1, 2014; L. Boytsov,
     * "Indexing methods for approximate dictionary searching", JEA 16, 2011); `kitten` and
     * `Saturday` are the usual ones for Levenshtein (Jurafsky and Martin, "Speech and Language
     * Processing", give `intention` and `execution`, all edits counting one); the rest is from the
     * Javadoc of Apache Commons Text, LevenshteinDistance. None of those holds swapped neighbors,
     * so that both distances agree.
     */
    @ParameterizedTest
    @CsvSource({
        "CA, ABC, 3",
        "kitten, sitting, 3",
        "Saturday, Sunday, 3",
        "intention, execution, 5",
        "'', '', 0",
        "'', a, 1",
        "aaapppp, '', 7",
        "frog, fog, 1",
        "fly, ant, 3",
        "elephant, hippo, 7",
        "hippo, elephant, 7",
        "hippo, zzzzzzzz, 8",
        "hello, hallo, 1"
    })
    void distancesAreThosePublished(String left, String right, int distance) {
        assertThat(NearNames.distance(left, right)).isEqualTo(distance);
        assertThat(NearNames.distance(right, left)).isEqualTo(distance);
    }

    @Test
    void swappedNeighborsAreOneSlipAndLetterCaseIsNone() {
        assertThat(NearNames.distance("gary", "gray")).isOne();
        assertThat(NearNames.distance("Gray-Valve", "gray-valve")).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "gary-dump-valve, gray-dump-valve",
        "gray-dmp-valv, gray-dump-valve",
        "Black-Dump-Valve, black-dump-valve",
        "lpg, lp"
    })
    void slipsLeadToTheName(String written, String meant) {
        List<String> known = List.of("gray-dump-valve", "black-dump-valve", "lp", "fresh");

        assertThat(NearNames.to(written, known)).first().isEqualTo(meant);
    }

    @Test
    void shortNamesTakeOneSlipOnly() {
        assertThat(NearNames.to("gas", List.of("gab", "god", "lp", "gasp"))).containsExactly("gab", "gasp");
    }

    @Test
    void namesThatShareMostWordsAreNearHoweverFarTheLettersAre() {
        assertThat(NearNames.to(
                        "house-battery-switch", List.of("house-battery-disconnect", "water-pump-switch", "fresh")))
                .containsExactly("house-battery-disconnect");
    }

    @Test
    void theNameItselfAndFarOnesAreNotNear() {
        assertThat(NearNames.to("fresh-tank", List.of("fresh-tank", "awning", "generator")))
                .isEmpty();
        assertThat(NearNames.to("anything", List.of())).isEmpty();
    }

    @Test
    void atMostFourNearestFirstThenByTheAlphabet() {
        List<String> known = List.of("valve-f", "valve-e", "valve-dd", "valve-cc", "valve-b", "valve-b", "valve-aa");

        assertThat(NearNames.to("valve-a", known)).containsExactly("valve-aa", "valve-b", "valve-e", "valve-f");
    }

    @Test
    void theOrderOfTheKnownNamesDoesNotShow() {
        List<String> known = List.of("bay-1", "bay-3", "bay-4", "bay-2", "bay-6", "bay-5");
        List<String> turned = known.stream().sorted().toList();

        assertThat(NearNames.to("bay-7", known)).isEqualTo(NearNames.to("bay-7", turned));
    }
}
