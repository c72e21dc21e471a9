package bayfolio.read;

import bayfolio.DemoFleet;
import bayfolio.Folders;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.source.SourceFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;

/**
 * A fleet made of demo coaches: each is a model, with sisters that have a name, a number, dates and a weighing of their own and
 * differ in two facts. It is written twice, as models and differences and with every coach in full.
 */
public final class SisterFleet {
    private final List<String> models;
    private final int each;

    /** @param each sisters of a model */
    public SisterFleet(List<String> models, int each) {
        this.models = models;
        this.each = each;
    }

    /** Ids of all of its coaches. */
    public List<String> coaches() {
        return models.stream()
                .flatMap(model -> java.util.stream.IntStream.range(1, each + 1).mapToObj(i -> model + "-" + i))
                .toList();
    }

    public void write(Path layered, Path full) throws Exception {
        for (Path root : List.of(layered, full)) {
            for (Map.Entry<String, byte[]> file :
                    DemoFleet.files(Path.of("units")).entrySet()) {
                String top = file.getKey().split("/")[0];
                if (top.equals("shared") || top.equals("fleet.yaml")) {
                    DemoFleet.write(root.resolve("units").resolve(file.getKey()), file.getValue());
                }
            }
        }
        for (String model : models) {
            model(model, layered, full);
        }
    }

    private void model(String model, Path layered, Path full) throws Exception {
        SourceFile whole = new SourceFile("", Files.readString(Path.of("units", model, "unit.yaml")));
        Value.Entries said = (Value.Entries)
                Value.of(Yaml.compose(whole, whole.text(), 1, SisterFleet::fail).orElseThrow());
        Map<String, Value> shared = new LinkedHashMap<>();
        Map<String, Value> own = new LinkedHashMap<>();
        parted(said, Unit.SHAPE, shared, own);
        Path folder = Files.createDirectories(layered.resolve("units/models/" + model + "-kind"));
        Files.writeString(folder.resolve("model.yaml"), Yamls.block(new Value.Entries(shared)));
        media(model, folder);
        for (int i = 1; i <= each; i++) {
            String id = model + "-" + i;
            Path coach = Files.createDirectories(layered.resolve("units/" + id));
            Files.writeString(coach.resolve("unit.yaml"), sister(id, model, own, shared, new Random(i)));
            confirm(layered, id);
            Path written = Files.createDirectories(full.resolve("units/" + id));
            Files.writeString(written.resolve("unit.yaml"), inFull(layered, id));
            media(model, written);
        }
    }

    private static void media(String coach, Path to) throws Exception {
        for (String kind : List.of("photos", "films", "procedures")) {
            Path from = Path.of("units", coach, kind);
            if (Files.isDirectory(from)) {
                for (Map.Entry<String, byte[]> file : DemoFleet.files(from).entrySet()) {
                    DemoFleet.write(to.resolve(kind).resolve(file.getKey()), file.getValue());
                }
            }
        }
    }

    /** What each coach has of its own, and what its model can say for all. */
    private static void parted(Value.Entries said, Shape<?> shape, Map<String, Value> shared, Map<String, Value> own) {
        said.values().forEach((name, value) -> {
            Optional<Key<?>> key = shape.key(name);
            if (key.filter(shape::ofEachCoach).isPresent() || name.equals("services")) {
                own.put(name, value);
            } else if (key.isPresent()
                    && key.get().type() instanceof Type.Nested<?> nested
                    && value instanceof Value.Entries record) {
                Map<String, Value> below = new LinkedHashMap<>();
                Map<String, Value> above = new LinkedHashMap<>();
                parted(record, nested.shape(), below, above);
                shared.put(name, new Value.Entries(below));
                if (!above.isEmpty()) {
                    own.put(name, new Value.Entries(above));
                }
            } else if (key.isPresent()
                    && Layers.things(key.get().type()).isPresent()
                    && value instanceof Value.Elements list) {
                things(name, list, Layers.things(key.get().type()).get(), shared, own);
            } else {
                shared.put(name, value);
            }
        });
    }

    private static void things(
            String name, Value.Elements list, Shape<?> shape, Map<String, Value> shared, Map<String, Value> own) {
        List<Value> all = new ArrayList<>();
        List<Value> theirs = new ArrayList<>();
        for (Value each : list.values()) {
            Map<String, Value> below = new LinkedHashMap<>();
            Map<String, Value> above = new LinkedHashMap<>();
            parted((Value.Entries) each, shape, below, above);
            all.add(new Value.Entries(below));
            if (!above.isEmpty()) {
                Map<String, Value> thing = new LinkedHashMap<>(Map.of("id", below.get("id")));
                thing.putAll(above);
                theirs.add(new Value.Entries(thing));
            }
        }
        shared.put(name, new Value.Elements(all));
        if (!theirs.isEmpty()) {
            own.put(name, new Value.Elements(theirs));
        }
    }

    private static String sister(
            String id, String model, Map<String, Value> own, Map<String, Value> shared, Random chance) {
        Map<String, Value> said = new LinkedHashMap<>();
        said.put("id", Value.text(id));
        said.put("model", Value.text(model + "-kind"));
        said.putAll(own);
        said.put("id", Value.text(id));
        said.put("name", Value.text("Sister " + id));
        said.put("number", Value.text("S" + id.hashCode() % 1000));
        Value.Elements items = (Value.Elements) Objects.requireNonNull(shared.get("items"));
        Value.Entries item =
                (Value.Entries) items.values().get(chance.nextInt(items.values().size()));
        said.put(
                "items",
                new Value.Elements(List.of(new Value.Entries(Map.of(
                        "id",
                        Objects.requireNonNull(item.values().get("id")),
                        "name",
                        Value.text(((Value.Scalar) Objects.requireNonNull(
                                                item.values().get("name")))
                                        .text() + " (new)"))))));
        return Yamls.block(new Value.Entries(said));
    }

    private static void confirm(Path root, String id) throws Exception {
        Path file = root.resolve("units/" + id + "/unit.yaml");
        SourceFile text = new SourceFile("units/" + id + "/unit.yaml", Files.readString(file));
        Shown shown = Shown.of(Folders.at(root), text, SisterFleet::fail).orElseThrow();
        Files.writeString(file, Confirmation.of(text, shown, List.of()).text());
    }

    private static String inFull(Path root, String id) {
        return Shown.of(Folders.at(root), id, SisterFleet::fail).orElseThrow().lines().stream()
                .map(Shown.Line::text)
                .filter(line -> !line.startsWith("model:"))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    private static void fail(Finding finding) {
        throw new AssertionError(finding);
    }
}
