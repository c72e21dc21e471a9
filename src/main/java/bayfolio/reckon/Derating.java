package bayfolio.reckon;

import bayfolio.measure.Meters;
import bayfolio.measure.Share;
import bayfolio.measure.Watts;

/**
 * What thin air takes from a generator, evenly with altitude. Manuals differ in the slope and in the altitude where it
 * begins; heat takes more, which is not in here.
 *
 * @param loss of the rated output, with each step
 * @param step above zero
 * @param from nothing is lost up to there
 */
public record Derating(Share loss, Meters step, Meters from) {
    /** 3 % for 1,000 ft from sea level: a coach's manual of 2004, which makes 4,675 W of 5,500 W at 5,000 ft. */
    public static final Derating USUAL = new Derating(new Share(0.03), new Meters(304.8), new Meters(0));

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
