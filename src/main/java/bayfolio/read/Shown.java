package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Difference;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A coach as it is, its own file laid over that of its model: YAML again, each line with where it comes from. */
public final class Shown {
    private static final String INDENT = "  ";

    private final Node node;
    private final Layered layered;

    /**
     * A line of YAML.
     *
     * @param at where what it says is written; empty where it only opens a record or a list
     */
    public record Line(String text, Optional<Place> at) {}

    private Shown(Node node, Layered layered) {
        this.node = node;
        this.layered = layered;
    }

    /** Empty where it could not be read, which is told. */
    public static Optional<Shown> of(Folder folder, String coach, Consumer<Finding> findings) {
        return folder.text("units/" + coach + "/unit.yaml", findings).flatMap(file -> of(folder, file, findings));
    }

    static Optional<Shown> of(Folder folder, SourceFile file, Consumer<Finding> findings) {
        return Layered.of(file, Layered.models(folder, file, findings), findings)
                .flatMap(layered -> layered.node().map(node -> new Shown(node, layered)));
    }

    /** How it differs from its model; empty where it has none. */
    public Optional<Difference> difference() {
        return layered.difference();
    }

    Optional<Model> model() {
        return layered.model();
    }

    /** All of it. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        record((MappingNode) node, "", lines);
        return lines;
    }

    /** What it says of a thing, or under one of its keys; nothing where there is none of that name. */
    public List<Line> lines(String name) {
        List<Line> lines = new ArrayList<>();
        for (NodeTuple entry : ((MappingNode) node).getValue()) {
            if (Model.name(entry).equals(name)) {
                entry(entry, "", lines);
            } else if (entry.getValueNode() instanceof SequenceNode list) {
                list.getValue().stream()
                        .filter(each -> Layers.id(each).filter(name::equals).isPresent())
                        .forEach(each -> {
                            lines.add(new Line(Model.name(entry) + ":", Optional.empty()));
                            element(each, INDENT, lines);
                        });
            }
        }
        return lines;
    }

    /** What may be asked for. */
    public List<String> near(String name) {
        Set<String> names = new LinkedHashSet<>();
        for (NodeTuple entry : ((MappingNode) node).getValue()) {
            names.add(Model.name(entry));
            if (entry.getValueNode() instanceof SequenceNode list) {
                list.getValue().forEach(each -> Layers.id(each).ifPresent(names::add));
            }
        }
        return NearNames.to(name, names);
    }

    private void record(MappingNode record, String indent, List<Line> lines) {
        record.getValue().forEach(entry -> entry(entry, indent, lines));
    }

    private void entry(NodeTuple entry, String indent, List<Line> lines) {
        String key = indent + Model.name(entry) + ":";
        Node value = entry.getValueNode();
        if (value instanceof MappingNode record && !record.getValue().isEmpty()) {
            lines.add(new Line(key, Optional.empty()));
            record(record, indent + INDENT, lines);
        } else if (value instanceof SequenceNode list && !plain(list)) {
            lines.add(new Line(key, Optional.empty()));
            list.getValue().forEach(each -> element(each, indent + INDENT, lines));
        } else {
            lines.add(new Line(
                    key + " " + inOneLine(value), Optional.of(layered.places().apply(value))));
        }
    }

    private void element(Node element, String indent, List<Line> lines) {
        if (!(element instanceof MappingNode record) || record.getValue().isEmpty()) {
            lines.add(new Line(
                    indent + "- " + inOneLine(element),
                    Optional.of(layered.places().apply(element))));
            return;
        }
        int first = lines.size();
        record(record, indent + INDENT, lines);
        Line line = lines.get(first);
        lines.set(first, new Line(indent + "- " + line.text().substring(indent.length() + INDENT.length()), line.at()));
    }

    private static boolean plain(SequenceNode list) {
        return list.getValue().stream().allMatch(ScalarNode.class::isInstance);
    }

    private static String inOneLine(Node value) {
        if (value instanceof SequenceNode list) {
            return list.getValue().stream()
                    .map(each -> Spelling.of((Value.Scalar) Value.of(each), true))
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        return value instanceof ScalarNode ? Spelling.of((Value.Scalar) Value.of(value), false) : "{}";
    }
}
