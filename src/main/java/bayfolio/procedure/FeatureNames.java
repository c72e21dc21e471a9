package bayfolio.procedure;

import bayfolio.model.Coach;
import bayfolio.model.FeatureWords;
import bayfolio.template.Names;
import bayfolio.template.Value;
import java.util.Collection;

/** Whether the coach has a feature: {@code has.generator}. */
record FeatureNames(Coach coach, boolean staff) implements Names {
    @Override
    public Value find(String word) {
        FeatureWords words = coach.unit().equipment().words();
        return words.known().contains(word) || !words.whole()
                ? new Value.Flag((staff ? coach.features() : coach.unit().featuresForRenters()).contains(word))
                : new Value.Unknown();
    }

    @Override
    public Collection<String> known() {
        return coach.unit().equipment().features();
    }
}
