package bayfolio.compose;

import bayfolio.model.Compartment;
import bayfolio.model.Side;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where somebody stands who looks at a thing or works it: whoever has hands full goes there once.
 *
 * @param door of the compartment that one stands before; empty elsewhere
 */
record Stand(Sort sort, Optional<Compartment> door) {
    /** In the order in which a coach is gone through. */
    enum Sort {
        SEAT,
        INSIDE,
        AROUND,
        DOOR
    }

    static final Stand SEAT = new Stand(Sort.SEAT, Optional.empty());
    static final Stand INSIDE = new Stand(Sort.INSIDE, Optional.empty());
    static final Stand AROUND = new Stand(Sort.AROUND, Optional.empty());

    static Stand of(Thing thing, CoachView view) {
        Optional<Compartment> door = thing instanceof Compartment own
                ? Optional.of(own)
                : view.coach().around(thing);
        if (door.isPresent()) {
            return outside(door.get().spot()) ? new Stand(Sort.DOOR, door) : INSIDE;
        }
        return outside(thing.spot()) ? AROUND : atTheSeat(thing, view) ? SEAT : INSIDE;
    }

    private static boolean outside(Optional<Spot> spot) {
        return spot.flatMap(Spot::side).filter(side -> side != Side.INSIDE).isPresent();
    }

    /** No key says so: places that begin like this are within reach of whoever drives. */
    private static boolean atTheSeat(Thing thing, CoachView view) {
        String where = thing.spot().flatMap(Spot::where).orElse("").toLowerCase(Locale.ROOT);
        return Stream.of(view.word("stand.at-the-seat").split("; ")).anyMatch(where::startsWith);
    }

    /** What is done at each stand, those of doors as one comes by them. */
    static List<Stand> inOrder(Stream<Stand> stands, CoachView view) {
        List<Thing> walked = view.coach().walked().collect(Collectors.toCollection(ArrayList::new));
        return stands.distinct()
                .sorted(Comparator.comparing(Stand::sort)
                        .thenComparing(stand -> stand.door.map(walked::indexOf).orElse(0)))
                .toList();
    }

    /** Its lasting name on a sheet. */
    String id() {
        return door.map(it -> "place-" + it.id()).orElse(sort.name().toLowerCase(Locale.ROOT));
    }

    String title(CoachView view) {
        return door.map(Thing::name)
                .orElseGet(() -> view.word("stand." + sort.name().toLowerCase(Locale.ROOT)));
    }
}
