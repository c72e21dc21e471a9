package bayfolio.check.feature;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Appliance;
import bayfolio.model.Engine;
import bayfolio.model.Generator;
import bayfolio.model.Tank;
import bayfolio.model.Unit;
import bayfolio.source.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags an engine, a generator or a heater that burns what no tank of the coach holds. */
public final class FuelWithoutTank implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        List<Finding> findings = new ArrayList<>();
        if (unit.tanks().stream().noneMatch(tank -> isFuel(tank.contents()))) {
            return findings.stream(); // a coach whose fuel is not described at all
        }
        unit.facts()
                .find(Unit.ENGINE)
                .flatMap(engine -> engine.facts().located(Engine.FUEL))
                .filter(fuel -> fuel.value() != Engine.Fuel.ELECTRIC)
                .flatMap(fuel -> check("the engine", fuel, unit))
                .ifPresent(findings::add);
        unit.generator()
                .flatMap(generator -> generator.facts().located(Generator.FUEL))
                .flatMap(fuel -> check("the generator", fuel, unit))
                .ifPresent(findings::add);
        for (Appliance appliance : unit.appliances()) {
            appliance.facts().find(Appliance.ENERGY).orElse(List.of()).stream()
                    .filter(energy -> energy.value() == Appliance.Energy.DIESEL)
                    .flatMap(energy -> check("appliance `" + appliance.id() + "`", energy, unit).stream())
                    .forEach(findings::add);
        }
        return findings.stream();
    }

    private static boolean isFuel(Tank.Contents contents) {
        return switch (contents) {
            case GASOLINE, DIESEL, LP_GAS -> true;
            case FRESH, GRAY, BLACK, CASSETTE, EXHAUST_FLUID -> false;
        };
    }

    /** Fuels and contents of tanks go by the same words. */
    private static Optional<Finding> check(String burner, Located<? extends Enum<?>> fuel, Unit unit) {
        String word = Type.word(fuel.value());
        boolean onBoard =
                unit.tanks().stream().map(tank -> Type.word(tank.contents())).anyMatch(word::equals);
        return onBoard
                ? Optional.empty()
                : Optional.of(Finding.error(
                                "fuel-without-tank",
                                fuel.at(),
                                burner + " burns `" + word + "`, and no tank of this coach holds it")
                        .mend("Correct the fuel, or the contents of the tank, its filler and its label."));
    }
}
