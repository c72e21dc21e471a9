package bayfolio.check.equipment;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.model.Situation;
import bayfolio.procedure.Form;
import bayfolio.procedure.Script;
import java.util.List;
import java.util.stream.Stream;

/** Flags equipment that readers of a coach are told to set up and never told to take back. */
public final class NoWayBack implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Proof.of(coach)
                .filter(proof -> !proof.outOfBounds())
                .filter(NoWayBack::lacks)
                .map(proof -> proof.error("no-way-back", "no page of its handbook takes it back")
                        .mend("Write a procedure that is for this coach, and name it under `undone-by` of "
                                + proof.file() + "."));
    }

    /** What renters set up they must be able to take back, wherever it must rest while they have the coach. */
    private static boolean lacks(Proof proof) {
        List<Script> there = proof.settingUp();
        boolean byRenters = there.stream().anyMatch(script -> !script.forStaff())
                && Situation.OF_RENTERS.stream()
                        .anyMatch(it -> proof.kind().in(it).equals(proof.kind().resting()));
        return proof.says(Equipment.SET_UP_BY)
                && !there.isEmpty()
                && proof.knows(Equipment.UNDONE_BY, Form.PROCEDURE)
                && proof.undoing().stream().noneMatch(script -> !byRenters || !script.forStaff());
    }
}
