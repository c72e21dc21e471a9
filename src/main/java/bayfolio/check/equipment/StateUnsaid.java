package bayfolio.check.equipment;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.UnreadException;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.model.Situation;
import bayfolio.model.StatesOf;
import bayfolio.procedure.Stated;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a situation in which nothing says how the equipment of a coach has to stand: what to do with a heater on a ferry. */
public final class StateUnsaid implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Proof.of(coach).flatMap(proof -> Situation.WITH_STATE.stream().flatMap(it -> told(proof, it)));
    }

    private static Stream<Finding> told(Proof proof, Situation situation) {
        Optional<StatesOf> states = proof.kind().facts().find(Equipment.STATES);
        String when = situation.word().replace('-', ' ');
        if (states.flatMap(it -> it.in(situation)).isEmpty()) {
            return Stream.of(proof.error("state-unsaid", "nothing says how it has to stand for `" + when + "`")
                    .mend("Say it under `states` of " + proof.file() + "; `any` where it does not matter."));
        }
        return states.flatMap(it -> it.factFor(situation)).stream()
                .filter(fact -> !stated(proof.coach(), fact))
                .map(fact -> Finding.warning(
                                "state-unsaid",
                                proof.at(),
                                "this coach has " + proof.called() + "; how it has to stand for `" + when
                                        + "` the description ought to say under `" + fact + "`, and does not")
                        .mend("State `" + fact + "`."));
    }

    private static boolean stated(CheckedCoach coach, String fact) {
        try {
            return !Stated.under(fact, coach.coach(), coach.library(), coach.words())
                    .isEmpty();
        } catch (UnreadException told) {
            return true;
        }
    }
}
