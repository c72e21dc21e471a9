package bayfolio.reckon.battery;

import bayfolio.measure.Amps;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.model.Inverter;
import bayfolio.model.Unit;
import bayfolio.reckon.Given;
import bayfolio.reckon.Published;
import java.util.Optional;

/**
 * What an inverter draws from the batteries.
 *
 * @param volts of the batteries, more than nothing
 * @param efficiency what comes out of what goes in, more than nothing
 * @param idle what it takes while it is on, beside what it passes on
 */
public record Inverting(Volts volts, Given<Share> efficiency, Given<Watts> idle) {
    public static final Published<Share> USUAL_EFFICIENCY =
            BatteryKind.TABLE.quantity("inverter.efficiency", Share.SCALE);
    public static final Published<Watts> USUAL_IDLE = BatteryKind.TABLE.quantity("inverter.idle", Watts.SCALE);

    public Inverting {
        if (volts.value() <= 0 || efficiency.value().value() <= 0) {
            throw new IllegalArgumentException("no inverter: " + volts + ", " + efficiency);
        }
    }

    public static Inverting of(Unit unit, Volts volts) {
        Optional<Inverter> inverter = unit.facts().find(Unit.INVERTER);
        return new Inverting(
                volts,
                inverter.map(it -> Given.of(it.facts(), Inverter.EFFICIENCY, USUAL_EFFICIENCY))
                        .filter(share -> share.value().value() > 0)
                        .orElseGet(() -> Given.usual(USUAL_EFFICIENCY)),
                inverter.map(it -> Given.of(it.facts(), Inverter.IDLE_DRAW, USUAL_IDLE))
                        .orElseGet(() -> Given.usual(USUAL_IDLE)));
    }

    /** {@code I = P / (V eta)}, without what it takes for itself. */
    public Amps draws(Watts given) {
        return new Amps(given.value() / (volts.value() * efficiency.value().value()));
    }

    public Amps idles() {
        return new Amps(idle.value().value() / volts.value());
    }
}
