package bayfolio.check.weight;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Facts;
import bayfolio.finding.Finding;
import bayfolio.measure.Kilograms;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.model.Weights;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a coach whose stated payload does not even take a person on every belted seat and full
 * fresh tanks. In Europe the driver is part of the coach already.
 */
public final class CargoBelowZero implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return Laden.limits(unit)
                .flatMap(limits -> Laden.belts(unit).flatMap(belts -> check(limits, belts, unit)))
                .stream();
    }

    private static Optional<Finding> check(Facts limits, int belts, Unit unit) {
        int counted = unit.region() == Region.EUROPE ? belts - 1 : belts;
        Kilograms people = Laden.persons(counted, unit.region());
        Kilograms water = Laden.water(unit, 1);
        Kilograms both = people.plus(water);
        return limits.find(Weights.PAYLOAD)
                .filter(payload -> Laden.over(both, payload))
                .map(payload -> Finding.error(
                                "cargo-below-zero",
                                limits.at(Weights.PAYLOAD),
                                "the payload is %s, and %s weigh %s and full fresh tanks %s"
                                        .formatted(
                                                print(payload, unit),
                                                people(counted, unit),
                                                print(people, unit),
                                                print(water, unit)))
                        .mend("Read the label again; if it is right, lower `belted-seats` to what may ride."));
    }

    private static String people(int count, Unit unit) {
        String who = unit.region() == Region.EUROPE ? "passenger" : "person";
        String all = unit.region() == Region.EUROPE ? "passengers" : "people";
        return count + " " + (count == 1 ? who : all);
    }

    private static String print(Kilograms weight, Unit unit) {
        return weight.in(unit.region().first());
    }
}
