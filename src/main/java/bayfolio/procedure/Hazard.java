package bayfolio.procedure;

import bayfolio.prose.Block;
import bayfolio.prose.Signal;
import bayfolio.source.Place;
import java.util.List;

/** A warning before a step: what the hazard is, what it does, how to avoid it. */
public record Hazard(Signal signal, List<Block> text, Place at) {
    public Hazard {
        text = List.copyOf(text);
    }
}
