package bayfolio.model;

import bayfolio.finding.Finding;
import bayfolio.source.Located;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What the single words of a condition stand for; how they are joined is the same for all.
 *
 * @param <L> what a word becomes
 */
public interface ConditionWords<L> {
    /** As messages call one, with its article. */
    String called();

    /** How a condition is written, one sentence. */
    String mend();

    /** Nothing for a word that stands for nothing, which is told. */
    Optional<L> read(Located<String> word, Consumer<Finding> findings);
}
