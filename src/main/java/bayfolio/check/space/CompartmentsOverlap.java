package bayfolio.check.space;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Compartment;
import bayfolio.model.Region;
import bayfolio.model.Side;
import bayfolio.model.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Flags two compartments on one outside of the coach that lie over each other. Those whose heights
 * tell that one is above the other do not; inside, doors stand at any angle and are not compared.
 */
public final class CompartmentsOverlap implements Rule {
    /** Doors are measured with a tape along a curved wall: a thumb's width is no overlap. */
    private static final double TOLERANCE_METERS = 0.02;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        List<Compartment> compartments = coach.unit().compartments().stream()
                .sorted(Comparator.comparingDouble(CompartmentsOverlap::start))
                .toList();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < compartments.size(); i++) {
            for (int j = i + 1; j < compartments.size(); j++) {
                if (overlap(compartments.get(i), compartments.get(j))) {
                    findings.add(finding(
                            compartments.get(i),
                            compartments.get(j),
                            coach.unit().region()));
                }
            }
        }
        return findings.stream();
    }

    private static Finding finding(Compartment before, Compartment after, Region region) {
        String end = new bayfolio.measure.Meters(end(before)).in(region.first());
        return Finding.error(
                        "compartments-overlap",
                        after.facts().at(after.spotKeys().fromFront()),
                        "compartment `"
                                + after.id()
                                + "` lies over `"
                                + before.id()
                                + "`, which ends "
                                + end
                                + " from the front")
                .mend("Measure both again, or state `height` and `tall` if one is above the other.");
    }

    private static boolean overlap(Compartment one, Compartment other) {
        Side side = side(one);
        boolean outside = side == Side.LEFT || side == Side.RIGHT || side == Side.FRONT || side == Side.REAR;
        return outside
                && side == side(other)
                && Math.min(end(one), end(other)) - Math.max(start(one), start(other)) > TOLERANCE_METERS
                && !above(spot(one), spot(other))
                && !above(spot(other), spot(one));
    }

    private static boolean above(Spot lower, Spot upper) {
        return lower.height().isPresent()
                && lower.tall().isPresent()
                && upper.height().isPresent()
                && lower.height().get().value() + lower.tall().get().value()
                        <= upper.height().get().value() + TOLERANCE_METERS;
    }

    private static Spot spot(Compartment compartment) {
        return compartment.spot().orElseThrow();
    }

    private static Side side(Compartment compartment) {
        return spot(compartment).side().orElseThrow();
    }

    private static double start(Compartment compartment) {
        return spot(compartment).fromFront().orElseThrow().value();
    }

    private static double end(Compartment compartment) {
        return start(compartment) + spot(compartment).width().orElseThrow().value();
    }
}
