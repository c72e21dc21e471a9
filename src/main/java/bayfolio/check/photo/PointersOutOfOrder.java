package bayfolio.check.photo;

import bayfolio.check.CheckedCoach;
import bayfolio.check.Rule;
import bayfolio.finding.Finding;
import bayfolio.model.Photo;
import bayfolio.model.Pointer;
import bayfolio.model.Side;
import bayfolio.model.Thing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Flags a mark on a picture of a side that lies where its thing cannot be, by the places of the others. */
public final class PointersOutOfOrder implements Rule {
    /** Fewer tell no order. */
    private static final int FEW = 4;

    /** Things whose middles are nearer than this look as high as each other. */
    private static final double AS_HIGH = 0.6;

    /** So far apart, as a share of the height of a picture, such things do not lie. */
    private static final double FAR = 0.2;

    private record Seen(Pointer pointer, Thing thing, double along, double high, double across, double down) {}

    @Override
    public Stream<Finding> check(CheckedCoach coach) {
        return coach.unit().photos().stream()
                .flatMap(photo -> Stream.of(Side.LEFT, Side.RIGHT).flatMap(side -> check(photo, side, coach)));
    }

    private static Stream<Finding> check(Photo photo, Side side, CheckedCoach coach) {
        List<Seen> seen = new ArrayList<>();
        for (Pointer pointer : photo.facts().all(Photo.POINTERS)) {
            pointer.on(coach.coach())
                    .flatMap(thing -> seen(pointer, thing, side))
                    .ifPresent(seen::add);
        }
        if (seen.size() < FEW) {
            return Stream.of();
        }
        long same = pairs(seen, true);
        long turned = pairs(seen, false);
        boolean mirrored = turned > same;
        return seen.stream()
                .filter(one -> 2 * wrong(one, seen, mirrored) > seen.size() - 1)
                .map(one -> Finding.warning(
                                "pointers-out-of-order",
                                one.pointer().facts().at(),
                                "photo `" + photo.id() + "` points at "
                                        + one.thing().kind() + " `"
                                        + one.thing().id() + "` where it cannot be, beside what else it points at")
                        .mend("Measure on the picture again, or name what is seen there."));
    }

    private static Optional<Seen> seen(Pointer pointer, Thing thing, Side side) {
        return thing.spot()
                .filter(spot -> spot.side().equals(Optional.of(side)))
                .filter(spot -> spot.fromFront().isPresent()
                        && spot.width().isPresent()
                        && spot.height().isPresent()
                        && spot.tall().isPresent())
                .map(spot -> new Seen(
                        pointer,
                        thing,
                        spot.middle().orElseThrow().value(),
                        spot.middleHeight().orElseThrow().value(),
                        pointer.facts().get(Pointer.ACROSS).value(),
                        pointer.facts().get(Pointer.DOWN).value()));
    }

    /** How many lie on the picture as they do on the coach, or the other way round. */
    private static long pairs(List<Seen> seen, boolean as) {
        return seen.stream()
                .flatMap(one -> seen.stream()
                        .filter(other -> one.along() < other.along() && (one.across() < other.across()) == as))
                .count();
    }

    private static long wrong(Seen one, List<Seen> all, boolean mirrored) {
        return all.stream()
                .filter(other -> other != one)
                .filter(other -> (one.along() < other.along()) != ((one.across() < other.across()) != mirrored)
                        || Math.abs(one.high() - other.high()) < AS_HIGH && Math.abs(one.down() - other.down()) > FAR)
                .count();
    }
}
