package bayfolio.check.electric;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.measure.Amps;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.model.Circuit;
import bayfolio.model.Load;
import bayfolio.model.Region;
import bayfolio.model.Unit;
import bayfolio.reckon.power.Draw;
import bayfolio.source.Place;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Flags a load whose watts are not its volts times its amps. More watts than that cannot be; fewer
 * may be the power factor of a motor and are only warned of.
 */
public final class WattsAgainstVoltsAndAmps implements Rule {
    private static final double TOLERANCE = 0.05 + 1e-9;

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        Unit unit = coach.unit();
        return unit.loads().stream()
                .flatMap(load -> Draw.circuit(load, unit).flatMap(it -> check(load, it, unit.region())).stream());
    }

    private static Optional<Finding> check(Load load, Circuit circuit, Region region) {
        Optional<Watts> watts = load.facts().find(Load.WATTS);
        Optional<Amps> amps = load.facts().find(Load.AMPS);
        if (watts.isEmpty() || amps.isEmpty()) {
            return Optional.empty();
        }
        Volts volts = Draw.volts(load, circuit);
        double product = volts.value() * amps.get().value();
        double off = watts.get().value() - product;
        if (Math.abs(off) <= TOLERANCE * product) {
            return Optional.empty();
        }
        String message = "load `%s` draws %s, and %s times %s is %s"
                .formatted(
                        load.id(),
                        watts.get().in(region.first()),
                        volts.in(region.first()),
                        amps.get().in(region.first()),
                        new Watts(product).in(region.first()));
        Place at = load.facts().at(Load.WATTS);
        Finding finding = off > 0
                ? Finding.error("watts-against-volts-and-amps", at, message)
                : Finding.warning("watts-against-volts-and-amps", at, message);
        return Optional.of(finding.mend("Read all three from one plate or one meter."));
    }
}
