package bayfolio.read;

import bayfolio.fact.Aside;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * What the coaches of one model share, as it is written; a coach is laid over it.
 *
 * @param node without what is each coach's own
 */
record Model(String id, SourceFile file, MappingNode node, TakenOver takenOver) {
    /** Where models lie. */
    static final String FOLDER = "units/models";

    /** Where the nodes of a coach are that was laid over it. */
    Function<Node, Place> places(SourceFile coach) {
        return it -> Yaml.place(Yaml.isOfModel(it) ? file : coach, it, 1);
    }

    /** The schema that coaches of this model name, for editors. */
    String schema() {
        Map<String, List<String>> ids = new TreeMap<>();
        Layers.kinds(node)
                .forEach((id, kind) ->
                        ids.computeIfAbsent(kind, it -> new ArrayList<>()).add(id));
        return SchemaWriter.writeDifference(id, ids);
    }

    /** Beside it, where descriptions of its coaches look for it. */
    void writeSchema(Folder folder) throws IOException {
        Path there = folder.root().resolve(file.folder()).resolve(SchemaWriter.fileName(Unit.SHAPE));
        if (!Files.exists(there) || !Files.readString(there).equals(schema())) {
            Files.writeString(there, schema());
        }
    }

    /** Empty where it could not be read, which is told. */
    static Optional<Model> of(SourceFile file, Consumer<Finding> findings) {
        String[] path = file.path().split("/");
        List<Finding> broken = new ArrayList<>();
        Optional<Node> node = Yaml.composeModel(file, broken::add);
        if (node.isEmpty()) {
            FleetReader.spoilt(file, Unit.SHAPE, broken).forEach(findings);
            return Optional.empty();
        }
        if (!(node.get() instanceof MappingNode mapping)) {
            findings.accept(
                    Finding.error("wrong-type", Yaml.place(file, node.get(), 1), "a model is a record with keys")
                            .mend("Write what its coaches share, with the keys of a coach."));
            return Optional.empty();
        }
        MappingNode shared = shared(mapping, Unit.SHAPE, new Told(file, findings));
        return Optional.of(new Model(path[path.length - 2], file, shared, new TakenOver(shared)));
    }

    private record Told(SourceFile file, Consumer<Finding> findings) {
        void own(Node key, String name) {
            Place at = Yaml.place(file, key, 1);
            findings.accept(
                    name.equals(Unit.MODEL.name())
                            ? Finding.error("own-fact-in-model", at, "a model has no model of its own")
                                    .mend("Write here what that model says, or take the line out.")
                            : Finding.error(
                                            "own-fact-in-model",
                                            at,
                                            "`" + name + "` is each coach's own, and no model can say it for several")
                                    .mend("Write it in the descriptions of the coaches."));
        }
    }

    private static MappingNode shared(MappingNode mapping, Shape<?> shape, Told told) {
        List<NodeTuple> entries = new ArrayList<>();
        for (NodeTuple entry : mapping.getValue()) {
            String name = name(entry);
            Optional<Key<?>> key = shape.key(name);
            if (key.filter(shape::ofEachCoach).isPresent()
                    || name.equals(Aside.LEAVES_OUT.name())
                    || name.equals(Aside.MODEL_SAID.name())) {
                told.own(entry.getKeyNode(), name);
            } else {
                Node value = key.map(it -> shared(entry.getValueNode(), it.type(), told))
                        .orElse(entry.getValueNode());
                entries.add(value == entry.getValueNode() ? entry : new NodeTuple(entry.getKeyNode(), value));
            }
        }
        return entries.equals(mapping.getValue()) ? mapping : with(mapping, entries);
    }

    private static Node shared(Node node, Type<?> type, Told told) {
        if (type instanceof Type.Nested<?> nested && node instanceof MappingNode mapping) {
            return shared(mapping, nested.shape(), told);
        }
        if (type instanceof Type.ListOf<?> list && !list.cues() && node instanceof SequenceNode sequence) {
            List<Node> each = sequence.getValue().stream()
                    .map(it -> shared(it, list.element(), told))
                    .toList();
            return each.equals(sequence.getValue()) ? node : with(sequence, each);
        }
        return node;
    }

    /** The same record with other entries. */
    static MappingNode with(MappingNode record, List<NodeTuple> entries) {
        MappingNode other = new MappingNode(
                record.getTag(), true, entries, record.getFlowStyle(), record.getStartMark(), record.getEndMark());
        other.setAnchor(record.getAnchor());
        return other;
    }

    /** The same list with other elements. */
    static SequenceNode with(SequenceNode list, List<Node> elements) {
        SequenceNode other = new SequenceNode(
                list.getTag(), true, elements, list.getFlowStyle(), list.getStartMark(), list.getEndMark());
        other.setAnchor(list.getAnchor());
        return other;
    }

    /** The name of a key; empty where it is none. */
    static String name(NodeTuple entry) {
        return entry.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
    }
}
