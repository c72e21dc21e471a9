package bayfolio.check.feature;

import bayfolio.check.Case;
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
    private record Need(Feature feature, Key<?> record, String... roles) {
        boolean unmet(Unit unit) {
            return feature.of(unit) && Stream.of(roles).noneMatch(unit::holds);
        }
    }

    private static final List<Need> NEEDS = List.of(
            new Need(Feature.GENERATOR, Unit.GENERATOR, "generator-control"),
            new Need(Feature.GENERATOR_AUTOSTART, Unit.GENERATOR, "generator-autostart-switch"),
            new Need(Feature.INVERTER, Unit.INVERTER, "inverter-control"),
            new Need(Feature.TRANSFER_MANUAL, Unit.TRANSFER, "generator-outlet"),
            new Need(Feature.CORD_DETACHABLE, Unit.CORD, "shore-inlet"),
            new Need(Feature.CORD_REEL_POWERED, Unit.CORD, "cord-reel-switch"),
            new Need(Feature.SLIDE_OUT, Unit.SLIDES, "slide-switch"),
            new Need(Feature.JACKS, Unit.JACKS, "jack-control"),
            new Need(Feature.AWNING_ELECTRIC, Unit.AWNINGS, "awning-switch"),
            new Need(Feature.AWNING_MANUAL, Unit.AWNINGS, "awning-crank"),
            new Need(Feature.STEP_ELECTRIC, Unit.STEPS, "step-switch"),
            new Need(Feature.LP_TANK, Unit.GAS, "lp-main-valve"),
            new Need(Feature.GAS_CYLINDERS, Unit.GAS, "gas-cylinder-valve"),
            new Need(Feature.WATER_HEATER_GAS, Unit.APPLIANCES, "water-heater-gas-switch", "heater-control"),
            new Need(Feature.WATER_HEATER_ELECTRIC, Unit.APPLIANCES, "water-heater-electric-switch", "heater-control"),
            new Need(Feature.BLOWN_AIR_HEATER, Unit.APPLIANCES, "heater-control"),
            new Need(Feature.HYDRONIC, Unit.APPLIANCES, "hydronic-burner-switch", "hydronic-electric-switch"),
            new Need(Feature.FURNACE, Unit.APPLIANCES, "thermostat"),
            new Need(Feature.MACERATOR, Unit.APPLIANCES, "macerator-switch"));

    @Override
    public Stream<Finding> check(Case coach) {
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
