package bayfolio.rename;

import bayfolio.source.Place;

/**
 * A place that is against a new name, and that no rule tells.
 *
 * @param sentence why, without a full stop
 */
public record Against(Place at, String sentence) {
    @Override
    public String toString() {
        return at + ": " + sentence;
    }
}
