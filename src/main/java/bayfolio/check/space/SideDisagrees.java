package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import bayfolio.model.Gauge;
import bayfolio.model.Item;
import bayfolio.model.Side;
import bayfolio.model.Switch;
import bayfolio.model.Thing;
import bayfolio.source.Located;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a thing that is said to be on another side of the coach than the compartment that it is in. */
public final class SideDisagrees implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().things().flatMap(thing -> check(thing, coach).stream());
    }

    private static Optional<Finding> check(Thing thing, CheckedCoach coach) {
        Optional<Located<Side>> side = side(thing);
        Optional<Compartment> around = coach.coach().around(thing);
        if (side.isEmpty()
                || around.isEmpty()
                || reaches(around.get(), side.get().value(), thing)) {
            return Optional.empty();
        }
        return Optional.of(Finding.error(
                        "side-disagrees",
                        side.get().at(),
                        thing.kind()
                                + " `"
                                + thing.id()
                                + "` is on the side `"
                                + Type.word(side.get().value())
                                + "`, and compartment `"
                                + around.get().id()
                                + "`, which it is in, on the side `"
                                + Type.word(around.get()
                                        .facts()
                                        .get(around.get().spotKeys().side()))
                                + "`")
                .mend("Correct one of them, or leave the side to the compartment."));
    }

    /**
     * A thing that lies inside or below the floor can be come at through a door on any side, and what is built into the
     * wall through one inside.
     */
    private static boolean reaches(Compartment compartment, Side side, Thing thing) {
        Side own = compartment.facts().get(compartment.spotKeys().side());
        return side == Side.INSIDE
                || side == Side.UNDERFLOOR
                || own == Side.INSIDE && !(thing instanceof Switch || thing instanceof Gauge || thing instanceof Item)
                || own == side
                || compartment
                        .facts()
                        .find(Compartment.SECOND_DOOR)
                        .filter(side::equals)
                        .isPresent();
    }

    private static Optional<Located<Side>> side(Thing thing) {
        return thing.facts()
                .shape()
                .key("side")
                .flatMap(thing.facts()::located)
                .filter(it -> it.value() instanceof Side)
                .map(it -> it.map(Side.class::cast));
    }
}
