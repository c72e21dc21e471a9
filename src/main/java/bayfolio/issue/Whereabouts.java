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
}
