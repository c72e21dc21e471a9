package bayfolio.model;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The walking order: out of the entry door, once round the coach without turning back, then inside
 * from front to rear.
 *
 * <p>The way goes from the entry door toward the rear, round the tail, forward along the other side
 * and round the front back to the door. Slide-outs keep their turn. What has no spot of its own is met where its compartment
 * is; what has no spot at all comes last.
 */
public final class WalkingOrder {
    private final Unit unit;
    private final double length;
    private final double width;
    private final Side doorSide;
    private final double door;

    public WalkingOrder(Unit unit) {
        this.unit = unit;
        this.length =
                unit.size().facts().find(Size.LENGTH).map(it -> it.value()).orElse(0.0);
        this.width = unit.size().facts().find(Size.WIDTH).map(it -> it.value()).orElse(0.0);
        Optional<Spot> entry = unit.doors().stream()
                .filter(it -> it.roles().contains("entry-door"))
                .findFirst()
                .flatMap(Thing::spot);
        this.doorSide =
                entry.flatMap(Spot::side).filter(side -> side == Side.LEFT).orElse(Side.RIGHT);
        this.door = entry.flatMap(Spot::fromFront).map(it -> it.value()).orElse(0.0);
    }

    /**
     * Things in the order in which they are met; those met at one place keep the order of the
     * description.
     */
    public <T extends Thing> List<T> order(List<T> things) {
        return things.stream()
                .map(thing -> new Met<>(thing, met(thing)))
                .sorted(Comparator.comparingDouble(Met::at))
                .map(Met::thing)
                .toList();
    }

    /** Told once of each thing, and not with each comparison. */
    private record Met<T>(T thing, double at) {}

    private double met(Thing thing) {
        Optional<Integer> turn = thing instanceof Slide slide ? slide.facts().find(Slide.ORDER) : Optional.empty();
        if (turn.isPresent()) {
            return turn.get(); // among their own kind only
        }
        return thing.spot().map(this::met).orElse(Double.MAX_VALUE);
    }

    private double met(Spot spot) {
        Optional<Spot> around = spot.in()
                .flatMap(id -> unit.compartments().stream()
                        .filter(compartment -> compartment.id().equals(id))
                        .findFirst()
                        .flatMap(Compartment::spot));
        Optional<Side> side = spot.side().or(() -> around.flatMap(Spot::side));
        double fromFront = spot.fromFront()
                .or(() -> around.flatMap(Spot::fromFront))
                .map(it -> it.value())
                .orElse(0.0);
        double round = 2 * (length + width);
        return side.map(it -> switch (it) {
                    case LEFT, RIGHT, FRONT, REAR -> along(it, fromFront);
                    case UNDERFLOOR -> round + fromFront;
                    case INSIDE -> round + length + fromFront;
                    case ROOF -> round + 2 * length + fromFront;
                })
                .orElse(round + 3 * length);
    }

    /** Steps from the door to a point of the outline; front and rear are walked across. */
    private double along(Side side, double fromFront) {
        boolean doorLength = side == doorSide;
        if (doorLength) {
            double back = fromFront - door;
            return back >= 0 ? back : 2 * (length + width) + back;
        }
        double toTail = length - door;
        return switch (side) {
            case REAR -> toTail + across(fromFront);
            case FRONT -> toTail + width + length + (width - across(fromFront));
            default -> toTail + width + (length - fromFront);
        };
    }

    /** Front and rear are measured from the left; the way begins at the side of the door. */
    private double across(double fromLeft) {
        return doorSide == Side.LEFT ? fromLeft : width - fromLeft;
    }
}
