package bayfolio.issue;

import bayfolio.edition.Change;
import bayfolio.edition.Changed;
import bayfolio.edition.Compared;
import bayfolio.edition.State;
import bayfolio.issue.Consequence.Redo;
import bayfolio.model.Photo;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** Photos that a thing lists, or that point to it, and that were taken before it was as it is. */
final class PicturesOf implements Consequent {
    private static final String PHOTO = Photo.SHAPE.name();

    private final Compared compared;
    private final Taken taken;

    PicturesOf(Compared compared, Taken taken) {
        this.compared = compared;
        this.taken = taken;
    }

    @Override
    public Stream<Consequence.Picture> of(Changed changed) {
        return changed.technical() || changed.change() instanceof Change.Renamed
                ? Touched.by(changed.change(), compared).stream().flatMap(this::pictures)
                : Stream.empty();
    }

    private Stream<Consequence.Picture> pictures(Touched touched) {
        if (touched.how() == Touched.How.ADDED) {
            // What is new is seen on the pictures of where it was put, if on any; not on those of a closed door.
            return compared.after().value(touched.thing(), "in").stream()
                    .flatMap(bay -> compared.after().thing("compartment", bay).stream())
                    .flatMap(bay -> lists(bay)
                            .flatMap(photo -> taken.redo(photo, touched.day()).stream()
                                    .map(redo -> new Consequence.Picture(photo.id(), bay, Redo.LOOK_AT))));
        }
        if (touched.how() == Touched.How.UNSEEN) {
            return Stream.empty();
        }
        return shows(touched.thing())
                .flatMap(photo -> taken.redo(photo, touched.day()).stream()
                        .map(redo -> new Consequence.Picture(photo.id(), touched.thing(), redo)));
    }

    private Stream<Change.Thing> lists(Change.Thing thing) {
        return compared.after().references().stream()
                .filter(reference -> reference.kinds().contains(PHOTO)
                        && reference.of().filter(thing::equals).isPresent())
                .flatMap(reference -> reference.ids().stream())
                .flatMap(id -> compared.after().thing(PHOTO, id).stream());
    }

    /** Photos that are still there and show a thing, or showed it. */
    private Stream<Change.Thing> shows(Change.Thing thing) {
        Set<String> photos = new TreeSet<>();
        for (State state : new State[] {compared.before(), compared.after()}) {
            for (State.Reference reference : state.references()) {
                Optional<Change.Thing> of = reference.of();
                if (of.filter(it -> it.kind().equals(PHOTO)).isPresent() && reference.leadsTo(thing)) {
                    photos.add(of.get().id());
                } else if (of.filter(thing::is).isPresent() && reference.kinds().contains(PHOTO)) {
                    photos.addAll(reference.ids());
                }
            }
        }
        return photos.stream().flatMap(id -> compared.after().thing(PHOTO, id).stream());
    }
}
