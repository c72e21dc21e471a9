package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
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
    private static final Range FROM_FRONT = Range.of("0 m", "14.2 m")
            .usual("switch|gauge|appliance|item|bank inside|roof", "0.6 m", "13.8 m")
            .usual("0 m", "14.2 m");
    private static final Range WIDTH = Range.of("0.01 m", "11 m")
            .in("compartment|tray", "0.06 m", "9 m")
            .in("door", "0.3 m", "2.3 m")
            .in("step", "0.2 m", "1.6 m")
            .in("switch|gauge|connection|item", "0.01 m", "4 m")
            .in("tank|bank|appliance", "0.1 m", "4.5 m")
            .in("slide", "0.5 m", "11 m")
            .in("awning", "1.2 m", "9.5 m")
            .usual("compartment fuel-door", "0.1 m", "0.7 m")
            .usual("compartment|tray", "0.1 m", "3.2 m")
            .usual("door", "0.5 m", "2 m")
            .usual("step", "0.35 m", "1.3 m")
            .usual("switch|gauge|connection|item", "0.02 m", "1.2 m")
            .usual("tank|bank|appliance", "0.2 m", "2.6 m")
            .usual("slide", "0.9 m", "9.2 m")
            .usual("awning", "1.8 m", "6.8 m");
    private static final Range HEIGHT = Range.of("0 m", "4.3 m")
            .in("door", "0.2 m", "4.3 m")
            .in("step", "0.05 m", "0.9 m")
            .in("slide|awning", "0.2 m", "4.2 m")
            .usual("switch|gauge|compartment|item|appliance|bank inside", "0.3 m", "3.3 m")
            .usual("compartment engine-hatch front|rear", "0.25 m", "1.7 m")
            .usual("switch|gauge left|right|front|rear", "0.1 m", "2 m")
            .usual("switch crank left|right|front|rear", "0.1 m", "3.3 m")
            .usual("compartment|connection|tank|bank|tray|item|appliance left|right|front|rear", "0.1 m", "1.7 m")
            .usual("compartment|connection|tank|bank|tray|item|appliance", "0 m", "3.3 m")
            .usual("switch|gauge", "0.1 m", "3.3 m")
            .usual("door", "0.25 m", "2.6 m")
            .usual("step", "0.12 m", "0.6 m")
            .usual("slide", "0.3 m", "1.6 m")
            .usual("awning", "1.9 m", "3.8 m")
            .orNothing();
    private static final Range TALL = Range.of("0.01 m", "2.5 m")
            .in("compartment", "0.05 m", "2.2 m")
            .in("tray|connection|switch|gauge|item|tank|bank|appliance|step", "0.01 m", "2.4 m")
            .in("door", "0.25 m", "2.4 m")
            .in("slide|awning", "0.1 m", "2.5 m")
            .usual("compartment storage-bay", "0.2 m", "1.6 m")
            .usual("compartment", "0.1 m", "1.4 m")
            .usual("tray|connection|switch|gauge|item|tank|bank|appliance|step", "0.02 m", "2.1 m")
            .usual("door", "0.3 m", "2.15 m")
            .usual("slide|awning", "0.1 m", "2.4 m");

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

    /** As {@link #fromFront}, to the middle of the thing; to its edge where its width is not known. */
    public Optional<Meters> middle() {
        return fromFront().map(front -> new Meters(front.value() + half(width())));
    }

    /** As {@link #height}, to the middle of the thing; to its lower edge where its size is not known. */
    public Optional<Meters> middleHeight() {
        return height().map(low -> new Meters(low.value() + half(tall())));
    }

    private static double half(Optional<Meters> size) {
        return size.map(Meters::value).orElse(0.0) / 2;
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
                            ? draft.required("from-front", length, fromFrontMeaning, FROM_FRONT)
                            : draft.optional("from-front", length, fromFrontMeaning, FROM_FRONT),
                    onTheOutside
                            ? draft.required("width", length, widthMeaning, WIDTH)
                            : draft.optional("width", length, widthMeaning, WIDTH),
                    draft.optional("height", length, "From the ground up to its lower edge.", HEIGHT),
                    draft.optional("tall", length, "Its size from bottom to top.", TALL),
                    draft.optional("in", Type.reference("compartment"), "The compartment that it is in."),
                    draft.optional("where", Type.PLACE, "Where exactly, with a landmark: `above the entry door`."));
        }

        Spot of(Facts facts) {
            return new Spot(facts, this);
        }
    }
}
