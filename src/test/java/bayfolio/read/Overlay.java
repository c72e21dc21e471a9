package bayfolio.read;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Difference;
import bayfolio.model.Equipment;
import bayfolio.model.EquipmentKinds;
import bayfolio.model.Fleet;
import bayfolio.model.FleetFacts;
import bayfolio.model.Roles;
import bayfolio.model.Shared;
import bayfolio.model.Situation;
import bayfolio.model.Sources;
import bayfolio.model.StatesOf;
import bayfolio.model.Unit;
import bayfolio.model.Whose;
import bayfolio.model.Words;
import bayfolio.procedure.Acts;
import bayfolio.procedure.Library;
import bayfolio.procedure.Script;
import bayfolio.procedure.Translations;
import bayfolio.source.Located;
import bayfolio.source.Place;
import bayfolio.source.SourceFile;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Snippets of YAML laid over whole descriptions, key by key: a record within a record is laid over
 * the record of the same key, a list or a single value replaces what stands there. Each value keeps
 * the place at which it is written, in the snippet or below it.
 */
public final class Overlay {
    private static final Set<Key<?>> OF_A_LIBRARY = Set.of(
            Equipment.SET_UP_BY,
            Equipment.UNDONE_BY,
            Equipment.USED_BY,
            Equipment.TROUBLE,
            Equipment.STAFF_WORK,
            Equipment.SET_UP_AFTER,
            Equipment.UNDONE_AFTER,
            Equipment.BURNS);

    private final Folder folder;
    private final Roles roles;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<Node, Place> places = new IdentityHashMap<>();
    private final List<Unit> units = new ArrayList<>();
    private final Map<String, Difference> differences = new TreeMap<>();
    private final List<Script> scripts = new ArrayList<>();
    private final List<Acts> acts = new ArrayList<>();
    private FleetReader.Equipped equipped;
    private Optional<FleetFacts> fleet = Optional.empty();

    /**
     * @param folder where photos are looked for, and roles and words before the built-in ones
     */
    public Overlay(Folder folder) {
        this.folder = folder.now();
        this.roles =
                this.folder.read(FleetReader.ROLES, "roles.yaml", findings::add).orElseThrow();
        this.equipped = equipped(FleetReader.equipment(this.folder, findings::add).acts().stream()
                .map(Overlay::without)
                .toList());
    }

    private FleetReader.Equipped equipped(List<Acts> acts) {
        return new FleetReader.Equipped(
                new EquipmentKinds(acts.stream().map(Acts::equipment).toList(), true, findings::add), acts);
    }

    /** A kind of the library without its procedures and guides, none of which a tiny fleet has. */
    private static Acts without(Acts acts) {
        Place at = acts.equipment().facts().at();
        Facts.Draft states = Facts.draft(StatesOf.SHAPE, at);
        Situation.WITH_STATE.forEach(it -> states.put(StatesOf.key(it), new Located<>("any", at)));
        Facts facts = acts.equipment()
                .facts()
                .changed((key, value) -> OF_A_LIBRARY.contains(key) ? null : value)
                .with(Equipment.NEEDS_NO_SETTING_UP, new Located<>(true, at))
                .with(Equipment.NEEDS_NO_GUIDE, new Located<>(true, at))
                .with(Equipment.STATES, new Located<>(new StatesOf(states.done()), at));
        return new Acts(new Equipment(facts), acts.script(), acts.whole());
    }

    /** One more kind of equipment, before any coach is laid. */
    public void equipment(SourceFile file) {
        List<Acts> all = new ArrayList<>(equipped.acts());
        FleetReader.acts(file, findings::add).ifPresent(it -> {
            all.add(it);
            acts.add(it);
        });
        equipped = equipped(all);
    }

    public void fleet(SourceFile whole, Optional<SourceFile> snippet) {
        fleet = decoder().record(laid(whole, snippet), FleetFacts.SHAPE);
    }

    /** A coach in the folder that the path of the description names. */
    public void coach(SourceFile whole, Optional<SourceFile> snippet) {
        read(decoder().record(laid(whole, snippet), Unit.SHAPE));
    }

    /** A coach that holds only what differs from a model. */
    public void coach(SourceFile whole, Optional<SourceFile> snippet, SourceFile model) {
        MappingNode own = (MappingNode) laid(whole, snippet);
        Model.of(model, findings::add).ifPresent(it -> {
            remember(it.node(), model);
            Layers.Laid laid = Layers.over(it, own, this::place, findings::add);
            remember(laid.node(), whole);
            Optional<Unit> unit = decoder().over(it, laid.told()).record(laid.node(), Unit.SHAPE);
            unit.ifPresent(read -> differences.put(read.id(), laid.difference()));
            read(unit);
        });
    }

    private void read(Optional<Unit> unit) {
        unit.map(it -> it.equipped(equipped.kinds())).ifPresent(units::add);
        unit.ifPresent(it -> Photos.check(folder, it, findings::add));
        unit.ifPresent(it -> Films.check(folder, it, findings::add));
    }

    public void procedure(SourceFile file) {
        String[] path = file.path().split("/");
        Whose whose = path[1].equals("shared") ? Whose.ALL : new Whose.OfACoach(path[1]);
        FleetReader.script(file, whose, equipped.kinds().words(), findings::add).ifPresent(scripts::add);
    }

    /** The fleet as {@link FleetReader} would read it from a folder. */
    public FleetReader.Reading read() {
        Optional<Words> words = folder.read(FleetReader.WORDS, "words.yaml", findings::add);
        Optional<Sources> sources = folder.read(FleetReader.SOURCES, "sources.yaml", findings::add);
        return new FleetReader.Reading(
                new Fleet(
                                fleet.orElseThrow(),
                                units,
                                new Shared(
                                        roles.facts().all(Roles.ROLES),
                                        words.orElseThrow().facts().all(Words.WORDS),
                                        sources.orElseThrow().facts().all(Sources.SOURCES),
                                        FleetReader.countries(folder, findings::add),
                                        equipped.kinds()))
                        .layered(differences),
                new Library(scripts, acts, List.of(), Translations.NONE),
                List.of(),
                findings);
    }

    private Decoder decoder() {
        return new Decoder(
                this::place,
                new Lists(Optional.of(FleetReader.byId(roles)), Optional.of(equipped.kinds())),
                Optional.of(folder),
                findings::add);
    }

    private Place place(Node node) {
        return Optional.ofNullable(places.get(node)).orElseThrow();
    }

    private Node laid(SourceFile whole, Optional<SourceFile> snippet) {
        Node under = compose(whole).orElseThrow();
        return snippet.flatMap(this::compose).map(over -> laid(over, under)).orElse(under);
    }

    private Optional<Node> compose(SourceFile file) {
        Optional<Node> node = Yaml.compose(file, file.text(), 1, findings::add);
        node.ifPresent(it -> remember(it, file));
        return node;
    }

    private void remember(Node node, SourceFile file) {
        if (places.putIfAbsent(node, Yaml.place(file, node, 1)) != null) {
            return; // an alias, met before
        }
        if (node instanceof MappingNode mapping) {
            mapping.getValue().stream()
                    .flatMap(entry -> Stream.of(entry.getKeyNode(), entry.getValueNode()))
                    .forEach(each -> remember(each, file));
        } else if (node instanceof SequenceNode sequence) {
            sequence.getValue().forEach(each -> remember(each, file));
        }
    }

    private Node laid(Node over, Node under) {
        if (!(over instanceof MappingNode upper && under instanceof MappingNode lower)) {
            return over;
        }
        List<NodeTuple> entries = new ArrayList<>();
        for (NodeTuple entry : upper.getValue()) {
            entries.add(value(lower, name(entry))
                    .map(below -> new NodeTuple(entry.getKeyNode(), laid(entry.getValueNode(), below)))
                    .orElse(entry));
        }
        Set<String> said = upper.getValue().stream().map(Overlay::name).collect(Collectors.toSet());
        lower.getValue().stream().filter(entry -> !said.contains(name(entry))).forEach(entries::add);
        MappingNode both = new MappingNode(
                over.getTag(), true, entries, upper.getFlowStyle(), over.getStartMark(), over.getEndMark());
        both.setAnchor(over.getAnchor());
        places.put(both, place(over));
        return both;
    }

    private static Optional<Node> value(MappingNode mapping, String name) {
        return mapping.getValue().stream()
                .filter(entry -> name(entry).equals(name))
                .map(NodeTuple::getValueNode)
                .findFirst();
    }

    private static String name(NodeTuple entry) {
        return entry.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
    }
}
