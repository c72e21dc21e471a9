package bayfolio.model;

import bayfolio.fact.UnreadException;
import java.util.EnumSet;
import java.util.Set;

/**
 * What one coach has.
 *
 * @param had as far as its description could be read
 * @param unread of which that is not known, since what they are derived from could not be read
 */
public record Features(Set<Feature> had, Set<Feature> unread) {
    public Features {
        had = Set.copyOf(had);
        unread = Set.copyOf(unread);
    }

    public static Features of(Unit unit) {
        Set<Feature> had = EnumSet.noneOf(Feature.class);
        Set<Feature> unread = EnumSet.noneOf(Feature.class);
        for (Feature feature : Feature.values()) {
            try {
                if (feature.of(unit)) {
                    had.add(feature);
                }
            } catch (UnreadException nobodyKnows) {
                unread.add(feature);
            }
        }
        return new Features(had, unread);
    }

    public boolean contains(Feature feature) {
        if (unread.contains(feature)) {
            throw new UnreadException("it could not be read whether the coach has " + feature.word());
        }
        return had.contains(feature);
    }
}
