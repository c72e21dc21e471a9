package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.catalog.Catalogs;
import bayfolio.check.Check;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Role;
import bayfolio.model.Unit;
import bayfolio.render.theme.Theme;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What could not be read is not judged: one fault in the demo fleet gives one finding, at its place, and none that follows
 * from it. Of each class of faults a sample is made, the same each time; all of them with {@code -Dmutants=all}.
 */
final class OneFaultTest {
    private static final int MOST = 15;
    private static final Path ROOT = Path.of("");

    private static FleetReader.Reading reading;
    private static Catalogs screen;
    private static Map<String, Role> roles;

    /** What is told of the coaches each alone, without the others that explain a word of theirs. */
    private static Set<String> alone;

    @TempDir
    private Path temp;

    @BeforeAll
    static void readDemoFleet() throws Exception {
        reading = DemoCoaches.whole(FleetReader.read(Folders.at(ROOT)));
        screen = Theme.load(ROOT, Theme.BUILT_IN).catalogs();
        roles = reading.fleet().roles().stream().collect(Collectors.toMap(Role::id, role -> role));
        alone = reading.fleet().units().stream()
                .flatMap(unit -> told(unit.facts().at().file()).stream())
                .map(OneFaultTest::words)
                .collect(Collectors.toSet());
    }

    private static String words(Finding finding) {
        return finding.at() + " " + finding.message() + " [" + finding.code() + "]";
    }

    @Test
    void misspeltMeasure() {
        assertToldOnce(
                values(type -> type instanceof Type.Measured<?>),
                written -> written.replaceAll(" .*", "") + " gallonz");
    }

    @Test
    void misspeltWordOfAChoice() {
        assertToldOnce(values(type -> type instanceof Type.Choice<?>), written -> written + "x");
    }

    @Test
    void misspeltRole() {
        assertToldOnce(values(type -> type instanceof Type.Role), written -> written + "x");
    }

    @Test
    void idThatIsNone() {
        assertToldOnce(values(type -> type == Type.ID), written -> "My " + written);
    }

    @Test
    void referenceThatIsNone() {
        assertToldOnce(values(type -> type instanceof Type.Reference), written -> "My " + written);
    }

    @Test
    void yesThatIsNone() {
        assertToldOnce(values(type -> type instanceof Type.YesNo), written -> "true");
    }

    @Test
    void misspeltKey() {
        List<Place> keys = new ArrayList<>();
        for (Unit unit : reading.fleet().units()) {
            Pattern key = Pattern.compile("^ {4}([a-z]{5}[a-z-]*):(?= )");
            for (int line = 1; line <= unit.facts().at().file().lineCount(); line++) {
                Matcher found = key.matcher(unit.facts().at().file().line(line));
                if (found.find()) {
                    keys.add(Place.of(
                            unit.facts().at().file(), line, 5, found.group(1).length()));
                }
            }
        }
        assertToldOnce(sample(keys), written -> written.substring(0, 1) + "x" + written.substring(1));
    }

    @Test
    void idOfAnotherThing() {
        Map<Place, String> others = new LinkedHashMap<>();
        for (Unit unit : reading.fleet().units()) {
            Map<String, String> first = new HashMap<>();
            unit.things().forEach(thing -> {
                String before = first.putIfAbsent(thing.kind(), thing.id());
                if (before != null) {
                    others.put(thing.at(), before);
                }
            });
        }
        sample(List.copyOf(others.entrySet()))
                .forEach(each -> assertToldOnce(List.of(each.getKey()), written -> each.getValue()));
    }

    @Test
    void colonLostInTheFileOfTheFleet() throws Exception {
        assertOneFindingForEachLine(
                Path.of("units/fleet.yaml"),
                line -> line.matches(" *(- )?[a-z-]+:.*") ? Optional.of(line.replaceFirst(":", "")) : Optional.empty());
    }

    @Test
    void phoneWhoseIdIsNone() throws Exception {
        assertOneFindingForEachLine(
                Path.of("units/fleet.yaml"),
                line -> line.matches("  - id: (hours|roadside|after-hours)")
                        ? Optional.of(line.replaceFirst("id: .", "id: H"))
                        : Optional.empty());
    }

    @Test
    void colonLostInTheFileOfACoach() throws Exception {
        assertOneFindingForEachLine(
                Path.of("units/dunlin/unit.yaml"),
                line -> line.matches("    (name|access):.*")
                        ? Optional.of(line.replaceFirst(":", ""))
                        : Optional.empty());
    }

    @Test
    void colonLostInTheHeadOfAProcedure() throws Exception {
        assertOneFindingForEachLine(
                Path.of("units/shared/procedures/dump-tanks-gravity.md"),
                line -> line.matches("(id|title|stage|who|when):.*")
                        ? Optional.of(line.replaceFirst(":", ""))
                        : Optional.empty());
    }

    @Test
    void wordThatIsNoneInTheHeadOfAProcedure() throws Exception {
        assertOneFindingForEachLine(
                Path.of("units/shared/procedures/dump-tanks-gravity.md"),
                line -> line.matches("(stage|who|when):.*") ? Optional.of(line + "x") : Optional.empty());
    }

    @Test
    void placeInTheWordsOfSharedTexts() throws Exception {
        assertOneFindingForEachLine(
                Path.of("units/dunlin/unit.yaml"),
                line -> line.matches("    where: above .*") ? Optional.of("    where: on the tank") : Optional.empty());
    }

    @Test
    void switchOfRentersThatIsForStaff() throws Exception {
        List<String> lines = Files.readAllLines(Path.of("units/dunlin/unit.yaml"));
        int pump = lines.indexOf("  - id: water-pump-switch");
        int access = pump + lines.subList(pump, lines.size()).indexOf("    access: free");
        lines.set(access, "    access: staff");
        DemoFleet.copy(ROOT, temp);
        Files.write(temp.resolve("units/dunlin/unit.yaml"), lines);

        assertThat(DemoFleet.of(temp).check().findings().all())
                .extracting(OneFaultTest::words)
                .singleElement()
                .asString()
                .startsWith(
                        "units/dunlin/unit.yaml:" + (access + 1) + ":13 shared procedures send the renter to switch")
                .contains("units/shared/procedures/use-water-pump.md:")
                .endsWith("[staff-place-for-renter]");
    }

    private interface Spoil {
        Optional<String> line(String written);
    }

    /** Each line that can be spoilt is, a sample of them where there are many, and the whole fleet is checked. */
    private void assertOneFindingForEachLine(Path path, Spoil spoil) throws Exception {
        DemoFleet.copy(ROOT, temp);
        Folder folder = Folders.at(temp);
        List<String> lines = Files.readAllLines(path);
        List<Integer> possible = IntStream.range(0, lines.size())
                .filter(line -> spoil.line(lines.get(line)).isPresent())
                .boxed()
                .toList();
        assertThat(possible).isNotEmpty();
        List<String> wrong = new ArrayList<>();
        for (int line : sample(possible)) {
            List<String> spoilt = new ArrayList<>(lines);
            spoilt.set(line, spoil.line(lines.get(line)).orElseThrow());
            Files.write(temp.resolve(path), spoilt);
            FleetReader.Reading spoiltFleet = FleetReader.read(folder);
            List<Finding> told = Check.of(spoiltFleet.fleet(), spoiltFleet.library(), screen, spoiltFleet.findings())
                    .findings()
                    .all();
            if (told.size() != 1
                    || !told.get(0).at().file().path().equals(path.toString())
                    || Math.abs(told.get(0).at().line() - line - 1) > 1) {
                wrong.add(path + ":" + (line + 1) + " " + spoilt.get(line) + ": " + told.size()
                        + told.stream()
                                .limit(12)
                                .map(it -> "\n    " + words(it))
                                .collect(Collectors.joining()));
            }
        }
        assertThat(wrong).as("of " + possible.size()).isEmpty();
    }

    private interface Fault {
        String spoil(String written);
    }

    /** Places of single values in the descriptions of the coaches; a file of cues is read by somebody else. */
    private static List<Place> values(Predicate<Type<?>> type) {
        List<Place> places = new ArrayList<>();
        for (Unit unit : reading.fleet().units()) {
            FactVisitor.of(unit.facts(), (each, value) -> {
                if (type.test(each) && !value.at().file().path().endsWith(".vtt")) {
                    places.add(value.at());
                }
            });
        }
        return sample(places);
    }

    private static <T> List<T> sample(List<T> all) {
        List<T> shuffled = new ArrayList<>(all);
        if (!"all".equals(System.getProperty("mutants"))) {
            Collections.shuffle(shuffled, new Random(20_260_418));
        }
        return shuffled.subList(
                0, Math.min("all".equals(System.getProperty("mutants")) ? all.size() : MOST, all.size()));
    }

    private static void assertToldOnce(List<Place> places, Fault fault) {
        List<String> wrong = new ArrayList<>();
        for (Place at : places) {
            List<Finding> told = new ArrayList<>(told(replaced(at, fault.spoil(written(at)))));
            told.removeIf(it -> alone.contains(words(it)));
            if (told.size() != 1 || !told.get(0).at().toString().equals(at.toString())) {
                wrong.add(at + " `" + written(at) + "`:"
                        + told.stream().map(it -> "\n    " + words(it)).collect(Collectors.joining()));
            }
        }
        assertThat(wrong).as("of " + places.size()).isEmpty();
    }

    /** All that is told of the coach alone with one description spoilt. */
    private static List<Finding> told(SourceFile spoilt) {
        List<Finding> findings = new ArrayList<>();
        List<Unit> units = Resolved.of(
                        Folders.at(Path.of(".")),
                        spoilt,
                        new Lists(
                                Optional.of(roles), Optional.of(reading.fleet().equipment())),
                        findings::add)
                .flatMap(Resolved::unit)
                .filter(unit -> unit.facts().read(Unit.ID))
                .stream()
                .toList();
        Fleet fleet = new Fleet(
                reading.fleet().facts(),
                units,
                reading.fleet().shared(),
                units.isEmpty() ? List.of("spoilt") : List.of());
        return Check.of(fleet, reading.library(), screen, findings).findings().all();
    }

    private static String written(Place at) {
        return at.file().line(at.line()).substring(at.column() - 1, at.endColumn() - 1);
    }

    private static SourceFile replaced(Place at, String with) {
        List<String> lines = new ArrayList<>(at.file().text().lines().toList());
        String line = lines.get(at.line() - 1);
        lines.set(at.line() - 1, line.substring(0, at.column() - 1) + with + line.substring(at.endColumn() - 1));
        return new SourceFile(at.file().path(), String.join("\n", lines) + "\n");
    }
}
