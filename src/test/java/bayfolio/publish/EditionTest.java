package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class EditionTest {
    /** Also of coaches that are named as a folder of all is. */
    private static final Set<String> COACHES = Set.of("plover", "assets", "l", "knot", "do");

    private static final List<String> NAMES =
            List.of("plover", "PLOVER", "assets", "L", "l", "knot", "do", "other", "index.html");

    @Test
    void whatBeginsAlikeHasOneOwner() {
        Random random = new Random(5);
        int alike = 0;
        for (int round = 0; round < 200_000; round++) {
            String one = path(random);
            String other = path(random);
            String owner = owner(one);
            String beginning = Edition.ownedWith(owner, one);

            assertThat(one).startsWith(beginning);
            if (!beginning.isEmpty() && other.startsWith(beginning)) {
                alike++;
                assertThat(owner(other)).as(one + " and " + other).isEqualTo(owner);
            }
        }
        assertThat(alike).isGreaterThan(500);
    }

    private static String owner(String path) {
        return Edition.owner(path, COACHES::contains);
    }

    private static String path(Random random) {
        StringBuilder path = new StringBuilder(random.nextBoolean() ? "web" : "staff");
        for (int i = random.nextInt(4); i >= 0; i--) {
            path.append('/').append(NAMES.get(random.nextInt(NAMES.size())));
        }
        return path.toString();
    }
}
