package bayfolio.read;

import static org.assertj.core.api.Assertions.assertThat;

import bayfolio.Folders;
import bayfolio.check.Check;
import bayfolio.compose.Composer;
import bayfolio.document.DocumentJson;
import bayfolio.finding.Finding;
import bayfolio.model.Fleet;
import bayfolio.model.Unit;
import bayfolio.render.theme.Theme;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A coach written in full, and the same coach cut by chance into a model and a difference: facts and pages are the same. With
 * {@code -Dsplits=200} more cuts of each coach are made than by default.
 */
class LayersTest {
    private static final int SPLITS = Integer.getInteger("splits", 40);
    private static final List<String> OWN =
            List.of("id", "name", "number", "model", "formerly", "refits", "checked-on", "checked-by", "counted");

    @TempDir
    Path temp;

    @ParameterizedTest
    @MethodSource("bayfolio.DemoFleet#whole")
    void howeverItIsCutTheCoachIsTheSame(String coach) throws Exception {
        SourceFile whole = file(Path.of("units", coach, "unit.yaml"));
        Value.Entries full = (Value.Entries) value(whole);
        Unit expected = unit(Folders.at(Path.of(".")), whole);
        Random chance = new Random(coach.hashCode());
        long overridden = 0;
        for (int i = 0; i < SPLITS; i++) {
            Cut cut = new Cut(chance);
            Path root = temp.resolve(coach + "-" + i);
            write(root, coach, cut.model(full), cut.difference(full));
            media(coach, root);
            Folder folder = Folders.at(root);
            SourceFile half = file(root, "units/" + coach + "/unit.yaml");

            Unit laid = unit(folder, half);

            assertThat(Facets.of(laid)).as("cut %d", i).isEqualTo(Facets.of(expected));
            List<Finding> findings = new ArrayList<>();
            Shown shown = Shown.of(folder, half, findings::add).orElseThrow();
            overridden += shown.difference().orElseThrow().overrides().size();
            assertThat(findings).isEmpty();
            if (i == 0) {
                assertThat(json(folder, laid)).isEqualTo(json(Folders.at(Path.of(".")), expected));
                assertThat(Facets.of(unit(Folders.at(root), shownWhole(shown, coach))))
                        .isEqualTo(Facets.of(expected));
            }
        }
        assertThat(overridden).as("facts that both halves state").isGreaterThan(10L * SPLITS);
    }

    /** What is shown is a whole description, which needs no model any more. */
    private static SourceFile shownWhole(Shown shown, String coach) {
        StringBuilder text = new StringBuilder();
        shown.lines().stream()
                .filter(line -> !line.text().startsWith("model:"))
                .forEach(line -> text.append(line.text())
                        .append(line.at()
                                .map(at -> "  # " + at.file().path() + ":" + at.line())
                                .orElse(""))
                        .append('\n'));
        return new SourceFile("units/" + coach + "/unit.yaml", text.toString());
    }

    @Test
    void eachValueKeepsTheFileThatSaidIt() throws Exception {
        write(temp, "knot", """
                body: van
                region: north-america
                drive-side: left
                size: {length: 19 ft 7 in, width: 6 ft 9 in, height: 9 ft 2 in}
                tanks:
                  - {id: fresh, name: Fresh tank, contents: fresh, capacity: 40 gal}
                  - {id: gray, name: Gray tank, contents: gray, capacity: 32 gal}
                """, """
                id: knot
                model: twin
                name: Knot
                tanks:
                  - id: gray
                    capacity: 30 gal
                """);

        Unit knot = unit(Folders.at(temp), file(temp, "units/knot/unit.yaml"));

        assertThat(knot.tanks())
                .extracting(tank -> tank.id() + " " + tank.at())
                .containsExactly("fresh units/models/twin/model.yaml:6:10", "gray units/knot/unit.yaml:5:9");
        assertThat(knot.tanks().get(1).facts().at(bayfolio.model.Tank.CAPACITY))
                .hasToString("units/knot/unit.yaml:6:15");
        assertThat(knot.tanks().get(1).facts().at(bayfolio.model.Tank.CONTENTS))
                .hasToString("units/models/twin/model.yaml:7:43");
    }

    @Test
    void sistersShareWhatTheyTakeOverAsItIs() throws Exception {
        write(temp, "knot", MODEL, "id: knot\nmodel: twin\nname: Knot\n");
        write(temp, "ruff", MODEL, "id: ruff\nmodel: twin\nname: Ruff\n");
        Files.writeString(temp.resolve("units/fleet.yaml"), FleetReader.LEAST_FLEET);

        List<Unit> units = FleetReader.read(Folders.at(temp)).fleet().units();

        assertThat(units).hasSize(2);
        assertThat(units.get(0).tanks().get(0)).isSameAs(units.get(1).tanks().get(0));
    }

    private static final String MODEL = """
            body: van
            region: north-america
            drive-side: left
            size: {length: 19 ft 7 in, width: 6 ft 9 in, height: 9 ft 2 in}
            tanks:
              - {id: fresh, name: Fresh tank, contents: fresh, capacity: 40 gal}
            """;

    @Test
    void aFaultOfTheModelIsToldOnceWithItsCoaches() throws Exception {
        write(temp, "knot", MODEL.replace("40 gal", "40 pots"), "id: knot\nmodel: twin\nname: Knot\n");
        write(temp, "ruff", MODEL.replace("40 gal", "40 pots"), "id: ruff\nmodel: twin\nname: Ruff\n");
        Files.writeString(temp.resolve("units/fleet.yaml"), FleetReader.LEAST_FLEET);

        assertThat(told())
                .filteredOn(it -> it.at().file().path().contains("models"))
                .singleElement()
                .satisfies(it -> {
                    assertThat(it.at()).hasToString("units/models/twin/model.yaml:6:62");
                    assertThat(it.units()).containsExactly("knot", "ruff");
                    assertThat(it.coaches()).containsExactly("knot", "ruff");
                });
    }

    @Test
    void aModelThatIsNoYamlIsToldOnceAndNothingIsSaidOfItsCoaches() throws Exception {
        write(temp, "knot", MODEL.replace("- {id", "- [id"), "id: knot\nmodel: twin\nname: Knot\n");
        write(temp, "ruff", MODEL.replace("- {id", "- [id"), "id: ruff\nmodel: twin\nname: Ruff\n");
        Files.writeString(temp.resolve("units/fleet.yaml"), FleetReader.LEAST_FLEET);

        assertThat(told()).filteredOn(Finding::isError).singleElement().satisfies(it -> {
            assertThat(it.code()).isEqualTo("yaml-syntax");
            assertThat(it.units()).containsExactly("knot", "ruff");
        });
    }

    /** It may be half written: nothing in it is looked at, and what others have gets out. */
    @Test
    void aModelThatNoCoachHasHarmsNobody() throws Exception {
        write(temp, "knot", MODEL, "id: knot\nmodel: twin\nname: Knot\n");
        Path unused = Files.createDirectories(temp.resolve("units/models/begun/procedures"));
        Files.writeString(unused.resolveSibling("model.yaml"), "tanks: [");
        Files.writeString(unused.resolve("half.md"), "no head");
        Files.writeString(temp.resolve("units/fleet.yaml"), FleetReader.LEAST_FLEET);

        assertThat(told())
                .filteredOn(it -> it.at().file().path().contains("begun"))
                .singleElement()
                .satisfies(it -> assertThat(it.code()).isEqualTo("model-without-coach"));
    }

    /** Also one that is written in one line, which no glance at its first words finds. */
    @Test
    void aSpoiltModelIsToldOfACoachHoweverThatIsWritten() throws Exception {
        write(temp, "knot", "tanks: [", "{id: knot, model: twin, name: Knot}\n");
        Files.writeString(temp.resolve("units/fleet.yaml"), FleetReader.LEAST_FLEET);

        assertThat(told()).filteredOn(Finding::isError).singleElement().satisfies(it -> {
            assertThat(it.code()).isEqualTo("yaml-syntax");
            assertThat(it.units()).containsExactly("knot");
        });
    }

    @Test
    void aCoachIsNotCalledLikeAModel() throws Exception {
        write(temp, "twin", MODEL, "id: twin\nmodel: twin\nname: Twin\n");
        Files.writeString(temp.resolve("units/fleet.yaml"), FleetReader.LEAST_FLEET);

        assertThat(told()).anySatisfy(it -> {
            assertThat(it.code()).isEqualTo("duplicate-id");
            assertThat(it.at()).hasToString("units/twin/unit.yaml:1:5");
        });
    }

    /** One that stands in the model is for all sisters, and has its sense if it has for one. */
    @Test
    void anAcceptanceInTheModelCountsForAll() throws Exception {
        String accepted = MODEL.replace(
                "40 gal",
                "40 gal, accept: [{code: override-not-confirmed, reason: None.}, {code: orphan-switch, reason: None.}]");
        String other = "tanks: [{id: fresh, capacity: 38 gal}]\n";
        write(temp, "knot", accepted, "id: knot\nmodel: twin\nname: Knot\n" + other);
        write(temp, "ruff", accepted, "id: ruff\nmodel: twin\nname: Ruff\n");
        Files.writeString(temp.resolve("units/fleet.yaml"), FleetReader.LEAST_FLEET);

        assertThat(told())
                .noneSatisfy(it -> assertThat(it.code()).isEqualTo("override-not-confirmed"))
                .filteredOn(it -> it.code().equals("acceptance-without-finding"))
                .singleElement()
                .satisfies(it -> {
                    assertThat(it.message()).contains("orphan-switch");
                    assertThat(it.units()).containsExactly("knot", "ruff");
                });
    }

    private List<Finding> told() throws Exception {
        FleetReader.Reading reading = FleetReader.read(Folders.at(temp));
        return Check.of(
                        reading.fleet(),
                        reading.library(),
                        Theme.load(temp, Theme.BUILT_IN).catalogs(),
                        reading.findings())
                .findings()
                .all();
    }

    private static String json(Folder folder, Unit unit) throws Exception {
        FleetReader.Reading demo = FleetReader.read(Folders.at(Path.of(".")));
        Fleet fleet =
                new Fleet(demo.fleet().facts(), List.of(unit), demo.fleet().shared());
        Check check = Check.of(
                fleet, demo.library(), Theme.load(Path.of("."), Theme.BUILT_IN).catalogs(), List.of());
        return DocumentJson.of(Composer.compose(check.of(unit)));
    }

    private static Unit unit(Folder folder, SourceFile file) {
        List<Finding> findings = new ArrayList<>();
        Optional<Unit> unit =
                Resolved.of(folder, file, Lists.of(folder), findings::add).flatMap(Resolved::unit);
        assertThat(findings).isEmpty();
        return unit.orElseThrow();
    }

    private static SourceFile file(Path path) throws IOException {
        return file(Path.of("."), path.toString());
    }

    private static SourceFile file(Path root, String path) throws IOException {
        return new SourceFile(path, Files.readString(root.resolve(path)));
    }

    private static Value value(SourceFile file) {
        return Value.of(Yaml.compose(file, file.text(), 1, finding -> {
                    throw new AssertionError(finding);
                })
                .orElseThrow());
    }

    private static void write(Path root, String coach, String model, String difference) throws IOException {
        Path below = Files.createDirectories(root.resolve("units/models/twin"));
        Files.writeString(below.resolve("model.yaml"), model);
        Path own = Files.createDirectories(root.resolve("units").resolve(coach));
        Files.writeString(own.resolve("unit.yaml"), difference);
    }

    private static void write(Path root, String coach, Value model, Value difference) throws IOException {
        write(root, coach, Yamls.of(model), Yamls.of(difference));
    }

    /** Films and photos are looked for beside the half that names them. */
    private static void media(String coach, Path root) throws IOException {
        for (String kind : List.of("photos", "films")) {
            Path from = Path.of("units", coach, kind);
            if (Files.isDirectory(from)) {
                for (String to : List.of("units/" + coach, "units/models/twin")) {
                    Path folder = Files.createDirectories(root.resolve(to).resolve(kind));
                    try (Stream<Path> files = Files.list(from)) {
                        for (Path file : files.toList()) {
                            Files.copy(file, folder.resolve(file.getFileName()));
                        }
                    }
                }
            }
        }
    }

    /** A way to share out what a coach is: each fact to the model, to the difference, or to both with another value below. */
    private static final class Cut {
        private final Random chance;
        private final Map<String, Map<String, Value>> unused = new LinkedHashMap<>();
        private Value.Entries upper = new Value.Entries(Map.of());

        Cut(Random chance) {
            this.chance = chance;
        }

        Value model(Value.Entries full) {
            Map<String, Value> lower = new LinkedHashMap<>();
            Map<String, Value> over = new LinkedHashMap<>();
            full.values().forEach((key, value) -> {
                if (OWN.contains(key)) {
                    over.put(key, value);
                } else {
                    cut(key, value, lower, over);
                }
            });
            over.put("model", Value.text("twin"));
            upper = new Value.Entries(over);
            return new Value.Entries(lower);
        }

        Value difference(Value.Entries full) {
            return upper;
        }

        private void cut(String key, Value value, Map<String, Value> lower, Map<String, Value> over) {
            if (own(key)) {
                over.put(key, value);
                return;
            }
            if (value instanceof Value.Entries record) {
                Map<String, Value> below = new LinkedHashMap<>();
                Map<String, Value> above = new LinkedHashMap<>();
                record.values().forEach((each, it) -> cut(each, it, below, above));
                if (!below.isEmpty() && chance.nextInt(8) == 0) {
                    // Something that the coach does not have.
                    leave(above, below);
                }
                put(key, lower, below);
                put(key, over, above);
                return;
            }
            if (value instanceof Value.Elements list && things(list)) {
                things(key, list, lower, over);
                return;
            }
            switch (chance.nextInt(6)) {
                case 0 -> over.put(key, value);
                case 1 -> {
                    over.put(key, value);
                    lower.put(key, other(value));
                }
                default -> lower.put(key, value);
            }
        }

        private static boolean own(String key) {
            return List.of("checked-on", "checked-by", "as-weighed", "age-code", "replace-by", "services", "model-said")
                    .contains(key);
        }

        private static void put(String key, Map<String, Value> into, Map<String, Value> values) {
            if (!values.isEmpty()) {
                into.put(key, new Value.Entries(values));
            }
        }

        private void leave(Map<String, Value> above, Map<String, Value> below) {
            String extra = below.keySet().contains("spare") || above.containsKey("spare") ? "" : "spare";
            if (!extra.isEmpty()) {
                below.put(extra, Value.text("yes"));
                above.put("leaves-out", Value.list(extra));
            }
        }

        private static boolean things(Value.Elements list) {
            return !list.values().isEmpty()
                    && list.values().stream()
                            .allMatch(it -> it instanceof Value.Entries record
                                    && record.values().containsKey("id"));
        }

        /** The coach's own come last, as they do where they are laid over a model. */
        private void things(String key, Value.Elements list, Map<String, Value> lower, Map<String, Value> over) {
            int shared = chance.nextInt(list.values().size() + 1);
            List<Value> below = new ArrayList<>();
            List<Value> above = new ArrayList<>();
            for (int i = 0; i < list.values().size(); i++) {
                Value.Entries thing = (Value.Entries) list.values().get(i);
                if (i >= shared) {
                    above.add(thing);
                    continue;
                }
                Map<String, Value> lowerThing =
                        new LinkedHashMap<>(Map.of("id", thing.values().get("id")));
                Map<String, Value> upperThing =
                        new LinkedHashMap<>(Map.of("id", thing.values().get("id")));
                thing.values().forEach((each, it) -> {
                    if (!each.equals("id")) {
                        cut(each, it, lowerThing, upperThing);
                    }
                });
                below.add(new Value.Entries(lowerThing));
                if (upperThing.size() > 1) {
                    above.add(new Value.Entries(upperThing));
                }
            }
            if (!below.isEmpty()) {
                lower.put(key, new Value.Elements(below));
            }
            if (!above.isEmpty()) {
                over.put(key, new Value.Elements(above));
            }
        }

        /** Something else of the same form. */
        private static Value other(Value value) {
            if (value instanceof Value.Elements list) {
                return new Value.Elements(list.values().subList(0, list.values().size() / 2));
            }
            return value instanceof Value.Scalar scalar && !scalar.bare()
                    ? Value.text(scalar.text() + " too")
                    : new Value.Scalar("7", true);
        }
    }
}
