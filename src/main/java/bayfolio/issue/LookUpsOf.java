package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.State;
import bayfolio.model.Film;
import bayfolio.model.Photo;
import bayfolio.model.Refit;
import bayfolio.model.Size;
import bayfolio.model.Unit;
import bayfolio.model.Weighing;
import bayfolio.model.Weights;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What somebody has to look up on the coach: a plate that is to read otherwise, what hangs on something that is another one
 * now or was taken out, places that are told by something that has moved, and measures that a refit has changed.
 */
final class LookUpsOf implements Consequent {
    private static final Set<String> READ = Set.of("plate", "label");
    private static final Set<String> PICTURES = Set.of(Photo.SHAPE.name(), Film.SHAPE.name());
    private static final String CHECKED = "checked-on";
    private static final String WHERE = "where";

    private final Compared compared;
    private final LocalDate since;

    LookUpsOf(Compared compared, LocalDate since) {
        this.compared = compared;
        this.since = since;
    }

    @Override
    public Stream<Consequence.LookUp> of(Changed changed) {
        if (!changed.technical() && !(changed.change() instanceof Change.Renamed)) {
            return Stream.empty();
        }
        return Stream.of(
                        plate(changed.change()),
                        measures(changed.change()),
                        Touched.by(changed.change(), compared).stream()
                                .filter(it -> it.how().another())
                                .flatMap(this::hanging))
                .flatMap(it -> it)
                .distinct();
    }

    private Stream<Consequence.LookUp> plate(Change change) {
        if (change instanceof Change.Relabelled relabelled
                && READ.contains(State.key(relabelled.value().way()))
                && compared.after().has(relabelled.thing())) {
            String key = State.key(relabelled.value().way());
            Change.Value value = relabelled.value();
            return Stream.of(new Consequence.LookUp(
                    relabelled.thing().toString(),
                    value.after().isEmpty()
                            ? "whether it has no " + key + " any more"
                            : "whether its " + key + " reads `" + value.after() + "`"
                                    + (value.before().isEmpty() ? "" : " and no longer `" + value.before() + "`")));
        }
        return Stream.empty();
    }

    private Stream<Consequence.LookUp> measures(Change change) {
        if (!(change instanceof Change.ValueChanged fact
                && Touched.isOfARefit(fact.value().way())
                && State.key(fact.value().way()).equals(Refit.MEASURES.name()))) {
            return Stream.empty();
        }
        State after = compared.after();
        Optional<LocalDate> day = Touched.refit(fact.value().way(), after);
        List<String> measures = after.facts().getOrDefault(fact.value().way(), List.of());
        return Stream.of(
                        measure(
                                measures.contains("size"),
                                after.day(State.way(Unit.SIZE.name(), Size.MEASURED_ON.name())),
                                day,
                                "how long, wide and high it is"),
                        measure(
                                measures.contains("weights"),
                                after.day(
                                        State.way(Unit.WEIGHTS.name(), Weights.AS_WEIGHED.name(), Weighing.ON.name())),
                                day,
                                "what it weighs"))
                .flatMap(Optional::stream);
    }

    private static Optional<Consequence.LookUp> measure(
            boolean wanted, Optional<LocalDate> measured, Optional<LocalDate> refit, String what) {
        boolean since =
                measured.isPresent() && refit.isPresent() && !measured.get().isBefore(refit.get());
        return wanted && !since ? Optional.of(new Consequence.LookUp("coach", what)) : Optional.empty();
    }

    private Stream<Consequence.LookUp> hanging(Touched touched) {
        Stream<Consequence.LookUp> itself = Stream.of(touched.thing())
                .filter(it -> touched.how() == Touched.How.REFITTED && unseen(it, touched.day()))
                .map(it -> new Consequence.LookUp(it.toString(), "whether all is so that is said of it"));
        return Stream.of(itself, referring(touched), told(touched)).flatMap(it -> it);
    }

    /** What names it by its id; what is merely elsewhere still does what it did. */
    private Stream<Consequence.LookUp> referring(Touched touched) {
        State state = touched.how() == Touched.How.REMOVED ? compared.before() : compared.after();
        return touched.how() == Touched.How.MOVED
                ? Stream.empty()
                : state.references().stream()
                        .filter(reference -> reference.leadsTo(touched.thing()))
                        .flatMap(reference -> reference.of().stream()
                                .filter(of -> isToBeSeen(of, reference.way(), touched))
                                .map(of -> new Consequence.LookUp(
                                        of.toString(),
                                        touched.how() == Touched.How.REMOVED
                                                ? "what it is like without " + touched.thing()
                                                : "whether `" + State.key(reference.way()) + "` is still so with "
                                                        + touched.thing())));
    }

    /** What is told by its name: {@code above the house battery switch}. */
    private Stream<Consequence.LookUp> told(Touched touched) {
        String name = touched.thing().name().toLowerCase(Locale.ROOT);
        if (touched.how() == Touched.How.REFITTED || name.indexOf(' ') < 0) {
            return Stream.empty();
        }
        return compared.after().facts().entrySet().stream()
                .filter(fact -> State.text(fact.getKey()).isPresent())
                .filter(fact -> touched.how() == Touched.How.REMOVED
                        || State.key(fact.getKey()).equals(WHERE))
                .filter(fact -> String.join(" ", fact.getValue())
                        .toLowerCase(Locale.ROOT)
                        .contains(name))
                .flatMap(fact -> compared.after().around(fact.getKey()).stream()
                        .filter(of -> isToBeSeen(of, fact.getKey(), touched))
                        .map(of -> new Consequence.LookUp(
                                of.toString(),
                                "whether `" + State.key(fact.getKey()) + "` is still so, which names "
                                        + touched.thing())));
    }

    private boolean isToBeSeen(Change.Thing of, String way, Touched touched) {
        return !PICTURES.contains(of.kind())
                && compared.after().has(of)
                && compared.before().has(of)
                && !of.is(touched.thing())
                // Whoever has told it anew has been there.
                && Objects.equals(
                        compared.before().facts().get(way),
                        compared.after().facts().get(way))
                && unseen(of, touched.day());
    }

    /** Whether nobody has compared it with the coach since. */
    private boolean unseen(Change.Thing thing, Optional<LocalDate> day) {
        Optional<LocalDate> checked =
                compared.after().day(thing, CHECKED).or(() -> compared.after().day(Unit.CHECKED_ON.name()));
        return checked.filter(it -> day.isPresent() ? !it.isBefore(day.get()) : it.isAfter(since))
                .isEmpty();
    }
}
