package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PhrasesTest {
    @Test
    void whatStandsThereIsFoundAtBeginningMiddleAndEnd() {
        Phrases phrases = new Phrases(List.of("the door code is 4711", "code is 47", "nowhere at all"));

        assertThat(phrases.in("the door code is 4711")).containsExactly("the door code is 4711", "code is 47");
        assertThat(phrases.in("Say: the door code is 471")).containsExactly("code is 47");
        assertThat(phrases.in("")).isEmpty();
        assertThat(new Phrases(List.of()).in("anything")).isEmpty();
    }

    /** Of few letters, so that much is alike; what {@code contains} says is what is there. */
    @Test
    void itFindsWhatASearchForEachFinds() {
        Random random = new Random(1_987);
        int found = 0;
        for (int round = 0; round < 3_000; round++) {
            Set<String> texts = new TreeSet<>();
            for (int i = random.nextInt(12); i >= 0; i--) {
                texts.add(text(random, 2 + random.nextInt(6)));
            }
            String whole = text(random, random.nextInt(60));
            List<String> there = texts.stream().filter(whole::contains).toList();

            assertThat(new Phrases(texts).in(whole))
                    .as(texts + " in " + whole)
                    .hasSameElementsAs(there)
                    .doesNotHaveDuplicates();
            found += there.size();
        }
        assertThat(found).isGreaterThan(3_000);
    }

    @Test
    void howLinesAreBrokenDoesNotMatter() {
        Random random = new Random(3);
        for (int round = 0; round < 3_000; round++) {
            String text = random.ints(random.nextInt(20), 0, 8)
                    .mapToObj(i -> "ab  \n\t\r\u00a0".substring(i, i + 1))
                    .collect(Collectors.joining());

            assertThat(Phrases.spaced(text)).isEqualTo(text.replaceAll("\\s+", " "));
        }
    }

    private static String text(Random random, int length) {
        return random.ints(length, 'a', 'd')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }
}
