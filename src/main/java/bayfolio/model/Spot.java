package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.measure.Meters;
import java.util.Optional;

/**
 * Where a thing is on the coach. Left and right are seen facing forward in the driver's seat.
 *
 * @param facts of the thing
 */
public record Spot(Facts facts, Keys keys) {
    public Optional<Side> side() {
        return facts.find(keys.side);
    }

    /** From the foremost point of the coach to the front edge of the thing; on front and rear, from the left. */
    public Optional<Meters> fromFront() {
        return facts.find(keys.fromFront);
    }

    /** Along the coach; on front and rear, across it. */
    public Optional<Meters> width() {
        return facts.find(keys.width);
    }

    /** From the ground to its lower edge. */
    public Optional<Meters> height() {
        return facts.find(keys.height);
    }

    public Optional<Meters> tall() {
        return facts.find(keys.tall);
    }

    /** Id of the compartment that it is in. */
    public Optional<String> in() {
        return facts.find(keys.in);
    }

    /** In words, with a landmark. */
    public Optional<String> where() {
        return facts.find(keys.where);
    }

    /** The keys of a spot, the same in every record that has one. */
    public record Keys(
            Key<Side> side,
            Key<Meters> fromFront,
            Key<Meters> width,
            Key<Meters> height,
            Key<Meters> tall,
            Key<String> in,
            Key<String> where) {

        static Keys declare(Shape.Draft<?> draft) {
            return declare(draft, false);
        }

        /**
         * @param onTheOutside whether side, distance and width must be given, since they are drawn
         */
        static Keys declare(Shape.Draft<?> draft, boolean onTheOutside) {
            Type<Side> side = Type.choice(Side.class);
            Type<Meters> length = Type.measured(Meters.SCALE);
            String sideMeaning = "Side of the coach, seen facing forward in the driver's seat.";
            String fromFrontMeaning =
                    "From the foremost point of the coach back to its front edge; on front and rear, from the left side.";
            String widthMeaning = "Its size along the coach; on front and rear, across it.";
            return new Keys(
                    onTheOutside
                            ? draft.required("side", side, sideMeaning)
                            : draft.optional("side", side, sideMeaning),
                    onTheOutside
                            ? draft.required("from-front", length, fromFrontMeaning)
                            : draft.optional("from-front", length, fromFrontMeaning),
                    onTheOutside
                            ? draft.required("width", length, widthMeaning)
                            : draft.optional("width", length, widthMeaning),
                    draft.optional("height", length, "From the ground up to its lower edge."),
                    draft.optional("tall", length, "Its size from bottom to top."),
                    draft.optional("in", Type.reference("compartment"), "The compartment that it is in."),
                    draft.optional("where", Type.TEXT, "Where exactly, with a landmark: `above the entry door`."));
        }

        Spot of(Facts facts) {
            return new Spot(facts, this);
        }
    }
}
