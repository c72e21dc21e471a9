package bayfolio.rename;

import bayfolio.fact.Shape;
import bayfolio.model.Coach;
import java.util.Optional;

/**
 * A YAML file that states facts, or one with such a head.
 *
 * @param coach on which its references name something; empty where they name nothing
 * @param head whether it is the head of a text
 */
record Description(String path, Shape<?> shape, Optional<Coach> coach, boolean head) {}
