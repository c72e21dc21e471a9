package bayfolio.check.equipment;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Equipment;
import bayfolio.procedure.Script;
import bayfolio.source.Located;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells which procedures fall away for renters since only staff may use what they are about, so that nobody wonders. */
public final class OutOfBounds implements Rule {
    private static final List<Key<List<Located<String>>>> PROCEDURES =
            List.of(Equipment.SET_UP_BY, Equipment.UNDONE_BY, Equipment.USED_BY);

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return Proof.of(coach).filter(Proof::outOfBounds).map(proof -> told(proof, fallen(proof)));
    }

    private static List<String> fallen(Proof proof) {
        List<String> ids = PROCEDURES.stream()
                .flatMap(key -> proof.kind().facts().all(key).stream())
                .toList();
        return proof.coach().library().scripts().stream()
                .filter(script -> ids.contains(script.id()) && !script.forStaff())
                .filter(script ->
                        !proof.coach().library().applies(script, proof.coach().unit()))
                .map(Script::id)
                .toList();
    }

    private static Finding told(Proof proof, List<String> fallen) {
        return Finding.note(
                        "out-of-bounds",
                        proof.at(),
                        "only staff may use " + proof.called() + " of this coach"
                                + (fallen.isEmpty()
                                        ? ""
                                        : fallen.stream()
                                                .map(id -> "`" + id + "`")
                                                .collect(
                                                        Collectors.joining(", ", ", and these pages fall away: ", ""))))
                .mend(
                        "Is it the renter's after all? Then change the `access` of what works it. Else say under `accept` that it"
                                + " is so.");
    }
}
