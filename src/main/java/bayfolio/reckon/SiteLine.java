package bayfolio.reckon;

import bayfolio.fact.Key;
import bayfolio.measure.Meters;
import bayfolio.model.Coach;
import bayfolio.model.Compartment;
import bayfolio.model.Connection;
import bayfolio.model.Cord;
import bayfolio.model.Item;
import bayfolio.model.Pitch;
import bayfolio.model.PitchPost;
import bayfolio.model.Size;
import bayfolio.model.Spot;
import bayfolio.model.Thing;
import bayfolio.model.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One of the things that lead from a coach to the posts of a site: cord, drinking hose, sewer hose.
 *
 * @param name as it is called on board
 * @param inlet where it goes on the coach
 * @param height of the inlet, if it is stated
 * @param owned all of it on board, joined; absent where a length is not stated
 */
record SiteLine(
        Kind kind,
        String name,
        String inletName,
        Footprint.Place inlet,
        Optional<Meters> height,
        Optional<Meters> owned) {
    private static final String DRINKING_HOSE = "drinking-hose";
    private static final String SEWER_HOSE = "sewer-hose";

    /** What flows. */
    enum Kind {
        POWER(Pitch.POWER, "Power"),
        WATER(Pitch.WATER, "Water"),
        SEWER(Pitch.SEWER, "Sewer");

        private final Key<PitchPost> post;
        private final String word;

        Kind(Key<PitchPost> post, String word) {
            this.post = post;
            this.word = word;
        }

        Key<PitchPost> post() {
            return post;
        }

        String word() {
            return word;
        }
    }

    /** Whether the coach has anything that is led to a post. */
    static boolean any(Coach coach) {
        return Stream.of(Kind.values()).anyMatch(kind -> on(coach, kind).isPresent());
    }

    /** Those whose place on the coach is known. */
    static List<SiteLine> all(Coach coach, Size size) {
        return Stream.of(Kind.values())
                .flatMap(kind -> of(coach, size, kind).stream())
                .toList();
    }

    /** What has an inlet without a stated place: {@code place of City water inlet}. */
    static List<String> unplaced(Coach coach, Size size) {
        return Stream.of(Kind.values())
                .filter(kind -> of(coach, size, kind).isEmpty())
                .flatMap(kind -> on(coach, kind).stream())
                .map(thing -> "side and place of " + thing.name())
                .toList();
    }

    private static Optional<SiteLine> of(Coach coach, Size size, Kind kind) {
        return on(coach, kind)
                .flatMap(thing -> place(coach, size, thing)
                        .map(place -> new SiteLine(
                                kind,
                                name(coach, kind),
                                thing.name(),
                                place,
                                height(coach, thing),
                                owned(coach, kind))));
    }

    /** The inlet itself; for a cord that is fixed or on a reel, where it comes out. */
    private static Optional<Thing> on(Coach coach, Kind kind) {
        return switch (kind) {
            case POWER ->
                coach.unit().facts().has(Unit.CORD)
                        ? first(coach, Connection.SHAPE.name(), "shore-inlet")
                                .or(() -> first(coach, Compartment.SHAPE.name(), "cord-compartment"))
                        : Optional.empty();
            case WATER ->
                first(coach, Connection.SHAPE.name(), "city-water-inlet")
                        .or(() -> first(coach, Connection.SHAPE.name(), "fresh-fill-port"));
            case SEWER -> first(coach, Connection.SHAPE.name(), "sewer-outlet");
        };
    }

    private static Optional<Thing> first(Coach coach, String kind, String role) {
        return coach.holders(kind, role).stream().findFirst();
    }

    private static Optional<Footprint.Place> place(Coach coach, Size size, Thing thing) {
        return thing.spot()
                .flatMap(spot -> place(spot, size))
                .or(() -> coach.around(thing).flatMap(Compartment::spot).flatMap(spot -> place(spot, size)));
    }

    /** Its middle, on the wall that it is in. */
    private static Optional<Footprint.Place> place(Spot spot, Size size) {
        double half = size.facts().get(Size.WIDTH).value() / 2;
        return spot.side()
                .flatMap(side -> spot.fromFront().flatMap(front -> {
                    double middle =
                            front.value() + spot.width().map(Meters::value).orElse(0.0) / 2;
                    return switch (side) {
                        case LEFT -> Optional.of(new Footprint.Place(middle, -half));
                        case RIGHT -> Optional.of(new Footprint.Place(middle, half));
                        case FRONT -> Optional.of(new Footprint.Place(0, middle - half));
                        case REAR ->
                            Optional.of(new Footprint.Place(
                                    size.facts().get(Size.LENGTH).value(), middle - half));
                        case UNDERFLOOR -> Optional.of(new Footprint.Place(middle, 0));
                        case ROOF, INSIDE -> Optional.<Footprint.Place>empty();
                    };
                }));
    }

    private static Optional<Meters> height(Coach coach, Thing thing) {
        return thing.spot()
                .flatMap(Spot::height)
                .or(() -> coach.around(thing).flatMap(Compartment::spot).flatMap(Spot::height));
    }

    private static String name(Coach coach, Kind kind) {
        return items(coach, kind).stream()
                .findFirst()
                .map(Item::name)
                .orElse(
                        switch (kind) {
                            case POWER -> "Power cord";
                            case WATER -> "Drinking-water hose";
                            case SEWER -> "Sewer hose";
                        });
    }

    private static List<Item> items(Coach coach, Kind kind) {
        String role = switch (kind) {
            case POWER -> CordSet.SHORE_CORD;
            case WATER -> DRINKING_HOSE;
            case SEWER -> SEWER_HOSE;
        };
        return coach.unit().items().stream()
                .filter(item -> !item.forStaff() && item.roles().contains(role))
                .toList();
    }

    private static Optional<Meters> owned(Coach coach, Kind kind) {
        return switch (kind) {
            // An extension is told apart: hardly a site wants one, and it costs voltage.
            case POWER ->
                coach.unit()
                        .facts()
                        .find(Unit.CORD)
                        .flatMap(cord -> cord.facts().find(Cord.LENGTH));
            case WATER, SEWER -> joined(items(coach, kind));
        };
    }

    /** All of them end to end; what has no length, such as an elbow, adds none. */
    private static Optional<Meters> joined(List<Item> items) {
        return items.stream()
                .flatMap(item -> item.facts().find(Item.LENGTH).stream()
                        .map(length -> new Meters(
                                length.value() * item.facts().find(Item.COUNT).orElse(1))))
                .reduce(Meters::plus);
    }
}
