package bayfolio.check.access;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Door;
import bayfolio.model.Unit;
import java.util.stream.Stream;

/** Flags a coach none of whose doors is a way out in an emergency. */
public final class NoEmergencyExit implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        boolean out = coach.unit().doors().stream()
                .anyMatch(door -> door.facts().find(Door.EMERGENCY).orElse(false)
                        || door.roles().contains("emergency-exit"));
        return coach.unit().draft() || out || coach.unit().doors().isEmpty()
                ? Stream.of()
                : Stream.of(Finding.error(
                                "no-emergency-exit",
                                coach.unit().facts().at(Unit.DOORS),
                                "no door of this coach is `emergency: yes` or has the role `emergency-exit`")
                        .mend("Mark each way out with `emergency: yes`, and give escape windows the role."));
    }
}
