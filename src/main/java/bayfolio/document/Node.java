package bayfolio.document;

import bayfolio.prose.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A part of a handbook, large or small. */
public interface Node {
    Stamp stamp();

    /** The parts of it, in reading order; many have none. */
    default List<? extends Node> parts() {
        return List.of();
    }

    /** Takes all links in its own words, those of its parts not among them. */
    default void links(Consumer<Inline.Link> each) {}

    /** All links in its own words, in reading order. */
    default Stream<Inline.Link> links() {
        List<Inline.Link> links = new ArrayList<>();
        links(links::add);
        return links.stream();
    }

    default NodeId id() {
        return stamp().id();
    }

    /** Itself and all that is in it, in reading order. */
    default Stream<Node> walk() {
        List<Node> all = new ArrayList<>();
        collect(all);
        return all.stream();
    }

    private void collect(List<Node> all) {
        all.add(this);
        for (Node part : parts()) {
            part.collect(all);
        }
    }

    /** Those of several that a reader sees, each without what he does not see in it; the same list where he sees all. */
    static <N extends Node> List<N> seen(List<N> all, Audience reader, Pruning<N> pruning) {
        List<N> seen = new ArrayList<>();
        boolean whole = true;
        for (N each : all) {
            Optional<N> left =
                    each.stamp().audience().includes(reader) ? pruning.prune(each, reader) : Optional.empty();
            left.ifPresent(seen::add);
            whole &= left.isPresent() && isSame(left.get(), each);
        }
        return whole ? all : seen;
    }

    /** Whether it is the very one: most of what renters see is what staff see, and need not be read twice. */
    @SuppressWarnings("ReferenceEquality") // that two read alike is not asked
    static boolean isSame(Object one, Object other) {
        return one == other;
    }

    /** A node without what a reader does not see; nothing where all that was in it is gone. */
    interface Pruning<N> {
        Optional<N> prune(N node, Audience reader);
    }
}
