package bayfolio.reckon.reach;

import bayfolio.measure.Meters;

/**
 * The ground that a coach stands on, and the ways along it. A place is counted back from the foremost point and out
 * from the middle line, to the right of somebody who faces forward.
 */
public record Footprint(Meters length, Meters width) {
    /**
     * A place on the ground.
     *
     * @param back from the foremost point of the coach, in meters; below zero ahead of it
     * @param right of the middle line, in meters; below zero to the left
     */
    public record Place(double back, double right) {
        double straightTo(Place other) {
            return Math.hypot(back - other.back, right - other.right);
        }

        /** One leg along the coach and one across. */
        double legsTo(Place other) {
            return Math.abs(back - other.back) + Math.abs(right - other.right);
        }

        /** The same place seen from a coach that is turned round on the same ground. */
        Place turned(Meters length) {
            return new Place(length.value() - back, -right);
        }
    }

    /** A millimeter is no obstacle. */
    private static final double SLIP = 1e-3;

    /**
     * How long a hose or cord lies on the ground between an inlet on a wall and a post: straight where nothing is in the
     * way, else along the walls and round the corners, in legs.
     */
    public Meters route(Place inlet, Place post) {
        return new Meters(free(inlet, post) ? inlet.straightTo(post) : roundTheCoach(inlet, post));
    }

    public boolean free(Place inlet, Place post) {
        return inside(post) || inside(inlet) || ahead(inlet, post);
    }

    /** Both on the same outer side of one wall: the straight line stays off the coach. */
    private boolean ahead(Place inlet, Place post) {
        return both(left() - inlet.right, left() - post.right)
                || both(inlet.right - right(), post.right - right())
                || both(-inlet.back, -post.back)
                || both(inlet.back - rear(), post.back - rear());
    }

    private static boolean both(double one, double other) {
        return one >= -SLIP && other >= -SLIP;
    }

    /** Underneath, where a hose can lie as it likes. */
    private boolean inside(Place place) {
        return place.back > SLIP
                && place.back < rear() - SLIP
                && place.right > left() + SLIP
                && place.right < right() - SLIP;
    }

    /** The shorter way, past the front or past the rear, past the left or past the right. */
    private double roundTheCoach(Place inlet, Place post) {
        boolean onSide = Math.abs(inlet.right) >= width.value() / 2 - SLIP;
        double one = onSide ? over(inlet, post, 0) : past(inlet, post, left());
        double other = onSide ? over(inlet, post, rear()) : past(inlet, post, right());
        return Math.min(one, other);
    }

    private static double over(Place inlet, Place post, double end) {
        return Math.abs(inlet.back - end) + Math.abs(post.back - end) + Math.abs(inlet.right - post.right);
    }

    private static double past(Place inlet, Place post, double side) {
        return Math.abs(inlet.right - side) + Math.abs(post.right - side) + Math.abs(inlet.back - post.back);
    }

    private double left() {
        return -width.value() / 2;
    }

    private double right() {
        return width.value() / 2;
    }

    private double rear() {
        return length.value();
    }
}
