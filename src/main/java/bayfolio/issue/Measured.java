package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.Compared;
import bayfolio.edition.State;
import bayfolio.measure.Meters;
import bayfolio.measure.NotAQuantityException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Where a thing is on its side of the coach, as somebody has measured it. Measured anew, it is a little elsewhere and has not moved. */
final class Measured {
    private static final List<String> AXES = List.of("from-front", "height");

    private final Compared compared;

    Measured(Compared compared) {
        this.compared = compared;
    }

    /** Whether a fact is one of those figures. */
    static boolean is(String key) {
        return AXES.contains(key);
    }

    /** Whether a thing is where another one of its kind was: nobody measures so badly, the two have changed places. */
    boolean whereAnotherWas(Change.Thing thing) {
        return compared.after()
                .things(thing.kind())
                .filter(other -> !other.is(thing) && sameSide(thing, other))
                .anyMatch(other -> past(thing, other)
                        && far(thing, compared.after(), other, compared.before())
                                < far(thing, compared.after(), thing, compared.before()));
    }

    private boolean sameSide(Change.Thing thing, Change.Thing other) {
        return Stream.of(compared.before(), compared.after())
                .allMatch(state -> Set.of("side", "in").stream()
                        .allMatch(key -> state.value(thing, key).equals(state.value(other, key))));
    }

    /** What was behind it or above it is before it or below it now, or the other way round. */
    private boolean past(Change.Thing thing, Change.Thing other) {
        return AXES.stream()
                .anyMatch(axis ->
                        order(thing, other, axis, compared.before()) * order(thing, other, axis, compared.after()) < 0);
    }

    private static double order(Change.Thing thing, Change.Thing other, String axis, State state) {
        return Math.signum(apart(at(thing, axis, state), at(other, axis, state)));
    }

    private static double far(Change.Thing thing, State state, Change.Thing other, State otherState) {
        return AXES.stream()
                .mapToDouble(axis -> apart(at(thing, axis, state), at(other, axis, otherState)))
                .reduce(0, Math::hypot);
    }

    /** Nothing where one of them was not measured. */
    private static double apart(Optional<Double> one, Optional<Double> other) {
        return one.flatMap(a -> other.map(b -> a - b)).orElse(0.0);
    }

    private static Optional<Double> at(Change.Thing thing, String axis, State state) {
        return state.value(thing, axis).flatMap(text -> {
            try {
                return Optional.of(Meters.SCALE.parse(text).value());
            } catch (NotAQuantityException unreadable) {
                return Optional.empty();
            }
        });
    }
}
