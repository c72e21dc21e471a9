package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Switch;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;

/** Flags a time to hold something that stays where it is put. */
public final class HoldWithoutSpring implements Rule {
    private static final Set<Switch.Make> STAYING = EnumSet.of(
            Switch.Make.ROTARY_DISCONNECT,
            Switch.Make.TOGGLE,
            Switch.Make.BREAKER_HANDLE,
            Switch.Make.LATCHING_BUTTON,
            Switch.Make.HANDWHEEL,
            Switch.Make.BALL_VALVE,
            Switch.Make.SLIDE_VALVE,
            Switch.Make.TAP,
            Switch.Make.CRANK,
            Switch.Make.FUSES,
            Switch.Make.OUTLET);

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().switches().stream()
                .filter(it -> STAYING.contains(it.make()) && it.facts().has(Switch.HOLD))
                .map(it -> Finding.warning(
                                "hold-without-spring",
                                it.facts().at(Switch.HOLD),
                                "switch `" + it.id() + "` is to be held for "
                                        + it.facts()
                                                .get(Switch.HOLD)
                                                .in(coach.unit().region().first())
                                        + ", and a `" + Type.word(it.make()) + "` stays where it is put")
                        .mend("Take `hold` out, and read how it is worked and what its wrong use does again."));
    }
}
