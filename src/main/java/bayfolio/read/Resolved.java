package bayfolio.read;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Difference;
import bayfolio.model.Role;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * A coach as its own file and that of its model describe it.
 *
 * @param unit empty where nobody knows what it is
 * @param difference from its model; empty for one that has none
 */
record Resolved(Optional<Unit> unit, Optional<Difference> difference) {
    private static final Pattern MODEL = Pattern.compile("(?m)^[\"']?model[\"']?[ \\t]*:[ \\t]+[\"']?([a-z0-9-]+)");

    /** The model that a file names, seen without reading all of it. */
    static Optional<String> model(SourceFile file) {
        Matcher line = MODEL.matcher(file.text());
        return line.find() ? Optional.of(line.group(1)) : Optional.empty();
    }

    /** A coach for itself, over the model that it names, which is read for it. */
    static Optional<Resolved> of(
            Folder folder, SourceFile file, Optional<Map<String, Role>> roles, Consumer<Finding> findings) {
        Map<String, Optional<Model>> models = new TreeMap<>();
        folder.folders(Model.FOLDER).forEach(name -> models.put(name, Optional.empty()));
        model(file)
                .filter(models::containsKey)
                .ifPresent(name -> models.put(
                        name,
                        folder.text(Model.FOLDER + "/" + name + "/model.yaml", findings)
                                .flatMap(it -> Model.of(it, findings))));
        return of(folder, file, roles, models, findings);
    }

    /** @param models those that there are, by their names; empty ones could not be read */
    static Optional<Resolved> of(
            Folder folder,
            SourceFile file,
            Optional<Map<String, Role>> roles,
            Map<String, Optional<Model>> models,
            Consumer<Finding> findings) {
        List<Finding> broken = new ArrayList<>();
        Optional<Node> node = Yaml.compose(file, file.text(), 1, broken::add);
        if (node.isEmpty()) {
            FleetReader.spoilt(file, Unit.SHAPE, broken).forEach(findings);
        }
        return node.flatMap(it -> of(folder, file, it, roles, models, findings));
    }

    private static Optional<Resolved> of(
            Folder folder,
            SourceFile file,
            Node node,
            Optional<Map<String, Role>> roles,
            Map<String, Optional<Model>> models,
            Consumer<Finding> findings) {
        Function<Node, Place> own = it -> Yaml.place(file, it, 1);
        Optional<ScalarNode> name = named(node);
        if (name.isEmpty()) {
            return new Decoder(own, roles, Optional.of(folder), findings)
                    .record(node, Unit.SHAPE)
                    .map(unit -> new Resolved(Optional.of(unit), Optional.empty()));
        }
        Optional<Model> model = models.get(name.get().getValue());
        if (model == null) {
            findings.accept(Finding.error(
                            "unknown-model",
                            own.apply(name.get()),
                            "there is no model `" + name.get().getValue() + "`")
                    .near(NearNames.to(name.get().getValue(), models.keySet()))
                    .mend("Models are folders in `" + Model.FOLDER + "`, each with a file `model.yaml`."));
            return Optional.empty();
        }
        // What is wrong with it was told.
        return model.map(it -> laid(folder, file, (MappingNode) node, it, roles, findings));
    }

    private static Resolved laid(
            Folder folder,
            SourceFile file,
            MappingNode coach,
            Model model,
            Optional<Map<String, Role>> roles,
            Consumer<Finding> findings) {
        Function<Node, Place> places = model.places(file);
        Layers.Laid laid = Layers.over(model, coach, places, findings);
        return new Resolved(
                new Decoder(places, roles, Optional.of(folder), findings)
                        .over(model, laid.told())
                        .record(laid.node(), Unit.SHAPE),
                Optional.of(laid.difference()));
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
