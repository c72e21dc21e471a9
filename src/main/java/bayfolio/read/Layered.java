package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Difference;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A coach as nodes, laid over its model where it names one.
 *
 * @param named the model that it names
 * @param node empty where that model is not there or could not be read
 * @param model that which it was laid over
 * @param told see {@link Layers.Laid}
 */
record Layered(
        Optional<String> named,
        Optional<Node> node,
        Function<Node, Place> places,
        Optional<Model> model,
        Optional<Difference> difference,
        Set<Node> told) {
    private static final Pattern MODEL = Pattern.compile("(?m)^[\"']?model[\"']?[ \\t]*:[ \\t]+[\"']?([a-z0-9-]+)");

    /** The model that a file names, seen without reading it, as far as it is written as people do. */
    static Optional<String> model(SourceFile file) {
        Matcher line = MODEL.matcher(file.text());
        return line.find() ? Optional.of(line.group(1)) : Optional.empty();
    }

    /** All models by their names, of which only that of one coach is read. */
    static Map<String, Optional<Model>> models(Folder folder, SourceFile coach, Consumer<Finding> findings) {
        Map<String, Optional<Model>> models = new TreeMap<>();
        folder.models().forEach(name -> models.put(name, Optional.empty()));
        model(coach)
                .filter(models::containsKey)
                .ifPresent(name -> models.put(name, folder.read(FleetReader.MODEL, name, findings)));
        return models;
    }

    /**
     * Empty where the file is no YAML, which is told.
     *
     * @param models those that there are, by their names; empty ones could not be read, which was told
     */
    static Optional<Layered> of(SourceFile file, Map<String, Optional<Model>> models, Consumer<Finding> findings) {
        List<Finding> broken = new ArrayList<>();
        Optional<Node> node = Yaml.compose(file, file.text(), 1, broken::add);
        if (node.isEmpty()) {
            FleetReader.spoilt(file, Unit.SHAPE, broken).forEach(findings);
        }
        return node.map(it -> of(file, it, models, findings));
    }

    private static Layered of(
            SourceFile file, Node node, Map<String, Optional<Model>> models, Consumer<Finding> findings) {
        Function<Node, Place> own = it -> Yaml.place(file, it, 1);
        Optional<ScalarNode> name = named(node);
        Optional<String> named = name.map(ScalarNode::getValue);
        if (name.isEmpty()) {
            return new Layered(named, Optional.of(node), own, Optional.empty(), Optional.empty(), Set.of());
        }
        Optional<Model> model = models.get(name.get().getValue());
        if (model == null) {
            findings.accept(Finding.error(
                            "unknown-model",
                            own.apply(name.get()),
                            "there is no model `" + name.get().getValue() + "`")
                    .near(NearNames.to(name.get().getValue(), models.keySet()))
                    .mend("Models are folders in `" + Model.FOLDER + "`, each with a file `model.yaml`."));
        }
        if (model == null || model.isEmpty()) {
            return new Layered(named, Optional.empty(), own, Optional.empty(), Optional.empty(), Set.of());
        }
        Function<Node, Place> places = model.get().places(file);
        Layers.Laid laid = Layers.over(model.get(), (MappingNode) node, places, findings);
        return new Layered(named, Optional.of(laid.node()), places, model, Optional.of(laid.difference()), laid.told());
    }

    /** The name of its model, as far as it is one. */
    private static Optional<ScalarNode> named(Node node) {
        return node instanceof MappingNode mapping
                ? mapping.getValue().stream()
                        .filter(entry -> Model.name(entry).equals(Unit.MODEL.name()))
                        .map(NodeTuple::getValueNode)
                        .filter(ScalarNode.class::isInstance)
                        .map(ScalarNode.class::cast)
                        .findFirst()
                : Optional.empty();
    }
}
