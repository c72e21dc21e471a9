package bayfolio.reckon.weight;

import bayfolio.measure.Kilograms;
import bayfolio.measure.Meters;

/** The least that a European motor caravan must be able to carry for the things of its passengers. */
public final class MinimumPayload {
    private static final double KILOGRAMS =
            Person.TABLE.number("minimum-payload.kilograms").value();

    private MinimumPayload() {}

    /**
     * {@code 10 (n + L)} kilograms: Regulation (EU) 2021/535 Annex XIII, as a motorhome maker quotes it.
     *
     * @param people the driver too
     */
    public static Kilograms of(int people, Meters length) {
        return new Kilograms(KILOGRAMS * (people + length.value()));
    }
}
