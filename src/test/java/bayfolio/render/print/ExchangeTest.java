package bayfolio.render.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pages of a binder, each known by a letter, are exchanged leaf by leaf. */
class ExchangeTest {
    @ParameterizedTest(name = "{0} becomes {1}: {2}")
    @CsvSource({
        "a b c d, a b c d, ''",
        "a b c d, a x c d, 1\u20132 for 1\u20132",
        "a b c d e f, a b c d x y, 5\u20136 for 5\u20136",
        "a b c d e f, x b y d e f, 1\u20134 for 1\u20134",
        "a b c d e f, x b c d e y, '1\u20132 for 1\u20132, 5\u20136 for 5\u20136'",
        // A leaf is taken out with its back, also where that is blank.
        "a b c, a b c d, 3\u20134 for 3",
        "a b c d, a b c, 3 for 3\u20134",
        "a b, a b c d e, 3\u20135 for none",
        "a b c d e, a b, none for 3\u20135",
        // What moves by a page has another number.
        "a b c d, x a b c d, 1\u20135 for 1\u20134",
    })
    void leavesAreExchanged(String before, String now, String told) {
        assertThat(String.join(
                        ", ",
                        Exchange.of(pages(before), pages(now)).runs().stream()
                                .map(run ->
                                        run.in().map(Exchange.Pages::toString).orElse("none")
                                                + " for "
                                                + run.out()
                                                        .map(Exchange.Pages::toString)
                                                        .orElse("none"))
                                .toList()))
                .isEqualTo(told);
    }

    private static List<String> pages(String letters) {
        return Arrays.asList(letters.split(" "));
    }
}
