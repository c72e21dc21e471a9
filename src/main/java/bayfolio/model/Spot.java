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
 * @param fromFront from the foremost point of the coach to the front edge of the thing; on front
 *     and rear, from the left
 * @param width along the coach (on front and rear: across it)
 * @param height from the ground to its lower edge
 * @param in id of the compartment that it is in
 * @param where in words, with a landmark
 */
public record Spot(
        Optional<Side> side,
        Optional<Meters> fromFront,
        Optional<Meters> width,
        Optional<Meters> height,
        Optional<Meters> tall,
        Optional<String> in,
        Optional<String> where) {

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
            return new Spot(
                    facts.find(side),
                    facts.find(fromFront),
                    facts.find(width),
                    facts.find(height),
                    facts.find(tall),
                    facts.find(in),
                    facts.find(where));
        }
    }
}
