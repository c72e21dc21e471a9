package bayfolio.reckon.battery;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;

/**
 * How long a battery gives a steady current: Peukert's rule in its rated form, {@code t = H (C / (I H))^k}. Of what is
 * rated for one ampere {@code C / I^k} comes out, the other form.
 *
 * <p>It holds for steady currents and temperatures (J. Power Sources 155 (2006) 395-400) and is off by about 10 %. Below
 * the rated current its effect fades, and no more than the rated capacity is counted on.
 *
 * @param rated capacity, more than nothing
 * @param over the time in which a discharge at the rated current takes it, more than nothing
 * @param exponent 1 or more
 */
public record Peukert(AmpHours rated, Seconds over, double exponent) {
    private static final double HOUR = 3600;

    public Peukert {
        if (rated.value() <= 0 || over.value() <= 0 || !(exponent >= 1)) {
            throw new IllegalArgumentException("no battery: " + rated + " over " + over + ", exponent " + exponent);
        }
    }

    /** Rated by what it gives at one ampere. */
    public static Peukert atOneAmpere(AmpHours capacity, double exponent) {
        return new Peukert(capacity, new Seconds(capacity.value() * HOUR), exponent);
    }

    /** The same battery when it holds less, as in the cold. */
    public Peukert holding(Share of) {
        return new Peukert(new AmpHours(rated.value() * of.value()), over, exponent);
    }

    /** Up to this one, no current takes more than it gives. */
    public Amps ratedCurrent() {
        return new Amps(rated.value() * HOUR / over.value());
    }

    /** @throws IllegalArgumentException without a current, for that would last for ever */
    public Seconds lasts(Amps current) {
        if (current.value() <= 0) {
            throw new IllegalArgumentException(current + " empties nothing");
        }
        double hours = over.value() / HOUR;
        double ratio = rated.value() / (current.value() * hours);
        return new Seconds((ratio >= 1 ? rated.value() / current.value() : hours * Math.pow(ratio, exponent)) * HOUR);
    }

    /** What can be drawn at that current until it is empty. */
    public AmpHours gives(Amps current) {
        return new AmpHours(current.value() * lasts(current).value() / HOUR);
    }
}
