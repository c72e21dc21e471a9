package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bayfolio.DemoFleet;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.finding.Findings;
import bayfolio.finding.JsonReport;
import bayfolio.model.Unit;
import bayfolio.render.theme.Theme;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is kept from one check to the next is what would be found anew. */
class KeeperTest {
    private static final int EDITS = 60;

    @TempDir
    Path root;

    private Catalogs screen;

    @BeforeEach
    void copyOneCoach() throws Exception {
        for (Map.Entry<String, byte[]> file : DemoFleet.files(Path.of("units")).entrySet()) {
            if (file.getKey().matches("(shared|dunlin)/.*|[^/]+")) {
                DemoFleet.write(root.resolve("units").resolve(file.getKey()), file.getValue());
            }
        }
        screen = Theme.load(root, Theme.BUILT_IN).catalogs();
    }

    /** A file of the fleet with one line of it spoilt. */
    private record Edit(Path file, String text) {}

    @Test
    void checksAfterEachOtherFindWhatChecksAnewFind() throws Exception {
        Random random = new Random(20261127);
        List<Path> files = new ArrayList<>(files("units/shared", ".yaml"));
        files.removeIf(file -> file.startsWith(root.resolve("units/shared/countries")));
        files.addAll(List.of(root.resolve("units/fleet.yaml"), root.resolve("units/dunlin/unit.yaml")));
        List<Path> scripts = files("units/shared", ".md");
        List<Edit> edits = new ArrayList<>();
        for (int i = 0; i < EDITS; i++) {
            Path script = scripts.get(random.nextInt(scripts.size()));
            edits.add(
                    switch (random.nextInt(4)) {
                        case 0 -> edit(script, random);
                        case 1 -> avoided(script, random);
                        default -> edit(files.get(random.nextInt(files.size())), random);
                    });
        }
        edits.add(edit(root.resolve("units/shared/countries/us.yaml"), random));
        for (int i = 0; i < 4; i++) {
            edits.add(edit(root.resolve("units/dunlin/films/walk-round.vtt"), random));
        }

        Folder kept = new Folder(root);
        Set<String> codes = new HashSet<>();
        for (Edit edit : edits) {
            Findings anew = findings(edit, new Folder(root));

            assertThat(JsonReport.of(findings(edit, kept)))
                    .as(edit.file.toString())
                    .isEqualTo(JsonReport.of(anew));
            anew.all().forEach(finding -> codes.add(finding.code()));
        }
        assertThat(codes).as("kinds of faults that the edits made").hasSizeGreaterThan(10);
    }

    @Test
    void whatIsAsItWasIsNotReadAgain() throws Exception {
        Folder folder = new Folder(root);
        FleetReader.Reading before = FleetReader.read(folder);
        FleetReader.Reading again = FleetReader.read(folder);
        assertThat(again.fleet().units().get(0)).isSameAs(before.fleet().units().get(0));
        assertThat(again.library().scripts())
                .usingElementComparator((a, b) -> a == b ? 0 : 1)
                .isEqualTo(before.library().scripts());

        // A kind of equipment in other words leaves coaches' procedures as they are, and what may be named of it anew.
        Path kind = files("units/shared/equipment", ".md").get(0);
        Files.writeString(kind, Files.readString(kind) + "\n");
        FleetReader.Reading edited = FleetReader.read(folder);
        assertThat(edited.library().scripts())
                .usingElementComparator((a, b) -> a == b ? 0 : 1)
                .isEqualTo(before.library().scripts());
        assertThat(edited.fleet().units().get(0))
                .isNotSameAs(before.fleet().units().get(0));
    }

    /** Of the same size, too, and with the time of writing set back. */
    @Test
    void aFileThatWasWrittenAgainIsReadAgain() throws Exception {
        Path unit = root.resolve("units/dunlin/unit.yaml");
        assumeTrue(
                unit.getFileSystem().supportedFileAttributeViews().contains("unix"),
                "the system does not tell when a file was changed");
        Folder folder = new Folder(root);
        Object before = settled(unit);
        assertThat(FleetReader.read(folder).fleet().units().get(0).name()).isEqualTo("Dunlin");
        FileTime written = Files.getLastModifiedTime(unit);

        Files.writeString(unit, Files.readString(unit).replace("\nname: Dunlin\n", "\nname: Avocet\n"));
        Files.setLastModifiedTime(unit, written);

        assertThat(settled(unit)).isNotEqualTo(before);
        assertThat(FleetReader.read(folder).fleet().units().get(0).name()).isEqualTo("Avocet");
    }

    /** Before, a file is read each time, whatever the system says of it. */
    private static FileStamp settled(Path file) throws InterruptedException {
        while (FileStamp.of(file).isEmpty()) {
            Thread.sleep(200);
        }
        return FileStamp.of(file).orElseThrow();
    }

    /** Coaches are read again whenever somebody asks for one, those of a model, too. */
    @Test
    void whereThereIsNoRoomForCoachesTheSameIsFound() throws Exception {
        Path fleet = DemoFleet.copy(Path.of(""), root.resolve("fleet"));
        Path unit = fleet.resolve("units/curlew/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replace("id: curlew\n", "id: avocet\n"));
        Folder small = new Folder(fleet, new Keeper(0));
        FleetReader.Reading reading = FleetReader.read(small);

        assertThat(reading.fleet().units().get(0))
                .isNotSameAs(reading.fleet().units().get(0));
        assertThat(reading.fleet().units().ids())
                .isEqualTo(reading.fleet().units().stream().map(Unit::id).toList());
        Findings anew = found(FleetReader.read(new Folder(fleet)));
        assertThat(anew.hasErrors()).isTrue();
        assertThat(JsonReport.of(found(reading))).isEqualTo(JsonReport.of(anew));
        assertThat(JsonReport.of(found(FleetReader.read(small)))).isEqualTo(JsonReport.of(anew));
    }

    /** Both have a file of the same path, with other words. */
    @Test
    void twoFleetsInOneProgramDoNotMeet() throws Exception {
        Path other = root.resolve("other");
        DemoFleet.write(
                other.resolve("units/dunlin/unit.yaml"), "name: of another fleet\n".getBytes(StandardCharsets.UTF_8));
        Folder one = new Folder(root);
        Folder two = new Folder(other);
        FleetReader.Reading before = FleetReader.read(one);
        assertThat(FleetReader.read(two).fleet().units()).isEmpty();

        assertThat(FleetReader.read(one).fleet().units().get(0))
                .isSameAs(before.fleet().units().get(0));
    }

    private List<Path> files(String folder, String ending) {
        return DemoFleet.files(root.resolve(folder)).keySet().stream()
                .filter(path -> path.endsWith(ending) && path.matches(".*\\.(md|yaml|vtt)"))
                .map(path -> root.resolve(folder).resolve(path))
                .toList();
    }

    /** A line left out, said twice or in capitals, or with a word of it left out. */
    private static Edit edit(Path file, Random random) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        int at = random.nextInt(lines.size());
        String line = lines.get(at);
        switch (random.nextInt(4)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, line);
            case 2 -> lines.set(at, line.toUpperCase(Locale.ROOT));
            default -> {
                List<String> words = new ArrayList<>(Arrays.asList(line.split("(?<=\\S)(?= )")));
                words.remove(random.nextInt(words.size()));
                lines.set(at, String.join("", words));
            }
        }
        return new Edit(file, String.join("\n", lines) + "\n");
    }

    /** The glossary says to avoid a word that a script uses, which makes the script wrong and not the glossary. */
    private Edit avoided(Path script, Random random) throws IOException {
        List<String> words = Pattern.compile("\\b[a-z]{4,}\\b")
                .matcher(Files.readString(script))
                .results()
                .map(MatchResult::group)
                .toList();
        Path glossary = root.resolve("units/shared/words.yaml");
        String text = Files.readString(glossary);
        List<MatchResult> entries = Pattern.compile("(?m)^ +meaning: .*\n(?! +avoid)")
                .matcher(text)
                .results()
                .toList();
        int at = entries.get(random.nextInt(entries.size())).end();
        String line = "    avoid: [" + words.get(random.nextInt(words.size())) + "]\n";
        return new Edit(glossary, text.substring(0, at) + line + text.substring(at));
    }

    private Findings findings(Edit edit, Folder folder) throws Exception {
        String before = Files.readString(edit.file);
        Files.writeString(edit.file, edit.text);
        Findings findings = found(FleetReader.read(folder));
        Files.writeString(edit.file, before);
        return findings;
    }

    private Findings found(FleetReader.Reading reading) {
        return Check.of(reading.fleet(), reading.library(), screen, reading.findings())
                .findings();
    }
}
