package bayfolio.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class NodeIdTest {
    private static final Pattern WRITTEN =
            Pattern.compile("[a-z0-9-]+(?:/[a-z0-9-]+)?(?:#(?:[a-z0-9-]+(?:\\.[a-z0-9-]+)*))?");

    /** Of few letters, so that every second one is a name. */
    @Test
    void itsNamesAreThoseOfAnExpression() {
        Random random = new Random(20_261_130);
        int names = 0;
        for (int round = 0; round < 100_000; round++) {
            String written = random.ints(random.nextInt(9), 0, 30)
                    .mapToObj(i -> i < 12
                            ? "a"
                            : i < 18
                                    ? "-"
                                    : i < 22 ? "7" : i < 25 ? "/" : i < 27 ? "#" : ".A _é".substring(i % 5, i % 5 + 1))
                    .collect(Collectors.joining());
            boolean name = WRITTEN.matcher(written).matches();

            assertThat(NodeId.isWritten(written)).as(written).isEqualTo(name);
            if (name) {
                assertThat(NodeId.parse(written)).hasToString(written);
                names++;
            }
        }
        assertThat(names).isBetween(20_000, 80_000);
    }
}
