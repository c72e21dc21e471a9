package bayfolio.reckon.power;

import bayfolio.measure.Amps;
import bayfolio.measure.Volts;
import bayfolio.measure.Watts;

/**
 * How power comes out of a generator.
 *
 * @param volts of one leg, above zero
 * @param legs above zero
 */
public record LegRating(Volts volts, int legs) {
    public LegRating {
        if (volts.value() <= 0 || legs <= 0) {
            throw new IllegalArgumentException(legs + " legs of " + volts);
        }
    }

    /** Watts divided by volts and legs: a 10 kW set of two legs of 120 V gives 41.7 A on each. */
    public Amps amps(Watts power) {
        return new Amps(power.value() / (volts.value() * legs));
    }
}
