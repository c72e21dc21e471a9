package bayfolio.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.check.Check;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.render.Printing;
import bayfolio.render.theme.Theme;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
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

    private static final String WATER_FILL =
            "  - {id: fill, name: Water fill, roles: [fresh-fill-port], what: water, side: right, from-front: 5 ft, access: free}\n";

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

    /** Nothing else is made anew for them, and the same gives the same bytes. */
    @Test
    void otherBookingsAndAnotherDayAreNoticed() throws Exception {
        BusyDay day = BusyDay.write(folder);
        Path out = folder.resolve("out");
        Path page = out.resolve("staff/index.html");
        Path list = folder.resolve("changed.txt");
        String file = day.bookings().toString();
        day.publish("--bookings", file);
        Map<String, FileTime> before = times(out);
        day.publish("--bookings", file);
        assertThat(times(out)).isEqualTo(before);

        Files.writeString(day.bookings(), Files.readString(day.bookings()).replace("04 16:00", "04 17:00"));
        day.publish("--bookings", file, "--changed-files", list.toString());
        assertThat(Files.readString(page)).contains("17:00, Knot").doesNotContain("16:00, Knot, booking B-2");
        assertThat(Files.readAllLines(list)).containsExactly("staff/index.html");

        day.publish("--changed-files", list.toString());
        assertThat(Files.readString(page))
                .contains("No file of bookings was given")
                .doesNotContain("17:00, Knot");
        assertThat(Files.readAllLines(list)).containsExactly("staff/index.html");

        day.publishOn("2026-05-11", "--bookings", file);
        assertThat(Files.readString(page)).contains("What May 11, 2026 needs", "10:00, Knot, booking B-2");
        Map<String, String> kept = BothRoots.of(out);
        day.publishOn("2026-05-11", "--bookings", file, "--fresh");
        assertThat(BothRoots.of(out)).isEqualTo(kept);
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

    /** Warnings of coaches that are not looked at again are told as if they were. */
    @Test
    void whatIsToldIsWhatIsFoundAnew() throws Exception {
        Path fleet = warned(fleet(), "knot");
        Path out = folder.resolve("out");
        String first = told(fleet, out);
        assertThat(first).contains("place-in-prose").contains("units/knot/unit.yaml");
        assertThat(told(fleet, out)).isEqualTo(first);
        assertThat(known(fleet, out)).isEqualTo(COACHES);

        warned(fleet, "plover");
        assertThat(known(fleet, out)).containsExactly("dotterel", "knot");
        assertThat(told(fleet, out)).isEqualTo(told(fleet, out, "--fresh")).contains("units/plover/unit.yaml");

        // A text of all may name whatever there is.
        Path shared = fleet.resolve("units/shared/trouble/unheard-of.md");
        DemoFleet.write(shared, "---\nid: unheard-of\n---\n".getBytes(StandardCharsets.UTF_8));
        assertThat(known(fleet, out)).isEmpty();
        Files.delete(shared);
        assertThat(known(fleet, out)).isEqualTo(COACHES);
    }

    /** What is missing from one coach since all its sisters have it depends on them. */
    @Test
    void whatSistersHaveIsLookedAtAgain() throws Exception {
        Path fleet = fleet();
        Path out = folder.resolve("out");
        for (String coach : COACHES) {
            edit(fleet, coach, "\nnotes:\n", "\nhire: {towing: no}\n\nnotes:\n");
            edit(fleet, coach, "\nconnections:\n", "\nconnections:\n" + WATER_FILL);
        }
        edit(fleet, "knot", "roles: [drinking-hose], ", "");
        assertThat(told(fleet, out)).contains("the role `drinking-hose`, and all its sisters have it");
        assertThat(known(fleet, out)).isEqualTo(COACHES);

        edit(fleet, "plover", "roles: [drinking-hose], ", "");
        assertThat(known(fleet, out)).containsExactly("dotterel");
        assertThat(told(fleet, out))
                .isEqualTo(told(fleet, out, "--fresh"))
                .doesNotContain("the role `drinking-hose`, and all its sisters have it");
    }

    /** A list that somebody spoilt is as good as none. */
    @Test
    void aSpoiltListIsNotBelieved() throws Exception {
        Path fleet = warned(fleet(), "knot");
        Path out = folder.resolve("out");
        String first = told(fleet, out);
        Path list = out.resolve(".editions/current/parts/knot.txt");
        String whole = Files.readString(list);
        for (String spoilt : List.of("found [1]", "found {", "found []", "found null", "found [[],2,\"x\"]")) {
            Files.writeString(list, whole.replaceFirst("(?m)^found .*$", Matcher.quoteReplacement(spoilt)));
            assertThat(known(fleet, out)).as(spoilt).doesNotContain("knot");
        }
        assertThat(told(fleet, out)).isEqualTo(first);
    }

    /** What another version wrote is made again; where the list is cut off, nobody knows whose the files are. */
    @Test
    void aListOfAnotherVersionIsMadeAgainAndOneThatIsCutOffIsTold() throws Exception {
        Path fleet = fleet();
        Path out = folder.resolve("out");
        publish(fleet, out, false);
        Map<String, String> first = DemoFleet.bytes(out.resolve("web"));
        Path list = out.resolve(".editions/current/parts/knot.txt");
        String whole = Files.readString(list);
        Files.writeString(list, whole.replaceFirst("(?m)^made .*$", "made 0"));
        assertThat(publish(fleet, out, false)).contains("knot");
        assertThat(DemoFleet.bytes(out.resolve("web"))).isEqualTo(first);

        list = out.resolve(".editions/current/parts/knot.txt");
        for (String cut : List.of(whole.substring(0, whole.length() / 2), "")) {
            Files.writeString(list, cut);
            assertThatThrownBy(() -> publish(fleet, out, false))
                    .isInstanceOf(PublishException.class)
                    .hasMessageMatching("`.*/(?i:knot)/.*` was not written by this program, or was changed since;.*");
            assertThat(DemoFleet.bytes(out.resolve("web"))).isEqualTo(first);
        }
    }

    /** One of its coaches says a place in a note. */
    private static Path warned(Path fleet, String coach) throws Exception {
        edit(fleet, coach, "    about: pump\n", "    about: pump\n  - text: A hook is on the front wall.\n");
        return fleet;
    }

    private static void edit(Path fleet, String coach, String words, String others) throws Exception {
        Path unit = fleet.resolve("units/" + coach + "/unit.yaml");
        String text = Files.readString(unit);
        assertThat(text).contains(words);
        Files.writeString(unit, text.replace(words, others));
    }

    private static String told(Path fleet, Path out, String... more) {
        List<String> words = new ArrayList<>(
                List.of("publish", "--fleet", fleet.toString(), "--out", out.toString(), "--only", "web"));
        words.addAll(List.of(more));
        StringWriter told = new StringWriter();
        assertThat(Folders.run(
                        new PrintWriter(new StringWriter()), new PrintWriter(told, true), words.toArray(String[]::new)))
                .as(told.toString())
                .isZero();
        return told.toString();
    }

    /** The coaches that the next run need not look at. */
    private static List<String> known(Path fleet, Path out) throws Exception {
        FleetState state = FleetState.of(fleet);
        Folder read = new Folder(fleet);
        FleetReader.Reading reading = FleetReader.read(read);
        FoundBefore known = FoundBefore.in(out, state, reading, read::named);
        return reading.fleet().units().stream()
                .filter(unit -> known.of(unit).isPresent())
                .map(Unit::id)
                .toList();
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
                new Publisher.Wanted(
                        COACHES,
                        List.of(),
                        Set.of(Publisher.WEB),
                        Printing.USUAL,
                        Optional.empty(),
                        fresh,
                        true,
                        false,
                        made::add),
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
