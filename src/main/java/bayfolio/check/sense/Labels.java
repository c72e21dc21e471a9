package bayfolio.check.sense;

import bayfolio.model.Compartment;
import bayfolio.model.Thing;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The letter and number by which people call a bay, as its name begins with it: {@code L4 Service bay}. */
final class Labels {
    private static final Pattern LABEL = Pattern.compile("^[A-Z][0-9]{1,3}\\b");

    private static final Pattern ANY = Pattern.compile("\\b[A-Z][0-9]+\\b");

    private Labels() {}

    /** All by which it is called, where its two doors have one each: {@code L3 / R1 Through storage}. */
    static Set<String> all(Compartment bay) {
        return ANY.matcher(
                        bay.name() + " " + bay.facts().find(Compartment.LABEL).orElse(""))
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The one before its own, if that is not the first of its letter. */
    static Optional<String> before(Compartment bay) {
        return of(bay).filter(label -> !label.substring(1).equals("1"))
                .map(label -> label.charAt(0) + Integer.toString(Integer.parseInt(label.substring(1)) - 1));
    }

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
