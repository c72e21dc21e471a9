package bayfolio.reckon.fuel;

import bayfolio.measure.Meters;
import bayfolio.measure.Share;
import bayfolio.measure.Watts;
import bayfolio.reckon.Published;

/**
 * What thin air takes from a generator, evenly with altitude. Manuals differ in the slope and in the altitude where it
 * begins; heat takes more, which is not in here.
 *
 * @param loss of the rated output, with each step
 * @param step above zero
 * @param from nothing is lost up to there
 */
public record Derating(Share loss, Meters step, Meters from) {
    public static final Published<Share> USUAL_LOSS = FuelTank.TABLE.quantity("derating.loss", Share.SCALE);
    public static final Published<Meters> USUAL_STEP = FuelTank.TABLE.quantity("derating.step", Meters.SCALE);
    public static final Published<Meters> USUAL_FROM = FuelTank.TABLE.quantity("derating.from", Meters.SCALE);

    /** Where a generator's own manual is not known. */
    public static final Derating USUAL = new Derating(USUAL_LOSS.value(), USUAL_STEP.value(), USUAL_FROM.value());

    public Derating {
        if (step.value() <= 0) {
            throw new IllegalArgumentException("a step of altitude cannot be " + step);
        }
    }

    /** What is left of rated power; never less than nothing. */
    public Watts at(Meters altitude, Watts rated) {
        double above = Math.max(0, altitude.value() - from.value());
        return new Watts(rated.value() * Math.max(0, 1 - loss.value() * above / step.value()));
    }
}
