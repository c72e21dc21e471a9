package bayfolio.reckon.battery;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import java.util.Optional;

/**
 * A battery that stands: it loses a share of what is left each month, and gives a steady current besides.
 *
 * @param monthly what a month of 30 days takes of what it holds, less than all
 * @param dailyDrain what a day of the steady current takes of the full battery; 0 where nothing draws
 */
public record SelfDischarge(Share monthly, double dailyDrain) {
    private static final double MONTH = 30;
    private static final double DAY = 86_400;

    public SelfDischarge {
        if (monthly.value() >= 1 || !(dailyDrain >= 0)) {
            throw new IllegalArgumentException(monthly + " a month, " + dailyDrain + " a day");
        }
    }

    /** What is left of a full battery, by itself and by the drain: {@code q' = -r q - d}. At least nothing. */
    public Share left(Seconds time) {
        double days = time.value() / DAY;
        double rate = rate();
        double left =
                rate > 0 ? (1 + dailyDrain / rate) * Math.exp(-rate * days) - dailyDrain / rate : 1 - dailyDrain * days;
        return new Share(Math.max(0, Math.min(1, left)));
    }

    /** The same in ampere-hours. */
    public AmpHours left(AmpHours full, Seconds time) {
        return new AmpHours(full.value() * left(time).value());
    }

    /** When a full battery has come down to that share; empty where it never does. */
    public Optional<Seconds> until(Share left) {
        double rate = rate();
        if (dailyDrain <= 0 && (rate <= 0 || left.value() <= 0)) {
            return Optional.empty();
        }
        double days = rate > 0
                ? Math.log((1 + dailyDrain / rate) / (left.value() + dailyDrain / rate)) / rate
                : (1 - left.value()) / dailyDrain;
        return Optional.of(new Seconds(days * DAY));
    }

    /** A day; such that the month comes out: {@code e^(-30 r) = 1 - monthly}. */
    private double rate() {
        return -Math.log1p(-monthly.value()) / MONTH;
    }
}
