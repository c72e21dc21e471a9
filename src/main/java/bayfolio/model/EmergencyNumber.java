package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.util.Optional;

/** A number that brings help in a country. */
public record EmergencyNumber(Facts facts) implements Described {
    private static final Shape.Draft<EmergencyNumber> DRAFT =
            Shape.draft("emergency-number", "A number that brings help.");
    public static final Key<String> NUMBER = DRAFT.required("number", Type.PHONE, "The number, in quotes.");
    public static final Key<String> REACHES =
            DRAFT.optional("reaches", Type.TEXT, "Whom it reaches: `fire`; shown where numbers reach different ones.");
    public static final Key<String> AS_REPORTED = DRAFT.optional("as-reported", Type.TEXT, PublicRule.REPORTED);
    public static final Key<String> SOURCE = DRAFT.forStaff("source", Type.TEXT, PublicRule.READ);
    public static final Shape<EmergencyNumber> SHAPE = DRAFT.done(EmergencyNumber::new);

    public String number() {
        return facts.get(NUMBER);
    }

    public Optional<String> reaches() {
        return facts.find(REACHES);
    }
}
