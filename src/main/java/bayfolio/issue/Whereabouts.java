package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.State;
import bayfolio.fact.Type;
import bayfolio.model.Side;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Where a thing is in one state, in the words of its writer. */
final class Whereabouts {
    private static final String INSIDE = Type.word(Side.INSIDE);

    private Whereabouts() {}

    /** {@code L6 Electric bay, on the rear wall}; empty where nothing is said. */
    static String of(Change.Thing thing, State state) {
        Optional<String> bay = state.value(thing, "in")
                .map(id ->
                        state.thing("compartment", id).map(Change.Thing::name).orElse(id));
        Optional<String> side =
                state.value(thing, "side").filter(it -> bay.isEmpty()).map(it -> it.equals(INSIDE) ? it : it + " side");
        return Stream.of(side, bay, state.value(thing, "where"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    /** The same to a hand's breadth, where those words are not enough: {@code left side, 12 ft from the front}. */
    static String exactly(Change.Thing thing, State state) {
        return Stream.of(
                        Optional.of(of(thing, state)).filter(it -> !it.isEmpty()),
                        state.value(thing, "panel"),
                        state.value(thing, "row").map(it -> "row " + it),
                        state.value(thing, "column").map(it -> "column " + it),
                        state.value(thing, "from-front").map(it -> it + " from the front"),
                        state.value(thing, "height").map(it -> it + " up"))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }
}
