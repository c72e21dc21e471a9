package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import bayfolio.model.Spot;
import java.util.stream.Stream;

/** Flags a compartment whose second door is said to be on the side of the first. */
public final class SecondDoorOnSameSide implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().compartments().stream()
                .flatMap(compartment -> compartment.facts().find(Compartment.SECOND_DOOR).stream()
                        .filter(side -> compartment
                                .spot()
                                .flatMap(Spot::side)
                                .filter(side::equals)
                                .isPresent())
                        .map(side -> Finding.error(
                                        "second-door-on-same-side",
                                        compartment.facts().at(Compartment.SECOND_DOOR),
                                        "compartment `" + compartment.id() + "` has both its doors on the "
                                                + Type.word(side) + " side")
                                .mend("Name the other side, or leave `second-door` out.")));
    }
}
