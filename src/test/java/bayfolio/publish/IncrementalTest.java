package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.check.Check;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is published after an edit is, byte for byte, what is published when all is made anew, and only coaches that the edit
 * is about are made. {@code -Dedits=200} for more than a few.
 */
class IncrementalTest {
    private static final int EDITS = Integer.getInteger("edits", 5);
    private static final List<String> COACHES = List.of("dotterel", "knot", "plover");

    @TempDir
    private Path folder;

    @Test
    void editsGiveTheSameBytesAsAllMadeAnew() throws Exception {
        Path fleet = fleet();
        Path kept = folder.resolve("kept");
        publish(fleet, kept, false);
        Random random = new Random(1_903);
        int edited = 0;
        int saved = 0;
        for (int edit = 0; edit < EDITS; edit++) {
            Path file = edit(fleet, random);
            if (file.toString().isEmpty()) {
                continue;
            }
            Path fresh = folder.resolve("fresh-" + edit);
            List<String> made = publish(fleet, kept, false);
            publish(fleet, fresh, true);

            assertThat(BothRoots.of(kept)).as("after an edit of " + file).isEqualTo(BothRoots.of(fresh));
            edited++;
            saved += COACHES.size() - made.size();
        }
        System.out.println("IncrementalTest: " + edited + " edits, " + saved + " coaches not made anew");
        assertThat(edited).isPositive();
        assertThat(saved).isPositive();
    }

    @Test
    void onlyWhatHasChangedIsMadeAndWritten() throws Exception {
        Path fleet = fleet();
        Path out = folder.resolve("out");
        assertThat(publish(fleet, out, false)).isEqualTo(COACHES);
        Map<String, FileTime> before = times(out);

        assertThat(publish(fleet, out, false)).isEmpty();
        assertThat(times(out)).isEqualTo(before);

        Path unit = fleet.resolve("units/knot/unit.yaml");
        Files.writeString(unit, Files.readString(unit).replace("name: Knot", "name: Red Knot"));
        assertThat(publish(fleet, out, false)).containsExactly("knot");
        Map<String, FileTime> after = times(out);
        before.forEach((path, time) -> {
            if (path.startsWith("web/plover/") || path.startsWith("staff/dotterel/")) {
                assertThat(after).containsEntry(path, time);
            }
        });
        assertThat(Files.readString(out.resolve("web/index.html"))).contains("Red Knot");

        assertThat(publish(fleet, out, true)).isEqualTo(COACHES);
    }

    @Test
    void whatSomebodyTookAwayIsMadeAgain() throws Exception {
        Path fleet = fleet();
        Path out = folder.resolve("out");
        publish(fleet, out, false);
        Map<String, String> site = BothRoots.of(out);
        Files.delete(out.resolve("web/knot/index.html"));

        assertThat(publish(fleet, out, false)).containsExactly("knot");
        assertThat(BothRoots.of(out)).isEqualTo(site);
    }

    /** A time that was set back, with the same length: its bytes are looked at. */
    @Test
    void anEditThatHidesItsTimeIsFound() throws Exception {
        Path fleet = fleet();
        Path out = folder.resolve("out");
        publish(fleet, out, false);
        Path unit = fleet.resolve("units/knot/unit.yaml");
        FileTime time = Files.getLastModifiedTime(unit);
        Files.writeString(unit, Files.readString(unit).replace("name: Knot", "name: Knut"));
        Files.setLastModifiedTime(unit, time);

        assertThat(publish(fleet, out, false)).containsExactly("knot");
        assertThat(Files.readString(out.resolve("web/index.html"))).contains("Knut");
    }

    private Path fleet() throws Exception {
        return SmallFleet.write(folder.resolve("fleet"), COACHES);
    }

    /** A word of a text becomes another one, or a line goes, so that the check finds no error; nothing if that cannot be. */
    private static Path edit(Path fleet, Random random) throws Exception {
        List<Path> files;
        try (Stream<Path> all = Files.walk(fleet.resolve("units"))) {
            files = all.filter(path -> path.toString().matches(".*\\.(md|yaml)"))
                    .sorted()
                    .toList();
        }
        for (int tries = 0; tries < 20; tries++) {
            Path file = files.get(random.nextInt(files.size()));
            String text = Files.readString(file);
            List<String> lines = new ArrayList<>(text.lines().toList());
            int line = random.nextInt(lines.size());
            if (random.nextBoolean()) {
                lines.set(line, lines.get(line).replaceFirst("\\b([a-z]{3,})(?=[^a-z:{}]*$)", "$1 again"));
            } else {
                lines.remove(line);
            }
            String edited = String.join("\n", lines) + "\n";
            if (!edited.equals(text)) {
                Files.writeString(file, edited);
                if (check(fleet).findings().stopping(COACHES.get(0), false).isEmpty()
                        && !check(fleet).findings().hasErrors()) {
                    return fleet.relativize(file);
                }
                Files.writeString(file, text);
            }
        }
        return Path.of("");
    }

    private static Check check(Path fleet) throws Exception {
        return DemoFleet.of(fleet).check();
    }

    /** @return the coaches that were made */
    private static List<String> publish(Path fleet, Path out, boolean fresh) throws Exception {
        List<String> made = Collections.synchronizedList(new ArrayList<>());
        FleetState state = FleetState.of(fleet);
        Theme theme = Theme.load(fleet, Theme.BUILT_IN);
        Publisher.publish(
                check(fleet),
                state,
                theme,
                new Publisher.Wanted(COACHES, List.of(), Set.of(Publisher.WEB), Printing.USUAL, fresh, made::add),
                out);
        return made.stream().sorted().toList();
    }

    private static Map<String, FileTime> times(Path out) throws Exception {
        Map<String, FileTime> times = new TreeMap<>();
        for (String root : OutputFolder.ROOTS) {
            Path inside = out.resolve(root).toRealPath();
            try (Stream<Path> all = Files.walk(inside)) {
                for (Path file : all.filter(Files::isRegularFile).toList()) {
                    times.put(root + "/" + inside.relativize(file), Files.getLastModifiedTime(file));
                }
            }
        }
        return times;
    }
}
