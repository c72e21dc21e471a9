package bayfolio.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.read.FleetReader;
import bayfolio.render.theme.Theme;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.Position;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * The refits of a trade, one a page: a coach of the demo fleet, changed in a single place as a hurried writer changes
 * it, and what the check then tells. What it cannot tell stands below, with the reason.
 *
 * <p>Lines of the descriptions shift with every mend, so a finding in the description of the changed coach is placed
 * by what it is about: {@code switch house-battery-switch / feeds[2]} is the second entry of that key, {@code size /
 * height} a key of a block, {@code unit} the coach itself. Anywhere else, and for what could not be read into the
 * model, it is the path of the file and the text of the line: {@code units/shared/procedures/use-inverter.md "1. Go
 * to …"}; then a message that goes by a coach comes once for all of them.
 *
 * <p>Edits are fenced blocks, done in their order, {@code in=} naming a thing by its id or a block by its key
 * with the colon:
 *
 * <ul>
 *   <li>{@code replace}: lines marked {@code -} give way to lines marked {@code +};
 *   <li>{@code remove}: the whole thing or block goes;
 *   <li>{@code add}: lines put at its end, as they stand.
 * </ul>
 *
 * <p>Run with {@code -Dgolden=write}, the blocks of findings are written anew, and what was written fails once.
 */
class RefitTest {
    private static final Path PAGES = Path.of("src/test/resources/bayfolio/refits");
    private static final Path FLEET = Path.of("units");
    private static final int REFITS = 33;
    private static final boolean WRITE = "write".equals(System.getProperty("golden"));
    private static final Pattern PLACE_IN_MESSAGE = Pattern.compile(", at units/[^ ]+:\\d+:\\d+");
    private static final Pattern WITH_REASON = Pattern.compile("- .{15,}: .{20,}");

    @TempDir
    Path temp;

    @TestFactory
    Stream<DynamicTest> findingsOfTheRefits() throws IOException {
        return pages().stream().map(refit -> dynamicTest(refit.name(), () -> compare(refit)));
    }

    private void compare(Refit refit) throws Exception {
        String told = told(refit);

        if (WRITE && !told.equals(refit.told())) {
            Files.writeString(refit.page().path(), refit.with(told));
            fail("wrote " + refit.page().path());
        }
        assertThat(told).isEqualTo(refit.told());
    }

    @Test
    void theFleetIsCleanBefore() throws Exception {
        assertThat(findings(Path.of(".")).findings()).isEmpty();
    }

    @Test
    void everyRefitOfTheTradeHasItsPage() throws IOException {
        assertThat(pages())
                .extracting(refit -> refit.name().substring(0, 2))
                .containsExactlyElementsOf(IntStream.rangeClosed(1, REFITS)
                        .mapToObj("%02d"::formatted)
                        .toList());
    }

    @Test
    void everyPageTellsSomethingOrSaysWhyNot() throws IOException {
        assertThat(pages()).allSatisfy(RefitTest::checkForm);
    }

    private static void checkForm(Refit refit) {
        assertThat(refit.page().text())
                .matches("(?s)# Refit " + Integer.parseInt(refit.name().substring(0, 2)) + ": .*")
                .contains("\n**Coach** ", "\n**Done** ", "\n**Told**", "\n**Not seen**");
        assertThat(refit.codesTold().isEmpty() && refit.notSeen().isEmpty())
                .as(refit.name())
                .isFalse();
        assertThat(refit.notSeen())
                .as(refit.name())
                .allSatisfy(line -> assertThat(line)
                        .as("what is untrue, a colon, why no check sees it")
                        .matches(WITH_REASON));
    }

    private static List<Refit> pages() throws IOException {
        try (Stream<Path> paths = Files.list(PAGES)) {
            List<Path> sorted = paths.filter(Files::isRegularFile).sorted().toList();
            List<Refit> refits = new java.util.ArrayList<>();
            for (Path path : sorted) {
                refits.add(Refit.read(path));
            }
            return refits;
        }
    }

    /** The lines of a block of findings. */
    private String told(Refit refit) throws Exception {
        Path root = Files.createTempDirectory(temp, refit.name());
        copy(FLEET, root.resolve(FLEET));
        String path = "units/" + refit.coach() + "/unit.yaml";
        Path description = root.resolve(path);
        Files.writeString(description, refit.done(Files.readString(description)));

        Reading reading = findings(root);

        Map<Position, String> names = reading.names(path);
        return reading.findings().stream()
                .map(finding -> told(finding, finding.at().file().path().equals(path) ? names : Map.of()))
                .distinct()
                .collect(Collectors.joining());
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> paths = Files.walk(from)) {
            for (Path path : paths.toList()) {
                Path copy = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(path, copy);
                }
            }
        }
    }

    private static String told(Finding finding, Map<Position, String> names) {
        return "%s: %s: %s [%s]\n"
                .formatted(
                        place(finding.at(), names),
                        finding.severity().word(),
                        PLACE_IN_MESSAGE.matcher(finding.message()).replaceAll(""),
                        finding.code());
    }

    private static String place(Place at, Map<Position, String> names) {
        return Optional.ofNullable(names.get(at.start()))
                .orElseGet(() ->
                        at.file().path() + " \"" + at.file().line(at.line()).strip() + "\"");
    }

    private static Reading findings(Path root) throws Exception {
        FleetReader.Reading read = FleetReader.read(Folders.at(root));
        Catalogs screen = Theme.load(Path.of("."), Theme.BUILT_IN).catalogs();
        Check check = Check.of(read.fleet(), read.library(), screen, read.findings());
        return new Reading(read.fleet().units(), check.findings().all());
    }

    private record Reading(List<Unit> units, List<Finding> findings) {
        /** What stands where in a description. */
        Map<Position, String> names(String path) {
            Map<Position, String> names = new HashMap<>();
            units.stream()
                    .filter(unit -> unit.facts().at().file().path().equals(path))
                    .forEach(unit -> {
                        name("", unit.facts(), names);
                        names.put(unit.facts().at().start(), "unit");
                    });
            return names;
        }

        private static void name(String above, Facts facts, Map<Position, String> names) {
            names.putIfAbsent(facts.at().start(), above);
            for (Key<?> key : facts.shape().keys()) {
                facts.located(key).ifPresent(value -> name(under(above, key.name()), value, names));
            }
        }

        private static void name(String name, Located<?> value, Map<Position, String> names) {
            if (value.value() instanceof Thing thing
                    && thing.facts().has(thing.identity().id())) {
                String thingName = thing.kind() + " " + thing.id();
                names.put(value.at().start(), thingName);
                name(thingName, thing.facts(), names);
            } else if (value.value() instanceof Described record) {
                names.putIfAbsent(value.at().start(), name);
                name(name, record.facts(), names);
            } else if (value.value() instanceof List<?> list) {
                names.putIfAbsent(value.at().start(), name);
                for (int i = 0; i < list.size(); i++) {
                    name(name + "[" + (i + 1) + "]", (Located<?>) list.get(i), names);
                }
            } else {
                names.putIfAbsent(value.at().start(), name);
            }
        }

        private static String under(String above, String name) {
            return above.isEmpty() ? name : above + " / " + name;
        }
    }
}
