package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Key;
import bayfolio.finding.Finding;
import bayfolio.model.Feature;
import bayfolio.model.Unit;
import java.util.List;
import java.util.stream.Stream;

/** Flags a feature of a coach for which nothing holds the role that works it. */
public final class FeatureWithoutRole implements Rule {
    /** A feature, the roles one of which works it, and the record that the feature comes from. */
    private record Requirement(Feature feature, Key<?> record, String... roles) {
        boolean unmet(Unit unit) {
            return feature.of(unit) && Stream.of(roles).noneMatch(unit::holds);
        }
    }

    private static final List<Requirement> NEEDS = List.of(
            new Requirement(Feature.GENERATOR, Unit.GENERATOR, "generator-control"),
            new Requirement(Feature.GENERATOR_AUTOSTART, Unit.GENERATOR, "generator-autostart-switch"),
            new Requirement(Feature.INVERTER, Unit.INVERTER, "inverter-control"),
            new Requirement(Feature.TRANSFER_MANUAL, Unit.TRANSFER, "generator-outlet"),
            new Requirement(Feature.CORD_DETACHABLE, Unit.CORD, "shore-inlet"),
            new Requirement(Feature.CORD_REEL_POWERED, Unit.CORD, "cord-reel-switch"),
            new Requirement(Feature.SLIDE_OUT, Unit.SLIDES, "slide-switch"),
            new Requirement(Feature.JACKS, Unit.JACKS, "jack-control"),
            new Requirement(Feature.AWNING_ELECTRIC, Unit.AWNINGS, "awning-switch"),
            new Requirement(Feature.AWNING_MANUAL, Unit.AWNINGS, "awning-crank"),
            new Requirement(Feature.STEP_ELECTRIC, Unit.STEPS, "step-switch"),
            new Requirement(Feature.LP_TANK, Unit.GAS, "lp-main-valve"),
            new Requirement(Feature.GAS_CYLINDERS, Unit.GAS, "gas-cylinder-valve"),
            new Requirement(Feature.WATER_HEATER_GAS, Unit.APPLIANCES, "water-heater-gas-switch", "heater-control"),
            new Requirement(
                    Feature.WATER_HEATER_ELECTRIC, Unit.APPLIANCES, "water-heater-electric-switch", "heater-control"),
            new Requirement(Feature.BLOWN_AIR_HEATER, Unit.APPLIANCES, "heater-control"),
            new Requirement(Feature.HYDRONIC, Unit.APPLIANCES, "hydronic-burner-switch", "hydronic-electric-switch"),
            new Requirement(Feature.FURNACE, Unit.APPLIANCES, "thermostat"),
            new Requirement(Feature.MACERATOR, Unit.APPLIANCES, "macerator-switch"));

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().draft()
                ? Stream.of()
                : NEEDS.stream()
                        .filter(need -> need.unmet(coach.unit()))
                        .map(need -> Finding.error(
                                        "feature-without-role",
                                        coach.unit().facts().at(need.record()),
                                        "this coach has the feature `"
                                                + need.feature().word()
                                                + "`, and nothing on it has the role `"
                                                + String.join("` or `", need.roles()) + "`")
                                .mend("Give the role to what works it, or take out what this coach does not have."));
    }
}
