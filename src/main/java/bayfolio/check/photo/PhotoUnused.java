package bayfolio.check.photo;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.fact.FactVisitor;
import bayfolio.fact.Type;
import bayfolio.finding.Finding;
import bayfolio.model.Photo;
import bayfolio.procedure.Procedure;
import bayfolio.prose.Target;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;

/** Flags a photo that no thing and no procedure names. */
public final class PhotoUnused implements Rule {
    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        if (!coach.unit().facts().whole()) {
            return Stream.of(); // what could not be read may name it
        }
        Set<String> named = new HashSet<>();
        FactVisitor.of(coach.unit().facts(), (type, value) -> {
            if (type instanceof Type.Reference reference && reference.kinds().contains(Photo.SHAPE.name())) {
                named.add(value.value().toString());
            }
        });
        coach.procedures().stream().flatMap(Procedure::links).forEach(link -> {
            if (link.target() instanceof Target.OfThing target && target.kind().equals(Photo.SHAPE.name())) {
                named.add(target.id());
            }
        });
        // A name that does not exist is told elsewhere, and may be a misspelling of one of these.
        boolean known = named.stream()
                .allMatch(id -> coach.coach().thing(Photo.SHAPE.name(), id).isPresent());
        return coach.unit().photos().stream()
                .filter(photo -> known && !named.contains(photo.id()))
                .map(photo -> Finding.warning(
                                "photo-unused",
                                photo.at(),
                                "nothing names photo `" + photo.id() + "`, so that no page shows it")
                        .mend("Name it in `photos` of the thing that it shows, or take it out."));
    }
}
