package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** How many people a coach carries and sleeps. */
public record People(Facts facts) implements Described {
    private static final Shape.Draft<People> DRAFT = Shape.draft("people", "Seats and beds.");
    public static final Key<Integer> BELTED_SEATS =
            DRAFT.required("belted-seats", Type.whole(1, 20), "Seats with belts, the driver's too.");
    public static final Key<Integer> CHILD_SEATS =
            DRAFT.optional("child-seats", Type.whole(0, 20), "Seats that take a child seat.");
    public static final Key<String> CHILD_SEAT_PLACES =
            DRAFT.optional("child-seat-places", Type.TEXT, "Which seats those are.");
    public static final Key<Integer> SLEEPING_PLACES =
            DRAFT.required("sleeping-places", Type.whole(0, 20), "How many people sleep in it.");
    public static final Key<List<Located<Bed>>> BEDS =
            DRAFT.optional("beds", Type.list(Type.nested(Bed.SHAPE)), "The beds.");
    public static final Shape<People> SHAPE = DRAFT.done(People::new);
}
