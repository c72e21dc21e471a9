package bayfolio.procedure;

import bayfolio.prose.Block;
import bayfolio.prose.Inline;
import bayfolio.source.Place;
import java.util.List;
import java.util.stream.Stream;

/**
 * One action.
 *
 * @param id stable within its procedure
 * @param named whether the writer gives it; otherwise it is made of the first words
 * @param hazards stand before it and guard it
 */
public record Step(String id, boolean named, List<Hazard> hazards, List<Block> text, Place at) {
    public Step {
        hazards = List.copyOf(hazards);
        text = List.copyOf(text);
    }

    /** Its points that say what one may see, and what to do then. */
    public Stream<List<Inline>> answers() {
        return text.stream()
                .filter(Block.Bullets.class::isInstance)
                .flatMap(block -> ((Block.Bullets) block).items().stream())
                .filter(Step::isAnswer);
    }

    /** Such as {@code **It is off:** turn it on.} */
    public static boolean isAnswer(List<Inline> point) {
        return !point.isEmpty() && point.get(0).label().isPresent();
    }
}
