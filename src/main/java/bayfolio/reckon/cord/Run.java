package bayfolio.reckon.cord;

import bayfolio.measure.Amps;
import bayfolio.measure.Meters;
import bayfolio.measure.Volts;
import java.util.List;

/** Cords one after the other between a post and a coach. */
public record Run(List<Stretch> stretches) {
    /**
     * One cord.
     *
     * @param length one way
     * @param ohmsPerMeter of one conductor
     */
    public record Stretch(Meters length, double ohmsPerMeter) {
        double ohms() {
            return length.value() * ohmsPerMeter;
        }
    }

    public Run {
        stretches = List.copyOf(stretches);
    }

    public static Run of(Stretch... stretches) {
        return new Run(List.of(stretches));
    }

    /** There and back: {@code 2 I L r}, over all stretches. So it is with one leg, or with direct current. */
    public Volts drop(Amps current) {
        return new Volts(2 * perLeg(current).value());
    }

    /** With the same current on both legs nothing comes back by the neutral: half of the loop, {@code I L r}. */
    public Volts perLeg(Amps current) {
        return new Volts(
                current.value() * stretches.stream().mapToDouble(Stretch::ohms).sum());
    }

    /**
     * The longest cord of one kind that loses no more than that.
     *
     * @param current above zero
     * @param ohmsPerMeter above zero
     */
    public static Meters longest(Amps current, double ohmsPerMeter, Volts mostLost) {
        return new Meters(mostLost.value() / (2 * current.value() * ohmsPerMeter));
    }
}
