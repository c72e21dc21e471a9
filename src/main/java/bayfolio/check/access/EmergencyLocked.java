package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import bayfolio.model.Door;
import bayfolio.model.Thing;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Flags a place that everybody must reach in an emergency and that is locked with a key. */
public final class EmergencyLocked implements Rule {
    private static final Pattern CLAUSE = Pattern.compile("[.;:]");
    private static final Pattern KEY = Pattern.compile("\\bkeys?\\b", Pattern.CASE_INSENSITIVE);
    private static final Pattern NONE =
            Pattern.compile("\\b(no|not|never|none|without|unlocked)\\b", Pattern.CASE_INSENSITIVE);

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Stream.concat(
                coach.unit().compartments().stream()
                        .filter(Compartment::emergency)
                        .flatMap(it -> check(it, Compartment.LOCKS).stream()),
                coach.unit().doors().stream()
                        .filter(it -> it.roles().contains("emergency-exit"))
                        .flatMap(it -> check(it, Door.LOCKS).stream()));
    }

    private static Optional<Finding> check(Thing place, Key<String> locks) {
        return place.facts()
                .find(locks)
                .filter(EmergencyLocked::withKey)
                .map(words -> Finding.warning(
                                "emergency-locked",
                                place.facts().at(locks),
                                place.kind() + " `" + place.id()
                                        + "` must open for everybody in an emergency, and `locks` says `" + words + "`")
                        .mend("Leave it unlocked; if it is, say so with `never locked` or `no key`."));
    }

    private static boolean withKey(String words) {
        return CLAUSE.splitAsStream(words)
                .anyMatch(clause ->
                        KEY.matcher(clause).find() && !NONE.matcher(clause).find());
    }
}
