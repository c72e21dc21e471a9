package bayfolio.model;

import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** What a law or a public body of a country says. */
public record PublicRule(Facts facts) implements ForSomeCoaches {
    private static final Shape.Draft<PublicRule> DRAFT =
            Shape.draft("public-rule", "What a law or a public body of a country says.");
    public static final Key<String> RULE =
            DRAFT.required("rule", Type.TEXT, "The rule in our words, for a renter, in whole sentences.");
    private static final ForCoaches FOR_COACHES = ForCoaches.declare(DRAFT);
    private static final Backing BACKING = Backing.declare(DRAFT);
    public static final Shape<PublicRule> SHAPE = DRAFT.done(PublicRule::new);

    @Override
    public ForCoaches forCoaches() {
        return FOR_COACHES;
    }

    @Override
    public Backing backing() {
        return BACKING;
    }
}
