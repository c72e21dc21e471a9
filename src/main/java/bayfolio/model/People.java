package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Range;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** How many people a coach carries and sleeps. */
public record People(Facts facts) implements Described {
    private static final Shape.Draft<People> DRAFT = Shape.draft("people", "Seats and beds.");
    public static final Key<Integer> BELTED_SEATS = DRAFT.required(
            "belted-seats",
            Type.whole(1, 20),
            "Seats with belts, the driver's too.",
            Range.of("1", "16")
                    .usual("bus-style|cab-over", "2", "8")
                    .usual("low-profile|van", "2", "6")
                    .because("150 lb x belts within payload; 49 CFR 571.110 (")
                    .source("49 CFR 571.110 S9.3"));
    public static final Key<Integer> CHILD_SEATS = DRAFT.optional(
            "child-seats",
            Type.whole(0, 20),
            "Seats that take a child seat.",
            Range.of("0", "8").usual("0", "4").because("fewer than the belts, driver excluded"));
    public static final Key<String> CHILD_SEAT_PLACES =
            DRAFT.optional("child-seat-places", Type.TEXT, "Which seats those are.");
    public static final Key<Integer> SLEEPING_PLACES = DRAFT.required(
            "sleeping-places",
            Type.whole(0, 20),
            "How many people sleep in it.",
            Range.of("0", "12").usual("0", "8"));
    public static final Key<List<Located<Bed>>> BEDS =
            DRAFT.optional("beds", Type.list(Type.nested(Bed.SHAPE)), "The beds.");
    public static final Shape<People> SHAPE = DRAFT.done(People::new);
}
