package bayfolio.prose;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.procedure.Script;
import bayfolio.read.FleetReader;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WordIndexTest {
    /** Held against a cut at everything that is no letter and no digit. */
    @Test
    void wordsOfAllProceduresStandWhereTheyAreSaidToStand() {
        List<Script> scripts =
                FleetReader.read(Folders.at(Path.of(""))).library().texts();
        assertThat(scripts).hasSizeGreaterThan(300);
        for (Script script : scripts) {
            WordIndex index = WordIndex.of(script.body());
            assertThat(index.all()).extracting(WordIndex.Word::text).isEqualTo(cut(script.body()));
            index.all()
                    .forEach(word -> assertThat(script.body().substring(word.start(), word.end()))
                            .isEqualTo(word.text())
                            .isEqualToIgnoringCase(word.small()));
        }
    }

    private static List<String> cut(String text) {
        return Arrays.stream(text.split("[^\\p{L}\\p{Nd}]+", -1))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    @Test
    void capitalsAndOtherFormsOfALetterAreOneWord() {
        WordIndex index = WordIndex.of("Code \u017Feven SEVEN 7 4");

        assertThat(index.holdOneOf(Set.of("seven"))).isTrue();
        assertThat(index.repeat()).isTrue();
        assertThat(index.digits()).isEqualTo(2);
        assertThat(WordIndex.of("seven, eight seven").repeat()).isFalse();
    }
}
