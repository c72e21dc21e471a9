package bayfolio.read;

import bayfolio.fact.Aside;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.finding.Article;
import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Difference;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.Steps;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * The description of a coach laid over that of its model, before anything is decoded.
 *
 * <p>Records are laid key by key, lists of things by their ids, at any depth; a value, or a list of plain values, stands instead
 * of the model's. Things keep the order of the model, those of the coach alone follow. Each node stays the one that was written,
 * so that it knows its place.
 */
final class Layers {
    private static final String ID = "id";

    private final Map<String, String> kinds;
    private final Function<Node, Place> places;
    private final Consumer<Finding> findings;
    private final List<Difference.Override> overrides = new ArrayList<>();
    private final List<Difference.Added> added = new ArrayList<>();
    private final List<Difference.LeftOut> leftOut = new ArrayList<>();
    private final List<Difference.Said> idle = new ArrayList<>();
    private final Set<Node> told = new HashSet<>();

    /**
     * A coach as it is.
     *
     * @param told things that were found to be wrong as wholes; whatever else could be said of them is not told
     */
    record Laid(MappingNode node, Difference difference, Set<Node> told) {}

    private Layers(Map<String, String> kinds, Function<Node, Place> places, Consumer<Finding> findings) {
        this.kinds = kinds;
        this.places = places;
        this.findings = findings;
    }

    static Laid over(Model model, MappingNode coach, Function<Node, Place> places, Consumer<Finding> findings) {
        Layers layers = new Layers(kinds(model.node()), places, findings);
        MappingNode node = layers.record(coach, model.node(), Unit.SHAPE, Steps.NONE);
        return new Laid(
                node,
                new Difference(model.id(), layers.overrides, layers.added, layers.leftOut, layers.idle),
                layers.told);
    }

    /** What kind of thing each id of a model is. */
    static Map<String, String> kinds(MappingNode model) {
        Map<String, String> kinds = new LinkedHashMap<>();
        for (NodeTuple entry : model.getValue()) {
            Unit.SHAPE
                    .key(Model.name(entry))
                    .flatMap(key -> things(key.type()))
                    .ifPresent(shape -> elements(entry.getValueNode())
                            .forEach(thing -> id(thing).ifPresent(id -> kinds.putIfAbsent(id, shape.name()))));
        }
        return kinds;
    }

    /** The shape of what is in a list, where that has ids. */
    static Optional<Shape<?>> things(Type<?> type) {
        return type instanceof Type.ListOf<?> list
                        && !list.cues()
                        && list.element() instanceof Type.Nested<?> nested
                        && nested.shape().key(ID).isPresent()
                ? Optional.of(nested.shape())
                : Optional.empty();
    }

    private static List<Node> elements(Node node) {
        return node instanceof SequenceNode sequence ? sequence.getValue() : List.of();
    }

    /** The id of a thing. */
    static Optional<String> id(Node node) {
        return node instanceof MappingNode mapping
                ? entry(mapping, ID)
                        .filter(entry -> entry.getValueNode() instanceof ScalarNode)
                        .map(entry -> ((ScalarNode) entry.getValueNode()).getValue())
                : Optional.empty();
    }

    private static Optional<NodeTuple> entry(MappingNode mapping, String name) {
        return mapping.getValue().stream()
                .filter(entry -> Model.name(entry).equals(name))
                .findFirst();
    }

    private MappingNode record(MappingNode over, MappingNode under, Shape<?> shape, Steps way) {
        Map<String, Node> out = leftOut(over, under, shape);
        Map<String, Located<String>> said = said(over);
        Set<String> overridden = new HashSet<>();
        List<NodeTuple> entries = new ArrayList<>();
        Set<NodeTuple> taken = new HashSet<>();
        for (NodeTuple below : under.getValue()) {
            String name = Model.name(below);
            Optional<NodeTuple> own = aside(name) ? Optional.empty() : entry(over, name);
            own.ifPresent(taken::add);
            if (aside(name)) {
                continue;
            } else if (out.containsKey(name)) {
                without(way.key(name), below.getValueNode(), out.get(name), own, said, way, overridden);
                own.ifPresent(entries::add);
            } else if (own.isPresent() && name.equals(ID)) {
                entries.add(own.get());
            } else if (own.isPresent()) {
                Node value = value(
                        shape.key(name),
                        own.get().getValueNode(),
                        below.getValueNode(),
                        new At(way.key(name), way, out, said, overridden));
                entries.add(new NodeTuple(own.get().getKeyNode(), value));
            } else {
                Node rest = shape.key(name)
                        .flatMap(key -> things(key.type()))
                        .map(things -> things(
                                Optional.empty(),
                                below.getValueNode(),
                                things,
                                new At(way.key(name), way, out, said, overridden)))
                        .orElse(below.getValueNode());
                entries.add(rest == below.getValueNode() ? below : new NodeTuple(below.getKeyNode(), rest));
            }
        }
        for (NodeTuple entry : over.getValue()) {
            String name = Model.name(entry);
            if (taken.contains(entry) || aside(name)) {
                continue;
            }
            entries.add(entry);
            shape.key(name)
                    .filter(key -> !shape.ofEachCoach(key))
                    .ifPresent(key -> alone(key, entry.getValueNode(), way.key(name)));
        }
        toConfirm(over, under).ifPresent(entries::add);
        said.forEach((name, digest) -> {
            if (!overridden.contains(name)) {
                idle.add(new Difference.Said(way.key(name), digest));
            }
        });
        return Model.with(over, entries);
    }

    private static boolean aside(String name) {
        return Aside.is(name);
    }

    /**
     * Where a value stands.
     *
     * @param record the way to the record that it stands in
     * @param out what that record leaves out
     * @param said the digests in that record
     * @param overridden of which of them something is overridden
     */
    private record At(
            Steps way,
            Steps record,
            Map<String, Node> out,
            Map<String, Located<String>> said,
            Set<String> overridden) {}

    private Node value(Optional<Key<?>> key, Node over, Node under, At at) {
        if (key.isEmpty()) {
            return over;
        }
        Type<?> type = key.get().type();
        if (type instanceof Type.Nested<?> nested
                && over instanceof MappingNode upper
                && under instanceof MappingNode lower) {
            return record(upper, lower, nested.shape(), at.way);
        }
        Optional<Shape<?>> things = things(type);
        if (things.isPresent() && over instanceof SequenceNode && under instanceof SequenceNode) {
            return things(Optional.of(over), under, things.get(), at);
        }
        overrides.add(new Difference.Override(
                at.way,
                at.record,
                located(over),
                located(under),
                digest(at.way.last().toString(), at.said, at.overridden)));
        return over;
    }

    private static Optional<Located<String>> digest(
            String name, Map<String, Located<String>> said, Set<String> overridden) {
        overridden.add(name);
        return Optional.ofNullable(said.get(name));
    }

    /** The things of the model, each with what the coach says of it, without those that it leaves out; then its own. */
    private Node things(Optional<Node> over, Node under, Shape<?> shape, At at) {
        Map<String, Node> own = new LinkedHashMap<>();
        List<Node> others = new ArrayList<>();
        over.map(Layers::elements).orElse(List.of()).forEach(each -> {
            Optional<String> id = id(each);
            if (id.isEmpty() || own.putIfAbsent(id.get(), each) != null) {
                others.add(each);
            }
        });
        List<Node> all = new ArrayList<>();
        for (Node below : elements(under)) {
            Optional<String> id = id(below);
            Optional<Node> mine = id.map(own::get);
            if (id.isPresent() && at.out.containsKey(id.get())) {
                Steps way = at.way.id(id.get());
                without(way, below, at.out.get(id.get()), mine, at.said, at.record, at.overridden);
                mine.ifPresent(all::add);
            } else if (mine.isPresent()
                    && mine.get() instanceof MappingNode upper
                    && below instanceof MappingNode lower) {
                all.add(record(upper, lower, shape, at.way.id(id.get())));
            } else {
                all.add(below);
            }
            id.ifPresent(own::remove);
        }
        own.forEach((id, each) -> {
            all.add(each);
            addition(id, (MappingNode) each, shape, under);
            added.add(new Difference.Added(at.way.id(id), located(each)));
        });
        all.addAll(others);
        return all.equals(elements(under)) ? under : Model.with((SequenceNode) over.orElse(under), all);
    }

    /** What the model has and the coach has not, or has another of. */
    private void without(
            Steps way,
            Node below,
            Node word,
            Optional<?> own,
            Map<String, Located<String>> said,
            Steps record,
            Set<String> overridden) {
        if (own.isPresent()) {
            Node mine = own.get() instanceof NodeTuple entry ? entry.getValueNode() : (Node) own.get();
            overrides.add(new Difference.Override(
                    way,
                    record,
                    located(mine),
                    located(below),
                    digest(way.last().toString(), said, overridden)));
        } else {
            leftOut.add(new Difference.LeftOut(way, located(word), located(below)));
        }
    }

    /** What the model says nothing of. */
    private void alone(Key<?> key, Node node, Steps way) {
        if (things(key.type()).isPresent()) {
            elements(node)
                    .forEach(each -> id(each).ifPresent(id -> {
                        addition(id, (MappingNode) each, things(key.type()).orElseThrow(), node);
                        added.add(new Difference.Added(way.id(id), located(each)));
                    }));
        } else {
            added.add(new Difference.Added(way, located(node)));
        }
    }

    /** A thing of the coach alone says all of it; what says a part only was meant for one of the model. */
    private void addition(String id, MappingNode thing, Shape<?> shape, Node under) {
        List<String> lacking = shape.keys().stream()
                .filter(Key::required)
                .map(Key::name)
                .filter(name -> entry(thing, name).isEmpty())
                .toList();
        if (lacking.isEmpty()) {
            return;
        }
        Place at = places.apply(entry(thing, ID).orElseThrow().getValueNode());
        String kind = kinds.get(id);
        told.add(thing);
        findings.accept(
                kind != null
                        ? Finding.error(
                                        "override-of-nothing",
                                        at,
                                        "`" + id + "` of the model is " + Article.a(kind) + ", not "
                                                + Article.a(shape.name()))
                                .mend("Write what differs of it in the list of its kind.")
                        : Finding.error(
                                        "override-of-nothing",
                                        at,
                                        "the model has no " + shape.name() + " `" + id + "` to lay this over")
                                .near(NearNames.to(
                                        id,
                                        elements(under).stream()
                                                .flatMap(each -> id(each).stream())
                                                .filter(other -> kinds.containsKey(other))
                                                .toList()))
                                .mend("What this coach alone has needs "
                                        + lacking.stream()
                                                .map(name -> "`" + name + "`")
                                                .collect(Collectors.joining(", "))
                                        + " as well."));
    }

    /** What a record leaves out, by name, as it is written there; what the model does not have is told. */
    private Map<String, Node> leftOut(MappingNode over, MappingNode under, Shape<?> shape) {
        Map<String, Node> out = new LinkedHashMap<>();
        Optional<Node> list = entry(over, Aside.LEAVES_OUT.name()).map(NodeTuple::getValueNode);
        if (list.isPresent() && !(list.get() instanceof SequenceNode)) {
            wrong(list.get(), "a list of names");
        }
        Set<String> known = new LinkedHashSet<>();
        for (NodeTuple below : under.getValue()) {
            known.add(Model.name(below));
            shape.key(Model.name(below))
                    .flatMap(key -> things(key.type()))
                    .ifPresent(it -> elements(below.getValueNode()).forEach(each -> id(each).ifPresent(known::add)));
        }
        for (Node each : list.map(Layers::elements).orElse(List.of())) {
            if (!(each instanceof ScalarNode scalar)) {
                wrong(each, "a name");
            } else if (!known.contains(scalar.getValue())) {
                findings.accept(Finding.error(
                                "left-out-is-not-there",
                                places.apply(each),
                                "the model has no `" + scalar.getValue() + "` here to leave out")
                        .near(NearNames.to(scalar.getValue(), known))
                        .mend("Name a key of this record, or the id of a thing in its lists."));
            } else {
                out.put(scalar.getValue(), each);
            }
        }
        return out;
    }

    private Map<String, Located<String>> said(MappingNode over) {
        Map<String, Located<String>> said = new LinkedHashMap<>();
        entry(over, Aside.MODEL_SAID.name()).map(NodeTuple::getValueNode).ifPresent(node -> {
            if (!(node instanceof MappingNode mapping)) {
                wrong(node, "a record of digests");
                return;
            }
            for (NodeTuple entry : mapping.getValue()) {
                if (entry.getValueNode() instanceof ScalarNode scalar) {
                    said.put(Model.name(entry), new Located<>(scalar.getValue(), places.apply(scalar)));
                } else {
                    wrong(entry.getValueNode(), "a digest");
                }
            }
        });
        return said;
    }

    /** What is still to be looked up, of both; not what the coach states itself and says nothing of. */
    private static Optional<NodeTuple> toConfirm(MappingNode over, MappingNode under) {
        Optional<NodeTuple> own = entry(over, Aside.TO_CONFIRM.name());
        Optional<NodeTuple> below = entry(under, Aside.TO_CONFIRM.name());
        if (below.isEmpty() || own.isPresent() && !(own.get().getValueNode() instanceof SequenceNode)) {
            return own;
        }
        List<Node> all = Stream.concat(
                        own.stream().flatMap(entry -> elements(entry.getValueNode()).stream()),
                        elements(below.get().getValueNode()).stream()
                                .filter(name -> !(name instanceof ScalarNode scalar
                                        && entry(over, scalar.getValue()).isPresent())))
                .toList();
        NodeTuple said = own.orElse(below.get());
        return said.getValueNode() instanceof SequenceNode sequence
                ? Optional.of(new NodeTuple(said.getKeyNode(), Model.with(sequence, all)))
                : below;
    }

    private void wrong(Node node, String wanted) {
        findings.accept(Finding.error(
                        "wrong-type", places.apply(node), "something else stands here where " + wanted + " is meant")
                .mend("Write " + wanted + "."));
    }

    private Located<String> located(Node node) {
        return new Located<>(line(node), places.apply(node));
    }

    /** A value in one line, the same however it is laid out in the file. */
    static String line(Node node) {
        if (node instanceof MappingNode mapping) {
            return mapping.getValue().stream()
                    .map(entry -> Model.name(entry) + ": " + line(entry.getValueNode()))
                    .sorted()
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue().stream().map(Layers::line).collect(Collectors.joining(", ", "[", "]"));
        }
        return node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }
}
