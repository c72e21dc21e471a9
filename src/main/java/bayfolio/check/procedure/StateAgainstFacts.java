package bayfolio.check.procedure;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.States;
import bayfolio.model.Switch;
import bayfolio.procedure.Head;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Block;
import bayfolio.prose.Target;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Flags a switch that a procedure sets one way and that is to be the other way afterward by the description: pump off
 * before driving, and `driving: ON`.
 */
public final class StateAgainstFacts implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.procedures().stream()
                .filter(procedure -> procedure.head().facts().has(Head.LEAVES) && procedure.read())
                .flatMap(procedure -> left(procedure).flatMap(handled -> check(procedure, handled, coach)));
    }

    /** Each switch as it is set last; one that is opened and shut again is left shut. */
    private static Stream<Block.Handled> left(Procedure procedure) {
        Map<Target, Block.Handled> last = new LinkedHashMap<>();
        procedure.handled().forEach(handled -> last.put(handled.target(), handled));
        return last.values().stream();
    }

    private static Stream<Finding> check(Procedure procedure, Block.Handled handled, CheckedCoach coach) {
        Key<String> key = state(procedure.head().facts().get(Head.LEAVES));
        return coach
                .coach()
                .thing(handled.target().kind(), handled.target().id())
                .flatMap(thing -> thing.facts().located(key))
                .filter(state -> !coach.coach()
                                .twice(handled.target().kind(), handled.target().id())
                        && States.opposed(handled.state(), state.value()))
                .map(state -> Finding.warning(
                                "state-against-facts",
                                state.at(),
                                "switch `%s` is `%s` by the description, and %s `%s` leaves it %s"
                                        .formatted(
                                                handled.target().id(),
                                                state.value(),
                                                procedure.form().called(),
                                                procedure.id(),
                                                handled.state()))
                        .mend("Mend the one that is wrong; on a coach that is so, the step needs the state `"
                                + key.name() + "`."))
                .stream();
    }

    private static Key<String> state(Head.Left left) {
        return switch (left) {
            case AT_PICKUP -> Switch.AT_PICKUP;
            case STORED -> Switch.STORED;
            case RETURNED -> Switch.RETURNED;
            case DRIVING -> Switch.DRIVING;
        };
    }
}
