package bayfolio.compose;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.document.Audience;
import bayfolio.document.Content;
import bayfolio.document.Handbook;
import bayfolio.document.Node;
import bayfolio.document.NodeId;
import bayfolio.document.PageKind;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of parts of a handbook outlast new wording and another order; what is for staff is marked so. */
final class LastingNamesTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"dunlin", "turnstone"})
    void thingsInAnotherOrderUnderOtherNamesKeepTheirs(String coach) throws Exception {
        copy();
        Handbook before = handbook(coach);
        Path description = folder.resolve("units/" + coach + "/unit.yaml");
        String text = Files.readString(description);
        String changed = reversed(reversed(text, "switches"), "items").replaceAll("(?m)^(    name: )", "$1New ");
        assertThat(changed).isNotEqualTo(text);
        Files.writeString(description, changed);

        TreeSet<String> lost = names(before);
        TreeSet<String> gained = names(handbook(coach));
        TreeSet<String> kept = new TreeSet<>(lost);
        kept.retainAll(gained);
        lost.removeAll(kept);
        gained.removeAll(kept);
        assertThat(lost).isEmpty();
        assertThat(gained).isEmpty();
    }

    @Test
    void everyPartKnowsItsNameItsReadersItsLanguageAndWhereItCameFrom() throws Exception {
        copy();
        Handbook handbook = handbook("whimbrel");

        List<Node> nodes = handbook.walk().toList();
        assertThat(nodes).hasSizeGreaterThan(3000);
        assertThat(nodes).allSatisfy(node -> {
            assertThat(node.stamp().language()).isEqualTo("en-US");
            assertThat(handbook.find(node.id())).contains(node);
        });
        assertThat(handbook.find(new NodeId("compartment/service-bay", "switch-black-dump-valve.facts.plate"))
                        .orElseThrow()
                        .stamp()
                        .from()
                        .sources())
                .singleElement()
                .satisfies(source -> {
                    assertThat(source.name()).isEqualTo("switch/black-dump-valve/plate");
                    assertThat(source.at().file().path()).isEqualTo("units/whimbrel/unit.yaml");
                });
    }

    @Test
    void aReaderSeesWhatIsMarkedForHim() throws Exception {
        copy();
        Handbook handbook = handbook("whimbrel");
        Handbook renters = handbook.seenBy(Audience.RENTERS);
        Handbook staff = handbook.seenBy(Audience.STAFF);

        assertThat(renters.walk()).noneMatch(node -> node.stamp().audience() == Audience.STAFF);
        assertThat(staff.walk()).noneMatch(node -> node.stamp().audience() == Audience.RENTERS);
        assertThat(renters.find(PageKind.CONDITION.node())).isEmpty();
        assertThat(staff.find(PageKind.CONDITION.node())).isPresent();
        assertThat(renters.walk().count()).isLessThan(staff.walk().count());
    }

    private static TreeSet<String> names(Handbook handbook) {
        TreeSet<String> names = new TreeSet<>();
        handbook.walk()
                // It guards the first of several steps, whichever that is.
                .filter(node -> !(node instanceof Content.Steps.Hazard))
                .map(node -> node.id().toString())
                // Letters are those of the names that stand under them.
                .filter(name -> !name.startsWith("letter/"))
                .forEach(names::add);
        return names;
    }

    private void copy() throws IOException {
        try (var files = Files.walk(Path.of("units"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path to = folder.resolve(file.toString());
                Files.createDirectories(to.getParent());
                Files.copy(file, to);
            }
        }
    }

    private Handbook handbook(String coach) throws Exception {
        Catalogs screen = Theme.load(folder, Theme.BUILT_IN).catalogs();
        FleetReader.Reading reading = FleetReader.read(Folders.at(folder));
        Check check = Check.of(reading.fleet(), reading.library(), screen, reading.findings());
        return Composer.compose(check.of(check.units().stream()
                .filter(unit -> unit.id().equals(coach))
                .findFirst()
                .orElseThrow()));
    }

    /** A list of the description, its records from the last to the first. */
    private static String reversed(String text, String list) {
        int start = text.indexOf("\n" + list + ":\n") + list.length() + 3;
        int end = Pattern.compile("(?m)^[a-z]")
                .matcher(text)
                .results()
                .mapToInt(match -> match.start())
                .filter(at -> at > start)
                .findFirst()
                .orElse(text.length());
        List<String> records =
                new ArrayList<>(Arrays.stream(text.substring(start, end).split("(?m)^(?=  - id: )"))
                        .filter(record -> record.startsWith("  - id: "))
                        .toList());
        Collections.reverse(records);
        return text.substring(0, start) + String.join("", records) + text.substring(end);
    }
}
