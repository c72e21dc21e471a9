package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.util.Optional;

/** A number that brings help in a country. */
public record EmergencyNumber(Facts facts) implements Backed {
    private static final Shape.Draft<EmergencyNumber> DRAFT =
            Shape.draft("emergency-number", "A number that brings help.");
    public static final Key<String> NUMBER = DRAFT.required("number", Type.PHONE, "The number, in quotes.");
    public static final Key<String> REACHES =
            DRAFT.optional("reaches", Type.TEXT, "Whom it reaches: `fire`; shown where numbers reach different ones.");
    private static final Backing BACKING = Backing.declare(DRAFT);
    public static final Shape<EmergencyNumber> SHAPE = DRAFT.done(EmergencyNumber::new);

    public String number() {
        return facts.get(NUMBER);
    }

    public Optional<String> reaches() {
        return facts.find(REACHES);
    }

    @Override
    public Backing backing() {
        return BACKING;
    }
}
