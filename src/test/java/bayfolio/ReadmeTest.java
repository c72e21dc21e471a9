package bayfolio;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what happens. */
final class ReadmeTest {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(\\w+)\\n(.*?)^```$");

    @TempDir
    private Path fleet;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void ownFolderWithTheReadmesCoach() throws IOException {
        Files.createDirectories(fleet.resolve("units/sanderling"));
        Files.copy(Path.of("units/fleet.yaml"), fleet.resolve("units/fleet.yaml"));
        Path unit = fleet.resolve("units/sanderling/unit.yaml");
        Files.delete(unit.getParent());
        assertThat(Folders.run(
                        new PrintWriter(new StringWriter()),
                        new PrintWriter(err),
                        "add",
                        "sanderling",
                        "--fleet",
                        fleet.toString()))
                .isZero();
        // Somebody has looked at all of it.
        Files.writeString(unit, Files.readString(unit).replaceAll("(?m)^ *to-confirm: .*\n", ""));
    }

    @Test
    void itsCoachIsFlawlessAndIsPublished() {
        out.getBuffer().setLength(0);
        assertThat(run("check")).isZero();
        assertThat(out.toString()).isEmpty();
        assertThat(run("publish")).isZero();
        assertThat(fleet.resolve("site-out/web/sanderling/index.html")).exists();
    }

    @Test
    void inAFolderOfOnesOwnTheFileOfTheFleetIsAllThatIsMissedAndItsLeastTextIsTold() throws IOException {
        Files.delete(fleet.resolve("units/fleet.yaml"));

        assertThat(run("check")).isEqualTo(1);
        assertThat(out.toString())
                .startsWith("units/fleet.yaml:1:1: error: the file is missing [unreadable-file]\nhelp: Write it")
                .endsWith("In all: 1 error\n");
        String least = out.toString().replaceAll("(?s).*This is the least it takes:\n(.*?)\n\n.*", "$1\n");
        Files.writeString(fleet.resolve("units/fleet.yaml"), least);
        itsCoachIsFlawlessAndIsPublished();
    }

    @Test
    void itsFindingIsWhatTheWriterIsTold() throws IOException {
        Path unit = fleet.resolve("units/sanderling/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replace("[fuel-filler]\ntanks", "[fuel-fill]\ntanks"));

        assertThat(run("check")).isEqualTo(1);
        assertThat(out.toString()).startsWith(blocks("text").get(0));
    }

    @Test
    void itsFirstBlocksAreTakenFromRealFiles() throws IOException {
        List<String> shown = blocks("yaml").get(0).lines().toList();
        assertThat(Files.readAllLines(fleet.resolve("units/sanderling/unit.yaml")))
                .containsAll(shown);

        String procedure = blocks("markdown").get(0);
        Path file = fleet.resolve("units/sanderling/procedures/switch-on.md");
        Files.createDirectories(file.getParent());
        Files.writeString(
                file,
                "---\nid: switch-on\ntitle: Switch on\nstage: living\nwho: renter\nwhen: every coach\n---\nHere.\n\n"
                        + procedure + "\n## Done when\nLit.\n\n## If not\nCall.\n");
        assertThat(run("publish")).isZero();
        assertThat(Files.readString(fleet.resolve("site-out/web/sanderling/do/switch-on.html")))
                .contains("The handle stands in line with the mark I.");
    }

    private int run(String command) {
        return Folders.run(new PrintWriter(out), new PrintWriter(err), command, "--fleet", fleet.toString());
    }

    private static List<String> blocks(String language) throws IOException {
        Matcher block = BLOCK.matcher(Files.readString(Path.of("README.md")));
        return block.results()
                .filter(it -> it.group(1).equals(language))
                .map(it -> it.group(2))
                .toList();
    }
}
