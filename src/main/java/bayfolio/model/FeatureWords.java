package bayfolio.model;

import bayfolio.finding.Finding;
import bayfolio.finding.NearNames;
import bayfolio.source.Located;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The words of conditions of procedures: features of a coach, by the files of equipment.
 *
 * @param known those that the files give
 * @param whole whether all files could be read; else a word may be one of theirs, and is let pass
 */
public record FeatureWords(Set<String> known, boolean whole) implements ConditionWords<String> {
    public FeatureWords {
        known = Set.copyOf(known);
    }

    @Override
    public String called() {
        return "a feature";
    }

    @Override
    public String mend() {
        return "Write `every coach`, or features joined by `and`, `or`, `not`.";
    }

    @Override
    public Optional<String> read(Located<String> word, Consumer<Finding> findings) {
        if (known.contains(word.value()) || !whole) {
            return Optional.of(word.value());
        }
        findings.accept(Finding.error("unknown-feature", word.at(), "`" + word.value() + "` is no feature of a coach")
                .near(NearNames.to(word.value(), known.stream().sorted().toList()))
                .mend(mend()));
        return Optional.empty();
    }
}
