package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.Part;
import bayfolio.edition.State;
import bayfolio.issue.Consequence.Act;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Labels on doors and beside switches: of what is gone, of what is new or elsewhere, and those that read otherwise. */
final class LabelsOf implements Consequent {
    private static final Set<String> LABELLED = Set.of("compartment", "switch");

    /** What is on a label, or decides whether there is one. */
    private static final Set<String> ON_LABELS = Set.of(
            "name",
            "access",
            "access-reason",
            "danger",
            "never-store",
            "keep-clear",
            "clearance",
            "when",
            "shut-look",
            "wrong-use",
            "needs",
            "work",
            "make",
            "on-pose",
            "off-pose");

    private static final Set<String> DRAWN = Set.of("make", "on-pose", "off-pose");

    private final Compared compared;

    /** Labels that read otherwise, by the names of their parts, with the changes that they are told with. */
    private final Map<String, Set<Changed>> reworded = new HashMap<>();

    LabelsOf(Compared compared) {
        this.compared = compared;
        Stream.of(compared.before(), compared.after())
                .flatMap(LabelsOf::labels)
                .filter(this::isOtherwise)
                .forEach(part -> reworded.computeIfAbsent(part.id(), this::tellers));
    }

    private static Stream<Part> labels(State state) {
        return state.parts().values().stream().filter(part -> part.kind().equals("label"));
    }

    /** Of a bay that goes right through one more door has a label, or one less. */
    private boolean isOtherwise(Part label) {
        Part before = compared.before().parts().get(label.id());
        Part after = compared.after().parts().get(label.id());
        return before == null || after == null || !before.text().equals(after.text());
    }

    /** All facts of a thing touch its label; it is told with those that stand on it, where there are any. */
    private Set<Changed> tellers(String label) {
        List<Changed> all = compared.changes().stream()
                .filter(changed -> changed.parts().contains(label))
                .toList();
        List<Changed> best = all.stream()
                .filter(changed -> changed.change() instanceof Change.Relabelled it
                                && ON_LABELS.contains(State.key(it.value().way()))
                        || changed.change() instanceof Change.ValueChanged fact
                                && ON_LABELS.contains(State.key(fact.value().way()))
                        || changed.change() instanceof Change.TextChanged)
                .toList();
        return Set.copyOf(best.isEmpty() ? all : best);
    }

    @Override
    public Stream<Consequence.Label> of(Changed changed) {
        if (!changed.technical() && !(changed.change() instanceof Change.Renamed)) {
            return Stream.empty();
        }
        List<Consequence.Label> moved = Touched.by(changed.change(), compared).stream()
                .flatMap(touched -> moved(touched, changed.change()))
                .toList();
        return moved.isEmpty() ? reworded(changed) : moved.stream();
    }

    private Stream<Consequence.Label> moved(Touched touched, Change change) {
        Change.Thing thing = touched.thing();
        Optional<Consequence.Label> off = off(thing);
        Optional<Consequence.Label> on = on(thing);
        if (change instanceof Change.ValueChanged fact
                && DRAWN.contains(State.key(fact.value().way()))) {
            // Beside a switch stands how it looks, or nothing.
            return off.isPresent() && on.isPresent()
                    ? on.map(it -> anew(it.thing())).stream()
                    : Stream.of(off, on).flatMap(Optional::stream);
        }
        return switch (touched.how()) {
            case ADDED, REMOVED, REPLACED, MOVED -> Stream.of(off, on).flatMap(Optional::stream);
            default -> Stream.empty();
        };
    }

    private Optional<Consequence.Label> off(Change.Thing thing) {
        return labelled(compared.before(), thing)
                .map(it -> new Consequence.Label(Act.SCRAPE_OFF, it, place(it, compared.before(), compared.after())));
    }

    private Optional<Consequence.Label> on(Change.Thing thing) {
        return labelled(compared.after(), thing)
                .map(it -> new Consequence.Label(Act.STICK_ON, it, place(it, compared.after(), compared.before())));
    }

    /** So that one knows which of two that have changed places is meant. */
    private static String place(Change.Thing thing, State state, State other) {
        String place = Whereabouts.of(thing, state);
        return labelled(other, thing).isPresent()
                        && Whereabouts.of(thing, other).equals(place)
                ? Whereabouts.exactly(thing, state)
                : place;
    }

    /** The thing as a state has it, where it had a label there. */
    private static Optional<Change.Thing> labelled(State state, Change.Thing thing) {
        return state.thing(thing.kind(), thing.id()).filter(it -> LABELLED.contains(it.kind()) && isStuckOn(it, state));
    }

    /** Beside a switch a label shows how it looks ON and OFF; where that is not said there is none. */
    private static boolean isStuckOn(Change.Thing thing, State state) {
        return thing.kind().equals("compartment")
                || state.value(thing, "on-pose").isPresent()
                        && state.value(thing, "off-pose").isPresent();
    }

    /** What is on it is otherwise. */
    private Stream<Consequence.Label> reworded(Changed changed) {
        if (!compared.after().composed() || !compared.before().composed()) {
            return changed.change() instanceof Change.Relabelled relabelled
                            && State.key(relabelled.value().way()).equals("name")
                    ? labels(relabelled.thing())
                    : Stream.empty();
        }
        return changed.parts().stream()
                .filter(id -> reworded.getOrDefault(id, Set.of()).contains(changed))
                .filter(id -> !(changed.change() instanceof Change.Renamed) || isPrintedOtherwise(id))
                .flatMap(id -> Stream.of(compared.after(), compared.before())
                        .flatMap(state -> Optional.ofNullable(state.parts().get(id)).stream())
                        .limit(1))
                .flatMap(label -> label.links().stream())
                .distinct()
                .flatMap(link -> thing(link).stream())
                .flatMap(this::labels);
    }

    /** What is done with the labels of a thing that stays where it is. */
    private Stream<Consequence.Label> labels(Change.Thing thing) {
        // Nobody swaps `L2` for `L2` who sees one there: it is told what is to go, and where.
        return isAnothers(thing) || !names(thing, compared.before()).equals(names(thing, compared.after()))
                ? Stream.of(off(thing), on(thing)).flatMap(Optional::stream)
                : labelled(compared.after(), thing).map(this::anew).stream();
    }

    /** Whether what a label says and leads to by now is what another one says that is stuck on the coach. */
    private boolean isAnothers(Change.Thing thing) {
        Set<String> addresses = labels(compared.after())
                .filter(label -> isOf(thing, label))
                .map(LabelsOf::address)
                .collect(Collectors.toSet());
        return LABELLED.stream()
                        .flatMap(compared.before()::things)
                        .filter(other -> !other.is(thing))
                        .anyMatch(other -> compared.after()
                                .thing(thing.kind(), thing.id())
                                .filter(it -> it.name().equals(other.name()))
                                .isPresent())
                || labels(compared.before())
                        .anyMatch(label -> !isOf(thing, label) && addresses.contains(address(label)));
    }

    private static boolean isOf(Change.Thing thing, Part label) {
        return label.links().contains(thing.kind() + ":" + thing.id());
    }

    private static Set<String> names(Change.Thing thing, State state) {
        return labels(state).filter(label -> isOf(thing, label)).map(Part::id).collect(Collectors.toSet());
    }

    private static String address(Part label) {
        return label.text().substring(label.text().lastIndexOf(' ') + 1);
    }

    /** But for its address: the one under the former id leads on. */
    private boolean isPrintedOtherwise(String id) {
        return !printed(compared.before().parts().get(id))
                .equals(printed(compared.after().parts().get(id)));
    }

    private static String printed(@Nullable Part label) {
        String text = label == null ? "" : label.text();
        return text.substring(0, Math.max(0, text.lastIndexOf(' ')));
    }

    private Optional<Change.Thing> thing(String link) {
        int colon = link.indexOf(':');
        return compared.after().thing(link.substring(0, Math.max(0, colon)), link.substring(colon + 1));
    }

    private Consequence.Label anew(Change.Thing thing) {
        return new Consequence.Label(Act.PRINT_ANEW, thing, Whereabouts.of(thing, compared.after()));
    }
}
