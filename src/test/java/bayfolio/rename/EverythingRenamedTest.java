package bayfolio.rename;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.document.DocumentJson;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Role;
import bayfolio.model.Unit;
import bayfolio.read.Edit;
import bayfolio.read.FleetReader;
import bayfolio.read.Folder;
import bayfolio.read.Rewrite;
import bayfolio.render.theme.Theme;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import com.google.gson.JsonElement;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Things of the demo coaches and roles of the fleet are renamed in a copy, one at a time: nothing else is wrong than before, pages differ
 * by the name in their addresses alone, comments stay, and renamed back all is as it was but for {@code formerly}. A sample, the same
 * each time; more of them with {@code -Drenames=40}, all with {@code -Drenames=all}.
 */
final class EverythingRenamedTest {
    private static final Pattern COMMENT = Pattern.compile("(?m)(?:^|\\s)#.*$");
    private static final Pattern DIGEST = Pattern.compile("\\b[0-9a-f]{12}\\b");

    private static final boolean ALL = "all".equals(System.getProperty("renames"));

    /** One that is described whole, and two sisters. */
    private static final List<String> COACHES = List.of("dunlin", "avocet", "curlew");

    @TempDir
    private Path root;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Catalogs catalogs;

    @SuppressWarnings("NullAway.Init") // set before each test
    private Folder folder;

    /** As each coach is before and after each renaming. */
    private final Map<String, State> original = new TreeMap<>();

    private record OfACoach(String coach, String kind, String id) {}

    @BeforeEach
    void copied() throws Exception {
        DemoFleet.copy(Path.of(""), root);
        for (String coach : DemoFleet.coaches()) {
            if (!ALL && !COACHES.contains(coach)) {
                deleted(root.resolve("units").resolve(coach));
            }
        }
        catalogs = Theme.load(root, Theme.BUILT_IN).catalogs();
        folder = Folders.at(root);
    }

    private static void deleted(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private <T> List<T> some(List<T> all, int most) {
        List<T> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, new Random(20_261_130));
        return ALL ? all : shuffled.subList(0, Math.min(all.size(), Integer.getInteger("renames", most)));
    }

    @Test
    void thingsKeepAllButTheirNames() throws Exception {
        Fleet fleet = FleetReader.read(folder).fleet();
        List<OfACoach> things = new ArrayList<>();
        for (Unit unit : fleet.units()) {
            unit.things().forEach(thing -> things.add(new OfACoach(unit.id(), thing.kind(), thing.id())));
        }
        int uses = 0;
        for (OfACoach each : some(things, 5)) {
            String renamed = each.id + "-two";
            uses += renamed(
                    each.id,
                    renamed,
                    each.coach,
                    () -> Rename.ofThing(folder, each.coach, each.kind + ":" + each.id, renamed, catalogs),
                    () -> Rename.ofThing(folder, each.coach, renamed, each.id, catalogs));
        }

        assertThat(uses).as("lines that name a thing").isGreaterThan(10);
    }

    @Test
    void rolesKeepAllButTheirNames() throws Exception {
        List<String> roles = FleetReader.read(folder).fleet().roles().stream()
                .map(Role::id)
                .filter(role -> !ProgramRoles.asksFor(role))
                .toList();
        int uses = 0;
        for (String role : some(roles, 2)) {
            uses += renamed(
                    role,
                    role + "-two",
                    "dunlin",
                    () -> Rename.ofRole(folder, role, role + "-two", catalogs),
                    () -> Rename.ofRole(folder, role + "-two", role, catalogs));
        }

        assertThat(uses).as("lines that name a role").isGreaterThan(10);
    }

    /** How it is renamed. */
    private interface Renaming {
        Rename prepared() throws Exception;
    }

    /** @return how many lines have changed */
    private int renamed(String before, String after, String coach, Renaming there, Renaming back) throws Exception {
        Map<String, String> files = files();
        State was = original.computeIfAbsent(coach, this::state);

        there.prepared().make();

        State is = state(coach);
        Map<String, String> changed = files();
        assertThat(named(is.findings, after, before)).as(before).isEqualTo(was.findings);
        alike(before, after, was.handbook, is.handbook);
        assertThat(comments(changed)).as(before).isEqualTo(comments(files));
        int lines = onlyTheNameHasChanged(files, changed, before, after);

        back.prepared().make();

        Map<String, String> again = files();
        for (Map.Entry<String, String> file : again.entrySet()) {
            String text = withoutFormerly(file.getKey(), file.getValue(), after);
            assertThat(text).as(before + " back in " + file.getKey()).isEqualTo(files.get(file.getKey()));
            Files.writeString(root.resolve(file.getKey()), text);
        }
        assertThat(again.keySet()).isEqualTo(files.keySet());
        return lines;
    }

    /** What is wrong, and the normal form of a handbook. */
    private record State(List<String> findings, JsonElement handbook) {}

    private State state(String coach) {
        FleetReader.Reading reading = FleetReader.read(folder);
        Check check = Check.of(reading.fleet(), reading.library(), catalogs, reading.findings());
        Unit unit = check.units().stream()
                .filter(it -> it.id().equals(coach))
                .findFirst()
                .orElseThrow();
        return new State(
                check.findings().all().stream()
                        .map(EverythingRenamedTest::told)
                        .sorted()
                        .toList(),
                JsonParser.parseString(DocumentJson.of(Composer.compose(check.of(unit)))));
    }

    private static String told(Finding finding) {
        return finding.code() + " " + finding.at().file().path() + " "
                + finding.message().replaceAll(":\\d+:\\d+", "");
    }

    private static List<String> named(List<String> findings, String after, String before) {
        return findings.stream().map(it -> it.replace(after, before)).sorted().toList();
    }

    /** Each text of the handbook is as it was, or holds the new name where it held the old one, without a blank: an address. */
    private static void alike(String what, String after, JsonElement was, JsonElement is) {
        List<String> old = new ArrayList<>();
        List<String> now = new ArrayList<>();
        leaves("", was, old);
        leaves("", is, now);
        old.removeIf(it -> it.startsWith("/formerly"));
        now.removeIf(it -> it.startsWith("/formerly"));
        assertThat(now).as(what).hasSameSizeAs(old);
        for (int i = 0; i < old.size(); i++) {
            if (!old.get(i).equals(now.get(i))) {
                assertThat(now.get(i).replace(after, what)).as(what).isEqualTo(old.get(i));
                assertThat(now.get(i).substring(now.get(i).indexOf(' ') + 1))
                        .as(what)
                        .doesNotContain(" ");
            }
        }
    }

    /** Key and value of each, in their order. */
    private static void leaves(String key, JsonElement element, List<String> leaves) {
        if (element.isJsonObject()) {
            element.getAsJsonObject().entrySet().forEach(entry -> leaves(entry.getKey(), entry.getValue(), leaves));
        } else if (element.isJsonArray()) {
            element.getAsJsonArray().forEach(each -> leaves(key, each, leaves));
        } else {
            // Codes are made of capitals.
            leaves.add((key.equals("formerly") ? "/" : "") + key + " "
                    + (key.equals("address") ? element.toString().toLowerCase(Locale.ROOT) : element.toString()));
        }
    }

    private Map<String, String> files() throws IOException {
        Map<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root.resolve("units"))) {
            for (Path file : files.filter(Files::isRegularFile)
                    .filter(it -> it.toString().matches(".*\\.(yaml|md|vtt|json)"))
                    .toList()) {
                texts.put(
                        root.relativize(file).toString().replace('\\', '/'),
                        new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
            }
        }
        return texts;
    }

    private static List<String> comments(Map<String, String> files) {
        return files.entrySet().stream()
                .filter(file -> file.getKey().endsWith(".yaml"))
                .flatMap(file -> COMMENT.matcher(file.getValue()).results().map(it -> it.group()))
                .toList();
    }

    /** Line by line: each that is gone is there with the new name, or with another digest; {@code formerly} is what comes new. */
    private static int onlyTheNameHasChanged(
            Map<String, String> files, Map<String, String> changed, String before, String after) {
        int count = 0;
        assertThat(changed.keySet()).isEqualTo(files.keySet());
        for (String path : new TreeSet<>(files.keySet())) {
            List<String> was = Objects.requireNonNull(files.get(path)).lines().toList();
            List<String> is = new ArrayList<>(
                    Objects.requireNonNull(changed.get(path)).lines().toList());
            if (was.equals(is)) {
                continue;
            }
            is.removeIf(line -> line.strip().startsWith("formerly: ") && !was.contains(line));
            assertThat(is).as(path).hasSameSizeAs(was);
            for (int i = 0; i < was.size(); i++) {
                if (!is.get(i).equals(was.get(i))) {
                    String line = is.get(i).replaceFirst(", formerly: \\[[^]]*]", "");
                    assertThat(digests(line.replace(after, before))).isEqualTo(digests(was.get(i)));
                    count++;
                }
            }
        }
        return count;
    }

    private static String digests(String line) {
        return DIGEST.matcher(line).replaceAll("DIGEST");
    }

    /** As the list was before it got the name. */
    private static String withoutFormerly(String path, String text, String name) throws Exception {
        if (!path.endsWith(".yaml") || !text.contains("formerly") || !text.contains(name)) {
            return text;
        }
        SourceFile file = new SourceFile(path, text);
        Value said = new Value(Rewrite.read(file));
        List<Edit> edits = new ArrayList<>();
        said.formerly(Steps.NONE, name).forEach(way -> edits.add(new Edit.Remove(way)));
        return Rewrite.of(file, edits);
    }

    /** What a file says, searched for a name under {@code formerly}. */
    private record Value(bayfolio.read.Value value) {
        List<Steps> formerly(Steps way, String name) {
            List<Steps> ways = new ArrayList<>();
            if (value instanceof bayfolio.read.Value.Entries record) {
                record.values().forEach((key, inner) -> {
                    Steps at = way.key(key);
                    if (key.equals("formerly")
                            && inner.at(new Steps(List.of(new Steps.Id(name)))).isPresent()) {
                        ways.add(at.id(name));
                    } else {
                        ways.addAll(new Value(inner).formerly(at, name));
                    }
                });
            } else if (value instanceof bayfolio.read.Value.Elements list) {
                for (int i = 0; i < list.values().size(); i++) {
                    ways.addAll(new Value(list.values().get(i)).formerly(way.nth(i + 1), name));
                }
            }
            return ways;
        }
    }
}
