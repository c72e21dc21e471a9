package bayfolio.edition;

import java.util.List;
import java.util.Set;

/**
 * Two states side by side, and what is otherwise.
 *
 * @param before in the names that things have in the later one
 * @param rewritten procedures, guides and stages of the later one that are written otherwise, or are new: {@code
 *     procedure/dump-tanks}
 * @param changes in the order in which they are told
 */
public record Compared(State before, State after, Set<String> rewritten, List<Changed> changes) {
    public Compared {
        rewritten = Set.copyOf(rewritten);
        changes = List.copyOf(changes);
    }
}
