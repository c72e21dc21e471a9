package bayfolio.reckon.weight;

import bayfolio.measure.Kilograms;
import java.util.Optional;

/**
 * One limit of a coach, and what comes on it: the whole coach, an axle, or the label. Each load adds to it by a share that
 * its place gives.
 *
 * @param room with nobody on board, fresh water empty and no cargo
 * @param inFront share of a person in one of the two front seats
 * @param inHouse share of a person on another seat
 * @param water what full fresh tanks add
 * @param cargo share of what is stowed
 */
public record WeightLimit(Kind kind, Kilograms room, double inFront, double inHouse, Kilograms water, double cargo) {
    /** What is limited. */
    public enum Kind {
        GROSS,
        LABEL,
        FRONT_AXLE,
        REAR_AXLE
    }

    public static final int FRONT_SEATS = 2;

    /** A gram: pounds are added up as kilograms. */
    public static final double HAIR = 0.001;

    /** What hardly comes on a limit never reaches it. */
    public static final double NO_SHARE = 0.01;

    /**
     * What is left of the limit; less than zero where it is exceeded.
     *
     * @param each average weight of a person
     * @param fresh share of the fresh tanks
     */
    public Kilograms left(int people, Kilograms each, double fresh, Kilograms stowed) {
        int front = Math.min(people, FRONT_SEATS);
        int house = people - front;
        return new Kilograms(room.value()
                - each.value() * (front * inFront + house * inHouse)
                - fresh * water.value()
                - cargo * stowed.value());
    }

    /** What can still be stowed before the limit is reached; less than zero is by how much it is exceeded. Nothing where stowed things never reach it. */
    public Optional<Kilograms> more(Kilograms left) {
        return exceeded(left)
                ? Optional.of(left)
                : cargo < NO_SHARE ? Optional.empty() : Optional.of(new Kilograms(left.value() / cargo));
    }

    public static boolean exceeded(Kilograms left) {
        return left.value() < -HAIR;
    }
}
