package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import java.util.List;
import java.util.stream.Stream;

/** Flags a coach that has a black tank and a toilet cassette at once. */
public final class BlackTankAndCassette implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Tank> black = of(coach.unit(), Tank.Contents.BLACK);
        return of(coach.unit(), Tank.Contents.CASSETTE).stream()
                .flatMap(cassette -> black.stream().limit(1).map(tank -> finding(cassette, tank)));
    }

    private static List<Tank> of(Unit unit, Tank.Contents contents) {
        return unit.tanks().stream().filter(tank -> tank.contents() == contents).toList();
    }

    private static Finding finding(Tank cassette, Tank black) {
        return Finding.error(
                        "black-tank-and-cassette",
                        cassette.facts().at(Tank.CONTENTS),
                        "tank `" + cassette.id() + "` is a cassette, and tank `" + black.id() + "` a black tank")
                .mend("Take out the one that this coach does not have.");
    }
}
