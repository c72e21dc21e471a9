package bayfolio.check.feature;

import static java.util.Map.entry;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Feature;
import bayfolio.model.Features;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Flags a part of something that the coach does not have, such as the switch of a generator that was taken out. */
public final class RoleWithoutFeature implements Rule {

    /** What works only with a feature, and the features any one of which will do. */
    static final Map<String, List<Feature>> BELONGS_TO = Map.ofEntries(
            entry("generator-control", List.of(Feature.GENERATOR)),
            entry("generator-autostart-switch", List.of(Feature.GENERATOR_AUTOSTART)),
            entry("generator-breaker", List.of(Feature.GENERATOR)),
            entry("generator-hour-meter", List.of(Feature.GENERATOR)),
            entry("generator-compartment", List.of(Feature.GENERATOR)),
            entry("generator", List.of(Feature.GENERATOR)),
            entry("generator-outlet", List.of(Feature.TRANSFER_MANUAL)),
            entry("inverter-control", List.of(Feature.INVERTER)),
            entry("inverter", List.of(Feature.INVERTER)),
            entry("shore-inlet", List.of(Feature.CORD_DETACHABLE)),
            entry("cord-reel-switch", List.of(Feature.CORD_REEL_POWERED)),
            entry("surge-protector", List.of(Feature.SURGE_PROTECTION)),
            entry("jack-control", List.of(Feature.JACKS)),
            entry("jack-pad", List.of(Feature.JACKS)),
            entry("slide-switch", List.of(Feature.SLIDE_OUT)),
            entry("slide-lock", List.of(Feature.SLIDE_LOCKS)),
            entry("awning-switch", List.of(Feature.AWNING_ELECTRIC)),
            entry("lp-main-valve", List.of(Feature.LP_TANK)),
            entry("lp-fill-port", List.of(Feature.LP_TANK)),
            entry("gas-cylinder-valve", List.of(Feature.GAS_CYLINDERS)),
            entry("gas-locker", List.of(Feature.LP_TANK, Feature.GAS_CYLINDERS)),
            entry("gas-alarm", List.of(Feature.LP_TANK, Feature.GAS_CYLINDERS)),
            entry("lp-gauge", List.of(Feature.LP_TANK, Feature.GAS_CYLINDERS)),
            entry("gas-safety-reset", List.of(Feature.GAS_CRASH_SENSOR)),
            entry("water-heater-gas-switch", List.of(Feature.WATER_HEATER_GAS)),
            entry("water-heater-electric-switch", List.of(Feature.WATER_HEATER_ELECTRIC)),
            entry("hydronic-burner-switch", List.of(Feature.HYDRONIC)),
            entry("hydronic-electric-switch", List.of(Feature.HYDRONIC)),
            entry("hydronic-compartment", List.of(Feature.HYDRONIC)),
            entry("tank-heater-switch", List.of(Feature.TANK_HEATERS)),
            entry("cassette", List.of(Feature.CASSETTE_TOILET)),
            entry("cassette-hatch", List.of(Feature.CASSETTE_TOILET)),
            entry("black-dump-valve", List.of(Feature.BLACK_TANK)),
            entry("tank-flush-inlet", List.of(Feature.BLACK_TANK)),
            entry("macerator-switch", List.of(Feature.MACERATOR)),
            entry("def-filler", List.of(Feature.DEF)));

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        if (!coach.unit().facts().has(Unit.HIRE)) {
            return Stream.of(); // a draft; what it belongs to may still come
        }
        Features features = Features.of(coach.unit());
        return coach.unit()
                .things()
                .flatMap(thing -> roles(thing).flatMap(role -> check(role, thing, features).stream()));
    }

    private static Stream<Located<String>> roles(Thing thing) {
        return thing.facts().located(thing.identity().roles()).stream().flatMap(roles -> roles.value().stream());
    }

    private static Optional<Finding> check(Located<String> role, Thing thing, Features features) {
        List<Feature> any = BELONGS_TO.getOrDefault(role.value(), List.of());
        if (any.isEmpty() || any.stream().anyMatch(features::contains)) {
            return Optional.empty();
        }
        String lacking = any.stream().map(it -> "`" + it.word() + "`").collect(Collectors.joining(" or "));
        return Optional.of(Finding.warning(
                        "role-without-feature",
                        role.at(),
                        thing.kind()
                                + " `"
                                + thing.id()
                                + "` has the role `"
                                + role.value()
                                + "`, and this coach has no "
                                + lacking)
                .mend("Take out what the coach no longer has, or describe what the part belongs to."));
    }
}
