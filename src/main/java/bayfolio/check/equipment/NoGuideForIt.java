package bayfolio.check.equipment;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.procedure.Form;
import java.util.stream.Stream;

/** Flags equipment for which no trouble guide of the handbook helps when it fails. */
public final class NoGuideForIt implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Proof.of(coach)
                .filter(proof -> !proof.outOfBounds())
                .filter(proof -> proof.says(Equipment.TROUBLE) && proof.knows(Equipment.TROUBLE, Form.TROUBLE))
                .filter(proof -> proof.applying(Equipment.TROUBLE, Form.TROUBLE).isEmpty())
                .map(proof -> proof.error("no-guide-for-it", "no trouble guide of its handbook is about it")
                        .mend("Write one that is for this coach, and name it under `trouble` of " + proof.file()
                                + "."));
    }
}
