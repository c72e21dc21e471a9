package bayfolio.document;

import bayfolio.prose.Target;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where each target is: the only place that links get their addresses from. */
public final class AddressBook {
    private final Map<Target, NodeId> homes = new HashMap<>();

    /** @param nodes all of a handbook */
    AddressBook(List<Node> nodes) {
        for (Node node : nodes) {
            if (node instanceof Page page) {
                add(page.home(), page.id());
                for (Section section : page.sections()) {
                    section.home().ifPresent(home -> add(home, section.id()));
                }
            } else if (node instanceof Content.Film.Chapter chapter) {
                add(chapter.home(), chapter.id());
            }
        }
    }

    private void add(Target target, NodeId home) {
        NodeId before = homes.putIfAbsent(target, home);
        if (before != null) {
            throw new IllegalArgumentException(target + " has two homes: " + before + " and " + home);
        }
    }

    /** A phone number has no address here: it is dialed. */
    public Optional<NodeId> of(Target target) {
        return Optional.ofNullable(homes.get(target));
    }
}
