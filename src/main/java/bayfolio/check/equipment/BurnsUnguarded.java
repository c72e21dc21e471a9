package bayfolio.check.equipment;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.model.Unit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags what burns something on a coach and has nothing that shuts it off, or no alarm that watches it. */
public final class BurnsUnguarded implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Proof.of(coach)
                .filter(proof -> !proof.kind().facts().all(Equipment.BURNS).isEmpty())
                .flatMap(proof -> Stream.concat(shutOff(proof), alarms(proof)));
    }

    private static Stream<Finding> shutOff(Proof proof) {
        Unit unit = proof.coach().unit();
        List<String> roles = proof.kind().facts().all(Equipment.SHUT_OFF);
        return roles.stream().anyMatch(unit::holds)
                ? Stream.of()
                : Stream.of(proof.error("burns-unguarded", "nothing on it shuts it off: " + named(roles))
                        .mend("Give the role to what shuts it off."));
    }

    private static Stream<Finding> alarms(Proof proof) {
        Unit unit = proof.coach().unit();
        List<String> missing = proof.kind().facts().all(Equipment.ALARM).stream()
                .filter(role -> !unit.holds(role))
                .toList();
        return missing.isEmpty()
                ? Stream.of()
                : Stream.of(
                        proof.error("burns-unguarded", "no alarm watches it: " + named(missing))
                                .mend(
                                        "Describe the alarm and give it the role. A coach that burns something without it is not let out."));
    }

    private static String named(List<String> roles) {
        return roles.stream().map(role -> "`" + role + "`").collect(Collectors.joining(" or "));
    }
}
