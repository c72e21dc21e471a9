package bayfolio.check.equipment;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.procedure.Form;
import java.util.stream.Stream;

/** Flags equipment of a coach that no page of its handbook sets up or uses. */
public final class NoWayToSetUp implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Proof.of(coach)
                .filter(proof -> !proof.outOfBounds())
                .filter(proof -> proof.says(Equipment.SET_UP_BY) || proof.says(Equipment.USED_BY))
                .filter(proof -> proof.knows(Equipment.SET_UP_BY, Form.PROCEDURE)
                        && proof.knows(Equipment.USED_BY, Form.PROCEDURE))
                .filter(proof -> proof.settingUp().isEmpty()
                        && proof.applying(Equipment.USED_BY, Form.PROCEDURE).isEmpty())
                .map(proof -> proof.error("no-way-to-set-up", "no page of its handbook sets it up")
                        .mend("Write a procedure that is for this coach, and name it under `set-up-by` of "
                                + proof.file() + "."));
    }
}
