package bayfolio.procedure;

import bayfolio.model.Coach;
import bayfolio.model.Feature;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;

/** Whether the coach has a feature: {@code has.generator}. */
record FeatureNames(Coach coach) implements Names {
    @Override
    public Value find(String word) {
        return Feature.named(word)
                .<Value>map(feature -> new Value.Flag(coach.features().contains(feature)))
                .orElse(new Value.Unknown());
    }

    @Override
    public Collection<String> known() {
        return Feature.words();
    }
}
