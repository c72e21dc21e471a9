package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** Something worth saying that no other key takes. */
public record Note(Facts facts) implements Described {
    /** A reference to whatever stands on a coach. */
    static final Type<String> ANY_THING = Type.reference(
            "compartment",
            "switch",
            "connection",
            "gauge",
            "door",
            "tray",
            "step",
            "slide",
            "awning",
            "tank",
            "supply",
            "adapter",
            "circuit",
            "load",
            "bank",
            "item",
            "appliance");

    private static final Shape.Draft<Note> DRAFT =
            Shape.draft("note", "Something worth saying that no other key takes.");
    public static final Key<String> TEXT = DRAFT.required("text", Type.TEXT, "The note.");
    public static final Key<String> ABOUT = DRAFT.optional("about", ANY_THING, "What it is about.");
    public static final Key<Boolean> STAFF_ONLY =
            DRAFT.optional("staff-only", Type.YES_NO, "Whether it is kept out of the renter's copy.");
    public static final Shape<Note> SHAPE = DRAFT.done(Note::new);

    @Override
    public boolean forStaff() {
        return facts.find(STAFF_ONLY).orElse(false);
    }
}
