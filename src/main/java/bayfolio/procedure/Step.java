package bayfolio.procedure;

import bayfolio.prose.Block;
import bayfolio.source.Place;
import java.util.List;

/**
 * One action.
 *
 * @param id stable within its procedure, made of the words it is written with
 * @param hazards stand before it and guard it
 */
public record Step(String id, List<Hazard> hazards, List<Block> text, Place at) {
    public Step {
        hazards = List.copyOf(hazards);
        text = List.copyOf(text);
    }
}
