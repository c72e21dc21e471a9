package bayfolio.reckon.reach;

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
import bayfolio.reckon.Given;
import bayfolio.reckon.Missing;
import bayfolio.reckon.Published;
import bayfolio.reckon.cord.CordSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One of the things that lead from a coach to the posts of a site: cord, drinking hose, sewer hose.
 *
 * @param name of the first one on board; absent where none is described
 * @param inlet where it goes on the coach
 * @param inletThing what it goes into or comes out of
 * @param height of the inlet
 * @param onBoard all of it on board, joined; absent where a length is not stated
 */
public record SiteLine(
        Kind kind,
        Optional<String> name,
        Thing inletThing,
        Footprint.Place inlet,
        Given<Meters> height,
        Optional<Given<Meters>> onBoard) {
    private static final Published<Meters> USUAL_HEIGHT = Posts.TABLE.quantity("inlet.height", Meters.SCALE);

    private static final String DRINKING_HOSE = "drinking-hose";
    private static final String SEWER_HOSE = "sewer-hose";

    /** What flows. */
    public enum Kind {
        POWER(Pitch.POWER),
        WATER(Pitch.WATER),
        SEWER(Pitch.SEWER);

        private final Key<PitchPost> post;

        Kind(Key<PitchPost> post) {
            this.post = post;
        }

        public Key<PitchPost> post() {
            return post;
        }
    }

    /** Whether the coach has anything that is led to a post. */
    public static boolean any(Coach coach) {
        return Stream.of(Kind.values()).anyMatch(kind -> on(coach, kind).isPresent());
    }

    /** Those whose place on the coach is known. */
    public static List<SiteLine> all(Coach coach, Size size) {
        return Stream.of(Kind.values())
                .flatMap(kind -> of(coach, size, kind).stream())
                .toList();
    }

    /** What has an inlet without a stated place. */
    public static List<Missing> unplaced(Coach coach, Size size) {
        return Stream.of(Kind.values())
                .filter(kind -> of(coach, size, kind).isEmpty())
                .flatMap(kind -> on(coach, kind).stream())
                .map(thing -> new Missing("inlet-place", thing.name()))
                .toList();
    }

    private static Optional<SiteLine> of(Coach coach, Size size, Kind kind) {
        return on(coach, kind)
                .flatMap(thing -> place(coach, size, thing)
                        .map(place -> new SiteLine(
                                kind, name(coach, kind), thing, place, height(coach, thing), onBoard(coach, kind))));
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
                .flatMap(side -> spot.middle().map(Meters::value).flatMap(middle -> {
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

    /** Its own, that of the compartment around it, or a usual one. */
    private static Given<Meters> height(Coach coach, Thing thing) {
        return thing.spot()
                .flatMap(SiteLine::height)
                .or(() -> coach.around(thing).flatMap(Compartment::spot).flatMap(SiteLine::height))
                .orElseGet(() -> Given.usual(USUAL_HEIGHT));
    }

    private static Optional<Given<Meters>> height(Spot spot) {
        Key<Meters> key = spot.keys().height();
        return spot.facts().has(key) ? Optional.of(Given.stated(spot.facts(), key)) : Optional.empty();
    }

    private static Optional<String> name(Coach coach, Kind kind) {
        return items(coach, kind).stream().findFirst().map(Item::name);
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

    /** All of it on board, joined; absent where a length is not stated. */
    public Optional<Meters> owned() {
        return onBoard.map(Given::value);
    }

    private static Optional<Given<Meters>> onBoard(Coach coach, Kind kind) {
        return switch (kind) {
            // An extension is told apart: hardly a site wants one, and it costs voltage.
            case POWER ->
                coach.unit()
                        .facts()
                        .find(Unit.CORD)
                        .filter(cord -> cord.facts().has(Cord.LENGTH))
                        .map(cord -> Given.stated(cord.facts(), Cord.LENGTH));
            case WATER, SEWER -> joined(items(coach, kind));
        };
    }

    /** All of them end to end; what has no length, such as an elbow, adds none. */
    private static Optional<Given<Meters>> joined(List<Item> items) {
        return items.stream()
                .filter(item -> item.facts().has(Item.LENGTH))
                .map(item -> Given.stated(item.facts(), Item.LENGTH)
                        .map(each -> new Meters(
                                each.value() * item.facts().find(Item.COUNT).orElse(1))))
                .reduce((one, other) -> one.map(length -> length.plus(other.value())));
    }
}
