package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** What a law or a public body of a country says. */
public record PublicRule(Facts facts) implements Described {
    static final String REPORTED =
            "The year in which others told of it, or `undated`, where the public body's own page was not seen; renters read it, and staff confirm it. Left out where it was seen.";
    static final String READ = "What was read.";

    private static final Shape.Draft<PublicRule> DRAFT =
            Shape.draft("public-rule", "What a law or a public body of a country says.");
    public static final Key<String> RULE =
            DRAFT.required("rule", Type.TEXT, "The rule in our words, for a renter, in whole sentences.");
    public static final Key<String> AS_REPORTED = DRAFT.optional("as-reported", Type.TEXT, REPORTED);
    public static final Key<String> SOURCE = DRAFT.forStaff("source", Type.TEXT, READ);
    public static final Shape<PublicRule> SHAPE = DRAFT.done(PublicRule::new);
}
