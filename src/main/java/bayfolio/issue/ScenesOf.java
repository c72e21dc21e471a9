package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.State;
import bayfolio.model.Chapter;
import bayfolio.model.Film;
import java.util.stream.Stream;

/** Chapters of films about a thing, which were filmed before it was as it is. */
final class ScenesOf implements Consequent {
    private final Compared compared;
    private final Taken taken;

    ScenesOf(Compared compared, Taken taken) {
        this.compared = compared;
        this.taken = taken;
    }

    @Override
    public Stream<Consequence.Scene> of(Changed changed) {
        return changed.technical() || changed.change() instanceof Change.Renamed
                ? Touched.by(changed.change(), compared).stream()
                        .filter(it -> it.how() != Touched.How.UNSEEN && it.how() != Touched.How.ADDED)
                        .flatMap(this::scenes)
                : Stream.empty();
    }

    private Stream<Consequence.Scene> scenes(Touched touched) {
        // What is taken out is in no chapter afterward, or the check has told that.
        State state = touched.how() == Touched.How.REMOVED ? compared.before() : compared.after();
        return state.references().stream()
                .filter(reference ->
                        State.key(reference.way()).equals(Chapter.THING.name()) && reference.leadsTo(touched.thing()))
                .flatMap(reference -> reference.of().stream()
                        .filter(of -> of.kind().equals(Film.SHAPE.name()))
                        .filter(compared.after()::has)
                        .flatMap(film -> taken.redo(film, touched.day()).stream()
                                .map(redo -> new Consequence.Scene(
                                        film.id(), from(reference.way(), state), touched.thing(), redo))));
    }

    private static String from(String thing, State state) {
        return state.value(State.beside(thing, Chapter.FROM.name())).orElse("");
    }
}
