package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Circuit;
import bayfolio.model.Load;
import bayfolio.model.Supply;
import bayfolio.model.Unit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags a circuit on the second leg of a coach whose supplies all have one. */
public final class LoadOnMissingLeg implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        boolean oneLeg = !unit.supplies().isEmpty()
                && unit.supplies().stream().allMatch(supply -> supply.facts().get(Supply.LEGS) == 1);
        return unit.circuits().stream()
                .filter(circuit -> oneLeg
                        && circuit.facts()
                                .find(Circuit.LEG)
                                .filter(leg -> leg == 2)
                                .isPresent())
                .map(circuit -> finding(circuit, unit));
    }

    private static Finding finding(Circuit circuit, Unit unit) {
        String loads = unit.loads().stream()
                .filter(load -> load.facts().get(Load.CIRCUIT).equals(circuit.id()))
                .map(load -> "`" + load.id() + "`")
                .collect(Collectors.joining(", "));
        return Finding.error(
                        "load-on-missing-leg",
                        circuit.facts().at(Circuit.LEG),
                        "circuit `%s`%s hangs on leg 2, and no supply of this coach has two legs"
                                .formatted(circuit.id(), loads.isEmpty() ? "" : " with " + loads))
                .mend("Correct `leg` here, or `legs` of the supply.");
    }
}
