package bayfolio.golden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Small fleets, each with what is expected of it: {@code <case>/fleet} is checked, and published
 * when nothing is wrong; {@code <case>/expected} holds the findings and those pages that are
 * compared.
 *
 * <p>{@code mvn test -Dgolden=write} writes what is expected anew and still fails, naming what it
 * wrote: read the difference, then run again. To have one more page compared, make an empty file of
 * its name and write.
 */
class GoldenFleetTest {
    private static final Path CASES = Path.of("src/test/resources/golden");
    private static final String FINDINGS = "findings.txt";

    static List<String> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.filter(Files::isDirectory)
                    .map(folder -> folder.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aFleetGivesWhatIsExpected(String name, @TempDir Path out) throws Exception {
        Path expected = CASES.resolve(name).resolve("expected");
        Map<String, byte[]> given = given(CASES.resolve(name).resolve("fleet"), out);

        if (System.getProperty("golden", "compare").equals("write")) {
            fail("Written, to be read and run again: " + write(expected, given));
        }
        Map<String, byte[]> wanted = DemoFleet.files(expected);
        assertThat(wanted).containsKey(FINDINGS);
        wanted.forEach((path, bytes) -> assertThat(text(given, path))
                .as("%s, expected in %s", path, expected)
                .isEqualTo(new String(bytes, StandardCharsets.UTF_8)));
    }

    @Test
    void lineEndingsOfAnotherSystemChangeNothing(@TempDir Path folder) throws Exception {
        for (String name : cases()) {
            Path fleet = CASES.resolve(name).resolve("fleet");
            Path crlf = folder.resolve(name);
            for (Map.Entry<String, byte[]> file : DemoFleet.files(fleet).entrySet()) {
                String text = new String(file.getValue(), StandardCharsets.UTF_8);
                DemoFleet.write(crlf.resolve(file.getKey()), text.replace("\n", "\r\n"));
            }

            assertThat(DemoFleet.bytes(given(crlf, folder.resolve(name + "-crlf"))))
                    .as(name)
                    .isEqualTo(DemoFleet.bytes(given(fleet, folder.resolve(name + "-lf"))));
        }
    }

    /** What the program says of a fleet, and what it publishes. */
    private static Map<String, byte[]> given(Path fleet, Path out) throws IOException {
        Map<String, byte[]> given = new TreeMap<>();
        StringWriter findings = new StringWriter();
        int exit = run(findings, "check", "--fleet", fleet.toString());
        given.put(FINDINGS, findings.toString().getBytes(StandardCharsets.UTF_8));
        if (exit == 0) {
            StringWriter said = new StringWriter();
            // Its addresses are written down in the fleet.
            Path copy = out.resolveSibling(out.getFileName() + "-fleet");
            for (Map.Entry<String, byte[]> file : DemoFleet.files(fleet).entrySet()) {
                DemoFleet.write(copy.resolve(file.getKey()), file.getValue());
            }
            int published = run(said, "publish", "--only=web", "--fleet", copy.toString(), "--out", out.toString());
            assertThat(published).as(said.toString()).isZero();
            DemoFleet.files(out.resolve("web")).forEach((path, bytes) -> given.put("web/" + path, bytes));
        }
        return given;
    }

    private static int run(StringWriter said, String... words) {
        PrintWriter writer = new PrintWriter(said);
        return Folders.run(writer, writer, words);
    }

    /** Writes the findings and those pages that are expected already, as far as they differ. */
    private static List<Path> write(Path expected, Map<String, byte[]> given) throws IOException {
        Map<String, byte[]> before = Files.exists(expected) ? DemoFleet.files(expected) : new TreeMap<>();
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : given.entrySet()) {
            boolean chosen = file.getKey().equals(FINDINGS) || before.containsKey(file.getKey());
            if (chosen && !text(file.getValue()).equals(text(before, file.getKey()))) {
                DemoFleet.write(expected.resolve(file.getKey()), file.getValue());
                written.add(expected.resolve(file.getKey()));
            }
        }
        for (String path : before.keySet()) {
            if (!given.containsKey(path)) {
                Files.delete(expected.resolve(path));
                written.add(expected.resolve(path));
            }
        }
        return written;
    }

    private static String text(Map<String, byte[]> files, String path) {
        byte[] bytes = files.get(path);
        return bytes == null ? "(there is no " + path + ")" : text(bytes);
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
