package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** The glossary, a file of its own. */
public record Words(Facts facts) implements Described {
    private static final Shape.Draft<Words> DRAFT = Shape.draft("words", "The glossary.");
    public static final Key<List<Located<Word>>> WORDS =
            DRAFT.required("words", Type.list(Type.nested(Word.SHAPE)), "All words there are.");
    public static final Shape<Words> SHAPE = DRAFT.done(Words::new);
}
