package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.Compared;
import bayfolio.edition.State;
import bayfolio.model.Refit;
import bayfolio.model.Unit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A thing of the coach that a change is about, and what has become of it.
 *
 * @param day on which that was done, by the refits of the coach; empty where none names it
 */
record Touched(Change.Thing thing, How how, Optional<LocalDate> day) {
    /** What has become of it, as far as somebody who stands before it can see. */
    enum How {
        ADDED,
        REMOVED,
        /** Another thing does what it did. */
        REPLACED,
        MOVED,
        /** It looks otherwise. */
        LOOKS,
        /** A refit names it. */
        REFITTED,
        /** Nothing that can be seen. */
        UNSEEN;

        /** Whether the thing itself is another one, or elsewhere. */
        boolean another() {
            return this == REMOVED || this == REPLACED || this == MOVED || this == REFITTED;
        }
    }

    /** Facts by which one tells the look of a thing. */
    private static final Set<String> LOOKS = Set.of(
            "make",
            "kind",
            "what",
            "contents",
            "plate",
            "label",
            "capacity-plate",
            "lamp",
            "twins",
            "on-look",
            "off-look",
            "on-pose",
            "off-pose",
            "open-look",
            "shut-look",
            "out-look",
            "in-look",
            "locked-look",
            "fitting",
            "coupling",
            "cap",
            "display",
            "marks",
            "second-door",
            "grab-handle",
            "latch",
            "light");

    private static final String REFITS = State.way(Unit.REFITS.name(), "");

    static List<Touched> by(Change change, Compared compared) {
        List<Touched> touched = new ArrayList<>();
        if (change instanceof Change.Added added) {
            touched.add(of(added.thing(), How.ADDED, compared));
        } else if (change instanceof Change.Removed removed) {
            touched.add(of(removed.thing(), How.REMOVED, compared));
        } else if (change instanceof Change.Renamed renamed) {
            touched.add(of(renamed.thing(), renamed.by() == Change.By.ROLE ? How.REPLACED : How.UNSEEN, compared));
        } else if (change instanceof Change.Moved moved) {
            boolean elsewhere =
                    moved.values().stream().anyMatch(it -> !it.before().isEmpty() && !Measured.is(State.key(it.way())))
                            || new Measured(compared).whereAnotherWas(moved.thing());
            touched.add(of(moved.thing(), elsewhere ? How.MOVED : How.UNSEEN, compared));
        } else if (change instanceof Change.Relabelled relabelled) {
            touched.add(of(relabelled.thing(), how(relabelled.value()), compared));
        } else if (change instanceof Change.AtPickup atPickup) {
            touched.add(of(atPickup.thing(), How.UNSEEN, compared));
        } else if (change instanceof Change.ValueChanged fact) {
            String way = fact.value().way();
            if (isOfARefit(way) && State.key(way).equals(Refit.THINGS.name())) {
                things(way, compared).forEach(it -> touched.add(of(it, How.REFITTED, compared)));
            } else {
                around(way, compared).ifPresent(it -> touched.add(of(it, how(fact.value()), compared)));
            }
        }
        return List.copyOf(touched);
    }

    private static How how(Change.Value value) {
        // What was left out so far looks as it did.
        return LOOKS.contains(State.key(value.way())) && !value.before().isEmpty() ? How.LOOKS : How.UNSEEN;
    }

    /** What a refit names, as far as it did not name it before. */
    private static Stream<Change.Thing> things(String way, Compared compared) {
        List<String> before = compared.before().facts().getOrDefault(way, List.of());
        return compared.after().references().stream()
                .filter(reference -> reference.way().equals(way))
                .flatMap(reference -> reference.ids().stream()
                        .filter(id -> !before.contains(id))
                        .flatMap(id ->
                                reference.kinds().stream().flatMap(kind -> compared.after().thing(kind, id).stream())));
    }

    private static Optional<Change.Thing> around(String way, Compared compared) {
        return compared.after().around(way).or(() -> compared.before().around(way));
    }

    private static Touched of(Change.Thing thing, How how, Compared compared) {
        return new Touched(thing, how, day(thing, compared.after()));
    }

    /** The newest day on which the coach was changed there. */
    private static Optional<LocalDate> day(Change.Thing thing, State after) {
        return after.references().stream()
                .filter(reference -> reference.way().startsWith(REFITS) && reference.leadsTo(thing))
                .flatMap(reference -> refit(reference.way(), after).stream())
                .max(LocalDate::compareTo);
    }

    /** The day of the refit that a fact is of. */
    static Optional<LocalDate> refit(String way, State state) {
        return state.day(State.beside(way, Refit.ON.name()));
    }

    static boolean isOfARefit(String way) {
        return way.startsWith(REFITS);
    }
}
