package bayfolio.read;

import bayfolio.fact.Aside;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * The single values of a YAML file as they are written, in their order: also those of a model that its coaches say otherwise,
 * and those that cannot be decoded. Elements of lists go by their numbers, so that a way stays while an id is changed.
 */
public final class Scalars {
    /** What a value is said for. */
    public enum Sort {
        /** It stands behind a key. */
        FACT,
        /** It names what the model says and the coach has not. */
        LEFT_OUT,
        /** It is itself a key: that of a digest of what the model said. */
        DIGEST_OF
    }

    /**
     * One of them.
     *
     * @param of the record that it stands in
     * @param key that it stands behind; the name of an {@link Aside} for what is no fact
     * @param type of the single value, where the key takes a list
     */
    public record Scalar(Sort sort, Steps way, Shape<?> of, String key, Type<?> type, String text, Place at) {}

    private final SourceFile file;
    private final int firstLine;
    private final List<Scalar> scalars = new ArrayList<>();

    private Scalars(SourceFile file, int firstLine) {
        this.file = file;
        this.firstLine = firstLine;
    }

    /**
     * @param findings gets why it cannot be read as a whole; nothing is found then
     */
    public static List<Scalar> of(SourceFile file, Shape<?> shape, Consumer<Finding> findings) {
        return of(file, file.text(), 1, shape, findings);
    }

    /**
     * The same of the YAML at the head of a file.
     *
     * @param firstLine of the file that it begins on
     */
    static List<Scalar> of(SourceFile file, String text, int firstLine, Shape<?> shape, Consumer<Finding> findings) {
        Scalars scalars = new Scalars(file, firstLine);
        Yaml.compose(file, text, firstLine, findings)
                .filter(MappingNode.class::isInstance)
                .ifPresent(node -> scalars.record((MappingNode) node, shape, Steps.NONE));
        return List.copyOf(scalars.scalars);
    }

    /** What the cues of a WebVTT file name. */
    public static List<Located<String>> ofCues(SourceFile file) {
        return Cues.of(file, told -> {}).stream()
                .flatMap(cue -> cue.id().stream())
                .toList();
    }

    private void record(MappingNode record, Shape<?> shape, Steps way) {
        for (NodeTuple entry : record.getValue()) {
            String name = Model.name(entry);
            Node value = entry.getValueNode();
            Optional<Key<?>> key = shape.key(name);
            if (name.equals(Aside.LEAVES_OUT.name()) && value instanceof SequenceNode list) {
                for (int i = 0; i < list.getValue().size(); i++) {
                    add(
                            Sort.LEFT_OUT,
                            way.key(name).nth(i + 1),
                            shape,
                            name,
                            Type.TEXT,
                            list.getValue().get(i));
                }
            } else if (name.equals(Aside.MODEL_SAID.name()) && value instanceof MappingNode digests) {
                digests.getValue()
                        .forEach(digest -> add(
                                Sort.DIGEST_OF,
                                way.key(name).key(Model.name(digest)),
                                shape,
                                name,
                                Type.TEXT,
                                digest.getKeyNode()));
            } else if (key.isPresent()) {
                value(shape, name, key.get().type(), value, way.key(name));
            }
        }
    }

    private void value(Shape<?> shape, String key, Type<?> type, Node node, Steps way) {
        if (type instanceof Type.Nested<?> nested) {
            if (node instanceof MappingNode record) {
                record(record, nested.shape(), way);
            }
        } else if (type instanceof Type.ListOf<?> list) {
            List<Node> elements = node instanceof SequenceNode sequence ? sequence.getValue() : List.of();
            for (int i = 0; i < elements.size(); i++) {
                value(shape, key, list.element(), elements.get(i), way.nth(i + 1));
            }
        } else {
            add(Sort.FACT, way, shape, key, type, node);
        }
    }

    private void add(Sort sort, Steps way, Shape<?> shape, String key, Type<?> type, Node node) {
        if (node instanceof ScalarNode scalar) {
            scalars.add(
                    new Scalar(sort, way, shape, key, type, scalar.getValue(), Yaml.place(file, scalar, firstLine)));
        }
    }
}
