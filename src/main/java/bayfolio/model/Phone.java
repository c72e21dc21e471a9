package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** A number to call. */
public record Phone(Facts facts) implements Described {
    private static final Shape.Draft<Phone> DRAFT = Shape.draft("phone", "A number to call.");
    public static final Key<String> ID =
            DRAFT.required("id", Type.ID, "`hours`, `after-hours`, `roadside`, or another of your own.");
    public static final Key<String> NUMBER = DRAFT.required("number", Type.PHONE, "The number as it is dialed.");
    public static final Key<String> WHEN = DRAFT.optional("when", Type.TEXT, "When to call it, and for what.");
    /** In references, the numbers of the country that the coach is hired out in; no phone of a fleet has this id. */
    public static final String EMERGENCY = "emergency";

    public static final Shape<Phone> SHAPE = DRAFT.done(Phone::new);

    public String id() {
        return facts.get(ID);
    }

    public String number() {
        return facts.get(NUMBER);
    }
}
