package bayfolio.check.sense;

import bayfolio.model.Compartment;
import bayfolio.model.Thing;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The letter and number by which people call a bay, as its name begins with it: {@code L4 Service bay}. */
final class Labels {
    private static final Pattern LABEL = Pattern.compile("^[A-Z][0-9]+\\b");

    private Labels() {}

    static Optional<String> of(Compartment bay) {
        return LABEL.matcher(bay.name()).results().map(MatchResult::group).findFirst();
    }

    /**
     * Whether a place is told by a bay: {@code front wall of L5}.
     *
     * @param how the words before the label, as a pattern
     */
    static boolean said(String where, String how, Thing bay) {
        return bay instanceof Compartment compartment
                && of(compartment)
                        .filter(where::contains)
                        .filter(label -> Pattern.compile("\\b(?:" + how + ") " + label + "\\b")
                                .matcher(where)
                                .find())
                        .isPresent();
    }
}
