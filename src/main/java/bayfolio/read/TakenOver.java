package bayfolio.read;

import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * What coaches take over of their model as it is: sisters have most in common, and so it is decoded once and is one value for
 * all of them.
 */
final class TakenOver {
    /** A node that is named in two places may be read as two types. */
    private record Asked(Node node, Type<?> type) {}

    /** A value, with what was found in it; empty where it is none. */
    private record Decoded(Optional<? extends Located<?>> value, List<Finding> findings) {}

    /** Decodes what nobody has asked for before, and tells what is wrong with it. */
    interface Decoding<V> {
        Optional<Located<V>> of(Consumer<Finding> findings);
    }

    private final Set<Node> nodes = new HashSet<>();
    private final Map<Asked, Decoded> decoded = new ConcurrentHashMap<>();

    TakenOver(Node model) {
        add(model);
    }

    private void add(Node node) {
        if (!nodes.add(node)) {
            return;
        }
        if (node instanceof MappingNode mapping) {
            for (NodeTuple entry : mapping.getValue()) {
                add(entry.getValueNode());
            }
        } else if (node instanceof SequenceNode sequence) {
            sequence.getValue().forEach(this::add);
        }
    }

    /** Whether a node is the model's as it stands there, nothing of it laid over by a coach. */
    boolean has(Node node) {
        return nodes.contains(node);
    }

    /** @param findings gets what is wrong with it, each time */
    @SuppressWarnings("unchecked") // a type always decodes to its own values
    <V> Optional<Located<V>> value(Node node, Type<V> type, Decoding<V> decoding, Consumer<Finding> findings) {
        Asked asked = new Asked(node, type);
        Decoded known = decoded.get(asked);
        if (known == null) {
            List<Finding> found = new ArrayList<>();
            Optional<Located<V>> value = decoding.of(found::add);
            Decoded made = new Decoded(value, List.copyOf(found));
            Decoded first = decoded.putIfAbsent(asked, made);
            known = first == null ? made : first;
        }
        known.findings.forEach(findings);
        return (Optional<Located<V>>) known.value;
    }
}
