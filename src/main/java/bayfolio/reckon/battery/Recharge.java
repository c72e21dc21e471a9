package bayfolio.reckon.battery;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;

/**
 * Charging: with a steady current while the battery takes it; from the knee on it takes less and less, in line with what
 * is missing.
 *
 * @param capacity of the battery, more than nothing
 * @param current what the charger has for it, more than nothing
 * @param accepts the most that the battery takes below the knee, more than nothing
 * @param givesBack what can be drawn again of what is put in, more than nothing
 * @param knee how full it is when it begins to take less; 1 where it never does
 * @param charged how full is enough; less than 1 where there is a knee below 1
 */
public record Recharge(AmpHours capacity, Amps current, Amps accepts, Share givesBack, Share knee, Share charged) {
    private static final double HOUR = 3600;

    public Recharge {
        if (capacity.value() <= 0 || current.value() <= 0 || accepts.value() <= 0 || givesBack.value() <= 0) {
            throw new IllegalArgumentException("nothing to charge, or nothing to charge it with");
        }
        if (knee.value() < 1 && charged.value() >= 1) {
            throw new IllegalArgumentException("a battery with a knee is never quite full");
        }
    }

    /** The current at first. */
    public Amps strongest() {
        return new Amps(Math.min(current.value(), accepts.value()));
    }

    /** How long until it is charged; nothing where it is so already. */
    public Seconds time(AmpHours missing) {
        double from = Math.max(0, 1 - missing.value() / capacity.value());
        double bend = bend();
        double steady = Math.max(0, Math.min(bend, charged.value()) - from) * capacity.value();
        double hours = steady / (givesBack.value() * strongest().value());
        double falling = Math.max(from, bend);
        if (falling < charged.value()) {
            double slope = givesBack.value() * accepts.value() / (capacity.value() * (1 - knee.value()));
            hours += Math.log((1 - falling) / (1 - charged.value())) / slope;
        }
        return new Seconds(hours * HOUR);
    }

    /** How full it is when it takes no more than the charger has. */
    private double bend() {
        return 1 - (1 - knee.value()) * strongest().value() / accepts.value();
    }
}
