package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** The texts of facts in another language, a file of their own. */
public record FactTexts(Facts facts) implements Described {
    private static final Shape.Draft<FactTexts> DRAFT =
            Shape.draft("fact-texts", "Texts of facts in another language.");
    public static final Key<List<Located<FactText>>> TEXTS =
            DRAFT.required("texts", Type.list(Type.nested(FactText.SHAPE)), "One for each text.");
    public static final Shape<FactTexts> SHAPE = DRAFT.done(FactTexts::new);
}
