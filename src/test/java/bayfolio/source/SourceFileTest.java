package bayfolio.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Lines as {@link String#lines} has them, whatever ends them. */
final class SourceFileTest {
    @Test
    void cutsLinesWhereJavaDoes() {
        Random random = new Random(20261127);
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(12);
            for (int j = 0; j < length; j++) {
                text.append("ab\n\n\r\r\u00e9".charAt(random.nextInt(7)));
            }
            assertLines(text.toString());
        }
    }

    @Test
    void cutsManyLines() {
        assertLines("water\r\n".repeat(1_000) + "gas");
    }

    private static void assertLines(String text) {
        SourceFile file = new SourceFile("units/fleet.yaml", text);
        List<String> lines = text.lines().toList();
        assertThat(file.lineCount()).isEqualTo(lines.size());
        assertThat(IntStream.rangeClosed(1, lines.size()).mapToObj(file::line).toList())
                .isEqualTo(lines);
        assertThat(file.line(0)).isEmpty();
        assertThat(file.line(lines.size() + 1)).isEmpty();
    }
}
