package bayfolio.check;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Main;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a check does with very many mistakes. */
class ManyFindingsTest {
    private static final int MANY = 10_000;

    @TempDir
    private Path folder;

    @Test
    @Timeout(120)
    void tenThousandFindingsAreAllToldInFileOrderWithin256Megabytes() throws Exception {
        Path fleet = DemoFleet.copy(DemoFleet.SMALL, folder.resolve("fleet"));
        Path description = fleet.resolve("units/plover/unit.yaml");
        String begin = Files.readString(description).stripTrailing() + """

                jacks:
                  count: 4
                  controls:
                """;
        String mistakes =
                IntStream.range(0, MANY).mapToObj(i -> "    - none-" + i + "\n").collect(Collectors.joining());
        Files.writeString(description, begin + mistakes);

        List<String> told = check(fleet).stream()
                .filter(line -> line.endsWith("[unknown-reference]"))
                .map(line -> line.replaceFirst(": error:.*", ""))
                .toList();

        int above = (int) begin.lines().count();
        assertThat(told)
                .isEqualTo(IntStream.rangeClosed(1, MANY)
                        .mapToObj(i -> "units/plover/unit.yaml:" + (above + i) + ":7")
                        .toList());
    }

    /** In a process of its own, since memory can be limited for a whole process only. */
    private List<String> check(Path fleet) throws IOException, InterruptedException {
        Path out = folder.resolve("findings.txt");
        String classes = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        int exit = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-cp",
                        classes,
                        Main.class.getName(),
                        "check",
                        "--fleet",
                        fleet.toString())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start()
                .waitFor();
        List<String> lines = Files.readAllLines(out, StandardCharsets.UTF_8);
        assertThat(exit)
                .as(() -> String.join("\n", lines.subList(0, Math.min(20, lines.size()))))
                .isEqualTo(1);
        return lines;
    }
}
