package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.model.Fleet;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.procedure.Head;
import bayfolio.procedure.Script;
import bayfolio.render.theme.Theme;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Ids of the demo fleet are renamed where they are defined, one at a time: each place that still uses the old name is
 * told, at its line and column, with the new name among the near ones; and nothing else is. {@code -Drenames=all} for all.
 */
final class RenameTest {
    private static final boolean ALL = System.getProperty("renames", "").equals("all");

    /** Of a kind. */
    private static final int OTHERS = 4;

    private static FleetReader.Reading reading;
    private static Catalogs screen;

    @BeforeAll
    static void readDemoFleet() throws Exception {
        reading = DemoCoaches.whole(FleetReader.read(Folders.at(Path.of("."))));
        screen = Theme.load(Path.of("."), Theme.BUILT_IN).catalogs();
        assertThat(reading.findings()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#whole")
    void everyUseOfARenamedThingIsTold(String id) {
        Unit unit = reading.fleet().units().stream()
                .filter(it -> it.id().equals(id))
                .findFirst()
                .orElseThrow();
        int used = 0;
        for (Thing thing : some(unit)) {
            String renamed = thing.id() + "-two";
            List<Finding> findings = check(replaced(thing.at(), renamed));

            TreeSet<String> uses = uses(unit, thing.id());
            assertThat(places(findings)).as(thing.kind() + " " + thing.id()).isEqualTo(uses);
            assertThat(findings)
                    .as(thing.kind() + " " + thing.id())
                    .allSatisfy(finding -> assertThat(finding.near()).contains(renamed));
            used += uses.size();
        }

        assertThat(used).as("places that use an id").isGreaterThan(100);
    }

    @Test
    void everyUseOfARenamedProcedureIsTold() {
        int used = 0;
        for (Script script : some(reading.library().scripts())) {
            Place at = script.head().facts().at(Head.ID);
            List<Script> scripts = new ArrayList<>(reading.library().scripts());
            String renamed = script.id() + "-two";
            scripts.replaceAll(it -> it == script
                    ? FleetReader.script(
                                    replaced(at, renamed),
                                    it.whose(),
                                    reading.fleet().equipment().words(),
                                    finding -> {})
                            .orElseThrow()
                    : it);
            List<Finding> findings =
                    errors(Check.of(reading.fleet(), reading.library().with(scripts), screen, List.of()));

            TreeSet<String> uses = uses(script.id());
            assertThat(places(findings)).as(script.id()).isEqualTo(uses);
            assertThat(findings)
                    .allSatisfy(finding -> assertThat(finding.near()).contains(renamed));
            used += uses.size();
        }

        assertThat(used).as("places that use a procedure").isGreaterThan(20);
    }

    /** Each takes a check of the whole fleet: a sample, the same each time. */
    private static List<Script> some(List<Script> scripts) {
        List<Script> shuffled = new ArrayList<>(scripts);
        Collections.shuffle(shuffled, new Random(18));
        return ALL ? shuffled : shuffled.subList(0, 24);
    }

    /** Of each kind that of which most is said, and some others, the same each time. */
    private static List<Thing> some(Unit unit) {
        Map<String, List<Thing>> kinds = new TreeMap<>();
        unit.things()
                .forEach(thing -> kinds.computeIfAbsent(thing.kind(), it -> new ArrayList<>())
                        .add(thing));
        Random random = new Random(unit.id().hashCode());
        return kinds.values().stream()
                .flatMap(things -> {
                    Collections.shuffle(things, random);
                    Thing most = Collections.max(
                            things,
                            Comparator.comparing(it -> uses(unit, it.id()).size()));
                    return ALL
                            ? things.stream()
                            : Stream.concat(
                                    Stream.of(most),
                                    things.stream().filter(it -> it != most).limit(OTHERS));
                })
                .toList();
    }

    private static List<Finding> check(SourceFile file) {
        Unit renamed = Resolved.of(Folders.at(Path.of(".")), file, DemoCoaches.LISTS, finding -> {
                    throw new AssertionError(finding);
                })
                .flatMap(Resolved::unit)
                .orElseThrow();
        Fleet fleet = new Fleet(
                reading.fleet().facts(), List.of(renamed), reading.fleet().shared());
        return errors(Check.of(fleet, reading.library(), screen, List.of()));
    }

    /** Notes may follow, such as that nothing is in a compartment any more: they are true. */
    private static List<Finding> errors(Check check) {
        return check.findings().all().stream().filter(Finding::isError).toList();
    }

    /** The file with one word of it replaced; columns of other lines and of the line before the word stay. */
    private static SourceFile replaced(Place at, String name) {
        List<String> lines = new ArrayList<>(at.file().text().lines().toList());
        String line = lines.get(at.line() - 1);
        int start = line.offsetByCodePoints(0, at.column() - 1);
        int end = line.offsetByCodePoints(0, at.endColumn() - 1);
        lines.set(at.line() - 1, line.substring(0, start) + name + line.substring(end));
        return new SourceFile(at.file().path(), String.join("\n", lines) + "\n");
    }

    private static TreeSet<String> places(List<Finding> findings) {
        TreeSet<String> places = new TreeSet<>();
        findings.forEach(finding -> places.add(finding.at().toString()));
        return places;
    }

    /** Where the description names the id, as its declaration says which values are references. */
    private static TreeSet<String> uses(Unit unit, String id) {
        TreeSet<String> uses = new TreeSet<>();
        FactVisitor.of(unit.facts(), (type, value) -> {
            if (type instanceof Type.Reference && value.value().equals(id)) {
                uses.add(value.at().toString());
            }
        });
        return uses;
    }

    /** Where a procedure is referred to, found by searching the files as text. */
    private static TreeSet<String> uses(String procedure) {
        Pattern reference = Pattern.compile("\\((?:procedure|trouble):" + Pattern.quote(procedure) + "\\)");
        Pattern name = Pattern.compile("\\{\\{[#^](?:procedure|trouble|back)\\." + Pattern.quote(procedure) + "\\}\\}");
        TreeSet<String> uses = new TreeSet<>();
        Stream<SourceFile> files = reading.library().texts().stream().map(Script::file);
        files.forEach(file -> {
            for (int line = 1; line <= file.lineCount(); line++) {
                Matcher matcher = reference.matcher(file.line(line));
                while (matcher.find()) {
                    uses.add(file.path() + ":" + line + ":" + (matcher.start() + 2));
                }
                Matcher section = name.matcher(file.line(line));
                while (section.find()) {
                    uses.add(file.path() + ":" + line + ":" + (section.start() + 1));
                }
            }
        });
        reading.fleet().equipment().all().stream()
                .flatMap(kind -> Stream.of(
                                Equipment.SET_UP_BY,
                                Equipment.UNDONE_BY,
                                Equipment.USED_BY,
                                Equipment.STAFF_WORK,
                                Equipment.TROUBLE)
                        .flatMap(key -> kind.facts().find(key).stream()))
                .flatMap(List::stream)
                .filter(id -> id.value().equals(procedure))
                .forEach(id -> uses.add(id.at().toString()));
        return uses;
    }
}
