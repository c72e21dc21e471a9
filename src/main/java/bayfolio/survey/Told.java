package bayfolio.survey;

import bayfolio.source.Place;

/**
 * What is told of something that could not be taken.
 *
 * @param at in the take file or in the description
 * @param sentence without a full stop
 */
public record Told(Place at, String sentence) {
    @Override
    public String toString() {
        return at + ": " + sentence;
    }
}
