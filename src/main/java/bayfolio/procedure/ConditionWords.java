package bayfolio.procedure;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.model.Feature;
import bayfolio.source.Located;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What the single words of a condition stand for; how they are joined is the same for all.
 *
 * @param <L> what a word becomes
 */
public interface ConditionWords<L> {
    /** Those of procedures: features of a coach. */
    ConditionWords<Feature> FEATURES = new ConditionWords<>() {
        @Override
        public String called() {
            return "a feature";
        }

        @Override
        public String mend() {
            return "Write `every coach`, or features joined by `and`, `or`, `not`.";
        }

        @Override
        public Optional<Feature> read(Located<String> word, Consumer<Finding> findings) {
            Optional<Feature> feature = Feature.named(word.value());
            if (feature.isEmpty()) {
                findings.accept(
                        Finding.error("unknown-feature", word.at(), "`" + word.value() + "` is no feature of a coach")
                                .near(NearNames.to(word.value(), Feature.words()))
                                .mend(mend()));
            }
            return feature;
        }
    };

    /** As messages call one, with its article. */
    String called();

    /** How a condition is written, one sentence. */
    String mend();

    /** Nothing for a word that stands for nothing, which is told. */
    Optional<L> read(Located<String> word, Consumer<Finding> findings);
}
