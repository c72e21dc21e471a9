package bayfolio.reckon.power;

import bayfolio.measure.Amps;
import bayfolio.model.Load;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A motor that is started on a supply: what it takes for a moment, with what runs on its own leg. What runs on the other
 * leg takes nothing from a start.
 *
 * @param running other motors that run on that leg already
 * @param leg the one that has most to carry, counted from 1
 * @param moment as it flows, without a factor for hours; absent where the supply does not carry the motor even alone
 */
public record Starting(Draw motor, List<Draw> running, int leg, Optional<Amps> moment, Turn turn) {
    /** When it is started, on a supply of which nobody knows what it gives for a moment. */
    public enum Turn {
        FIRST,
        /** After those above, which go on running. */
        LATER,
        /** It does not run together with those above. */
        NOT_BESIDE
    }

    public Starting {
        running = List.copyOf(running);
    }

    /** All starts on a supply, the heaviest first; those that it never carries last. */
    public static List<Starting> all(LoadSharing way) {
        List<Draw> motors = way.switched().stream()
                .filter(draw -> draw.load().facts().has(Load.START_AMPS))
                .sorted(Comparator.comparingDouble((Draw draw) -> -surge(draw)))
                .toList();
        List<Draw> carried =
                motors.stream().filter(motor -> way.fits(List.of(motor))).toList();
        List<Starting> starts =
                new ArrayList<>(way.feed().surge().isPresent() ? beside(carried, way) : inTurn(carried, way));
        motors.stream()
                .filter(motor -> !carried.contains(motor))
                .forEach(motor -> starts.add(new Starting(motor, List.of(), 1, Optional.empty(), Turn.NOT_BESIDE)));
        return starts;
    }

    /** Each alone, beside each other one that runs on its leg, and beside all of them. */
    private static List<Starting> beside(List<Draw> motors, LoadSharing way) {
        List<Starting> starts = new ArrayList<>();
        for (Draw motor : motors) {
            List<Draw> others = motors.stream()
                    .filter(other -> !other.equals(motor) && way.meet(motor, other))
                    .toList();
            Stream<List<Draw>> few =
                    Stream.concat(Stream.of(List.<Draw>of()), others.stream().map(List::of));
            Stream.concat(few, Stream.of(others).filter(all -> all.size() > 1))
                    .filter(running -> way.fits(with(running, motor)))
                    .forEach(running -> starts.add(of(motor, running, way, Turn.LATER)));
        }
        return starts;
    }

    /** One after the other, as long as they run together. */
    private static List<Starting> inTurn(List<Draw> motors, LoadSharing way) {
        List<Starting> starts = new ArrayList<>();
        List<Draw> running = new ArrayList<>();
        for (Draw motor : motors) {
            if (way.fits(with(running, motor))) {
                Turn turn = running.isEmpty() ? Turn.FIRST : Turn.LATER;
                List<Draw> met =
                        running.stream().filter(other -> way.meet(motor, other)).toList();
                starts.add(of(motor, met, way, turn));
                running.add(motor);
            } else {
                starts.add(of(motor, List.of(), way, Turn.NOT_BESIDE));
            }
        }
        return starts;
    }

    private static Starting of(Draw motor, List<Draw> running, LoadSharing way, Turn turn) {
        int leg = way.legs(motor).stream()
                .max(Comparator.comparingDouble(each -> flows(each, running, way)))
                .orElseThrow();
        Amps moment = new Amps(surge(motor) + flows(leg, running, way));
        return new Starting(motor, running, leg, Optional.of(moment), turn);
    }

    /** What a leg carries with these and with what is always on. */
    private static double flows(int leg, List<Draw> running, LoadSharing way) {
        return Draw.amps(Stream.concat(way.always().stream(), running.stream())
                        .filter(draw -> way.legs(draw).contains(leg))
                        .toList())
                .value();
    }

    private static double surge(Draw motor) {
        return motor.load().facts().get(Load.START_AMPS).value();
    }

    private static List<Draw> with(List<Draw> running, Draw motor) {
        return Stream.concat(running.stream(), Stream.of(motor)).toList();
    }
}
