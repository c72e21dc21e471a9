package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** A fact that a coach with some equipment has to state. */
public record MustTell(Facts facts) implements Described {
    private static final Shape.Draft<MustTell> DRAFT =
            Shape.draft("fact", "What a description must state where a coach has such a thing.");
    public static final Key<String> OF = DRAFT.required(
            "of", Type.TEXT, "Of what: a record of the coach, `generator`, or things, `bank[chemistry = lithium]`.");
    public static final Key<String> FACT = DRAFT.required("fact", Type.ID, "The key that must be there.");
    public static final Key<String> WHY =
            DRAFT.required("why", Type.TEXT, "What a renter must know it for; a clause, without a full stop.");
    public static final Key<String> WHEN = DRAFT.optional(
            "when", Type.TEXT, "Only where this holds, too, such as `towing-allowed`; always where left out.");
    public static final Shape<MustTell> SHAPE = DRAFT.done(MustTell::new);
}
