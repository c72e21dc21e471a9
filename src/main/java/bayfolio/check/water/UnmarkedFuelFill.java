package bayfolio.check.water;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Meters;
import bayfolio.model.Connection;
import bayfolio.model.Side;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a fuel filler and a fresh-water fill close together that do not warn of each other. */
public final class UnmarkedFuelFill implements Rule {
    /** Two steps along the wall: the nozzle or the hose still reaches both. */
    private static final double NEAR_METERS = 3;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.coach().holders("connection", "fresh-fill-port").stream()
                .flatMap(water -> coach.coach().holders("connection", "fuel-filler").stream()
                        .flatMap(fuel -> check(water, fuel, coach).stream()));
    }

    private static Optional<Finding> check(Thing water, Thing fuel, CheckedCoach coach) {
        Optional<Meters> apart = apart(water, fuel, coach);
        Optional<Thing> silent =
                warns(water, fuel) ? Optional.of(fuel).filter(it -> !warns(it, water)) : Optional.of(water);
        return apart.filter(distance -> distance.value() <= NEAR_METERS)
                .flatMap(distance -> silent.filter(it -> known(it, coach))
                        .map(it -> finding(it, it == water ? fuel : water, distance, coach.unit())));
    }

    private static boolean warns(Thing one, Thing other) {
        return one.facts().find(Connection.NOT_TO_CONFUSE).orElse(List.of()).stream()
                .anyMatch(named -> named.value().equals(other.id()));
    }

    /** A name that does not exist is told elsewhere, and may be a misspelling of the other one. */
    private static boolean known(Thing one, CheckedCoach coach) {
        return one.facts().all(Connection.NOT_TO_CONFUSE).stream()
                .allMatch(id -> coach.coach().thing(one.kind(), id).isPresent());
    }

    private static Optional<Meters> apart(Thing one, Thing other, CheckedCoach coach) {
        Optional<Side> side = spot(one, coach).flatMap(Spot::side);
        return side.isEmpty() || !side.equals(spot(other, coach).flatMap(Spot::side))
                ? Optional.empty()
                : spot(one, coach)
                        .flatMap(Spot::fromFront)
                        .flatMap(here -> spot(other, coach)
                                .flatMap(Spot::fromFront)
                                .map(there -> new Meters(Math.abs(here.value() - there.value()))));
    }

    /** Its own place, or that of the door it is behind. */
    private static Optional<Spot> spot(Thing thing, CheckedCoach coach) {
        return thing.spot()
                .filter(spot -> spot.side().isPresent() && spot.fromFront().isPresent())
                .or(() -> coach.coach().around(thing).flatMap(Thing::spot));
    }

    private static Finding finding(Thing silent, Thing other, Meters apart, Unit unit) {
        Place at = silent.facts().has(Connection.NOT_TO_CONFUSE)
                ? silent.facts().at(Connection.NOT_TO_CONFUSE)
                : silent.at();
        return Finding.warning(
                        "unmarked-fuel-fill",
                        at,
                        "connection `" + silent.id() + "` lies "
                                + apart.in(unit.region().first()) + " from connection `" + other.id()
                                + "` and does not name it in `not-to-confuse-with`")
                .mend("Let both name each other in `not-to-confuse-with`.");
    }
}
