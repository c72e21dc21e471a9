package bayfolio.reckon.battery;

import bayfolio.measure.AmpHours;
import bayfolio.measure.Amps;
import bayfolio.measure.Seconds;
import bayfolio.measure.Share;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A full battery drawn down by one steady current after another. Each takes the share of the time that it would need
 * alone, and the shares are added up, as Miner's rule does for wear.
 */
public record Discharge(Peukert battery, List<Run> runs) {
    /** Shares are added up, so what reaches the limit exactly may lie a hair below it. */
    private static final double HAIR = 1e-9;

    /** A steady current for a time. */
    public record Run(Amps current, Seconds time) {
        public AmpHours drawn() {
            return new AmpHours(current.value() * time.value() / 3600);
        }
    }

    public Discharge {
        runs = runs.stream()
                .filter(run -> run.current().value() > 0 && run.time().value() > 0)
                .toList();
    }

    /**
     * All begin at the same moment and end one by one. No other order draws the battery down faster, as the strongest
     * currents meet.
     */
    public static Discharge together(Peukert battery, List<Run> together) {
        List<Run> left = new ArrayList<>(together);
        left.sort(Comparator.comparingDouble(run -> run.time().value()));
        List<Run> runs = new ArrayList<>();
        double begun = 0;
        for (int ended = 0; ended < left.size(); ended++) {
            double end = left.get(ended).time().value();
            double current = left.subList(ended, left.size()).stream()
                    .mapToDouble(run -> run.current().value())
                    .sum();
            runs.add(new Run(new Amps(current), new Seconds(end - begun)));
            begun = end;
        }
        return new Discharge(battery, runs);
    }

    /** The part of the battery that is used; more than 1 where it would be empty before the end. */
    public double used() {
        return runs.stream().mapToDouble(this::used).sum();
    }

    private double used(Run run) {
        return run.time().value() / battery.lasts(run.current()).value();
    }

    /** What is left at the end, at least nothing. */
    public Share left() {
        return new Share(Math.max(0, 1 - used()));
    }

    /** The ampere-hours that flow, whatever share of the battery they count for. */
    public AmpHours drawn() {
        return new AmpHours(
                runs.stream().mapToDouble(run -> run.drawn().value()).sum());
    }

    /** After which time that share is used; empty where it never is. */
    public Optional<Seconds> until(Share limit) {
        double open = limit.value();
        double time = 0;
        for (Run run : runs) {
            double share = used(run);
            if (share >= open - HAIR) {
                return Optional.of(new Seconds(time + run.time().value() * Math.min(1, open / share)));
            }
            open -= share;
            time += run.time().value();
        }
        return Optional.empty();
    }
}
