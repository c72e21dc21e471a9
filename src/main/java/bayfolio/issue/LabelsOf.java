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
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
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
        compared.after().parts().values().stream()
                .filter(part -> part.kind().equals("label"))
                .filter(this::isOtherwise)
                .forEach(part -> reworded.put(part.id(), tellers(part.id())));
    }

    private boolean isOtherwise(Part label) {
        return Optional.ofNullable(compared.before().parts().get(label.id()))
                .filter(before -> !before.text().equals(label.text()))
                .isPresent();
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
        Optional<Consequence.Label> off = labelled(compared.before(), thing)
                .map(it -> new Consequence.Label(Act.SCRAPE_OFF, it, Whereabouts.of(it, compared.before())));
        Optional<Consequence.Label> on = labelled(compared.after(), thing)
                .map(it -> new Consequence.Label(Act.STICK_ON, it, Whereabouts.of(it, compared.after())));
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
                    ? labelled(compared.after(), relabelled.thing()).map(this::anew).stream()
                    : Stream.empty();
        }
        return changed.parts().stream()
                .filter(id -> reworded.getOrDefault(id, Set.of()).contains(changed))
                .filter(id -> !(changed.change() instanceof Change.Renamed) || isPrintedOtherwise(id))
                .flatMap(id -> Objects.requireNonNull(compared.after().parts().get(id)).links().stream())
                .distinct()
                .flatMap(link -> thing(link).stream())
                .flatMap(thing -> labelled(compared.after(), thing).stream())
                .map(this::anew);
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
