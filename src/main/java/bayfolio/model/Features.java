package bayfolio.model;

import bayfolio.fact.UnreadException;
import java.util.Set;

/**
 * What one coach has.
 *
 * @param had as far as its description could be read
 * @param unread of which that is not known, since what they are derived from could not be read
 */
public record Features(Set<String> had, Set<String> unread) {
    public Features {
        had = Set.copyOf(had);
        unread = Set.copyOf(unread);
    }

    /**
     * @throws UnreadException when it is not known
     */
    public boolean contains(String feature) {
        if (unread.contains(feature)) {
            throw new UnreadException("it could not be read whether the coach has " + feature);
        }
        return had.contains(feature);
    }
}
