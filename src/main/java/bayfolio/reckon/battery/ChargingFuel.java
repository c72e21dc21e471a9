package bayfolio.reckon.battery;

import bayfolio.measure.LitersPerHour;
import bayfolio.measure.Watts;

/**
 * What a generator burns at some load: on the line through its figures for half and for full load. Above half load that is
 * read off; below half it is drawn on, and never less than in proportion.
 *
 * @param rated output at full load, more than nothing
 */
public record ChargingFuel(Watts rated, LitersPerHour half, LitersPerHour full) {
    public ChargingFuel {
        if (rated.value() <= 0) {
            throw new IllegalArgumentException("no generator: " + rated);
        }
    }

    /** Of the rated output, at most all. */
    public double load(Watts power) {
        return Math.min(1, power.value() / rated.value());
    }

    /** Whether the load lies where no figure is known. */
    public boolean drawnOn(Watts power) {
        return load(power) < 0.5;
    }

    public LitersPerHour at(Watts power) {
        double twice = 2 * load(power);
        double line = half.value() + (full.value() - half.value()) * (twice - 1);
        return new LitersPerHour(twice < 1 ? Math.max(line, twice * half.value()) : line);
    }
}
