package bayfolio.reckon;

import bayfolio.measure.Amps;
import bayfolio.measure.Share;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;
import bayfolio.model.Inverter;
import bayfolio.model.Unit;

/**
 * What an inverter draws from the batteries.
 *
 * @param volts of the batteries, more than nothing
 * @param efficiency what comes out of what goes in, more than nothing
 * @param idle what it takes while it is on, beside what it passes on
 */
public record Inverting(Volts volts, Share efficiency, Watts idle) {
    /** The planning figure of product manuals, between 85 and 95 %. */
    public static final Share USUAL_EFFICIENCY = new Share(0.90);

    /** Taken for planning, between 15 and 40 W for one of 2 to 3 kW; no published figure. */
    public static final Watts USUAL_IDLE = new Watts(30);

    public Inverting {
        if (volts.value() <= 0 || efficiency.value() <= 0) {
            throw new IllegalArgumentException("no inverter: " + volts + ", " + efficiency);
        }
    }

    public static Inverting of(Unit unit, Volts volts) {
        return new Inverting(
                volts,
                unit.facts()
                        .find(Unit.INVERTER)
                        .flatMap(it -> it.facts().find(Inverter.EFFICIENCY))
                        .filter(share -> share.value() > 0)
                        .orElse(USUAL_EFFICIENCY),
                unit.facts()
                        .find(Unit.INVERTER)
                        .flatMap(it -> it.facts().find(Inverter.IDLE_DRAW))
                        .orElse(USUAL_IDLE));
    }

    /** {@code I = P / (V eta)}, without what it takes for itself. */
    public Amps draws(Watts given) {
        return new Amps(given.value() / (volts.value() * efficiency.value()));
    }

    public Amps idles() {
        return new Amps(idle.value() / volts.value());
    }
}
