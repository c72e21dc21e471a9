package bayfolio.check.equipment;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.procedure.Script;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags equipment that two pages of one handbook set up, or take back: a reader does not know which counts. */
public final class TwoWays implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Proof.of(coach)
                .flatMap(proof -> Stream.concat(
                        told(proof, proof.settingUp(), "set it up"), told(proof, proof.undoing(), "take it back")));
    }

    /** Staff may have a way of their own. */
    private static Stream<Finding> told(Proof proof, List<Script> ways, String what) {
        return Stream.of(true, false)
                .flatMap(staff -> toldOf(
                        proof,
                        ways.stream().filter(way -> way.forStaff() == staff).toList(),
                        what));
    }

    private static Stream<Finding> toldOf(Proof proof, List<Script> ways, String what) {
        return ways.size() < 2
                ? Stream.of()
                : Stream.of(proof.error(
                                "two-ways",
                                "several pages of its handbook " + what + ": "
                                        + ways.stream()
                                                .map(script -> "`" + script.id() + "`")
                                                .collect(Collectors.joining(", ")))
                        .mend("Let the `when` of each tell the coaches apart, or take one out of " + proof.file()
                                + "."));
    }
}
