package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.stream.Stream;

/** Flags a cassette that no hatch and no item on board leads to; a portable toilet carries its own. */
public final class CassetteHatchMissing implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.draft() || unit.holds("cassette-hatch") || unit.holds("cassette") || unit.holds("portable-toilet")
                ? Stream.of()
                : unit.tanks().stream()
                        .filter(tank -> tank.contents() == Tank.Contents.CASSETTE)
                        .map(tank -> Finding.error(
                                        "cassette-hatch-missing",
                                        tank.at(),
                                        "nothing tells where tank `" + tank.id()
                                                + "` is taken out: there is no cassette-hatch and no cassette")
                                .mend("Give the role to the compartment that it is taken out of."));
    }
}
