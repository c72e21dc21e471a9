package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;
import java.util.Optional;

/** A word of the trade in plain words. */
public record Word(Facts facts) implements Described {
    private static final Shape.Draft<Word> DRAFT = Shape.draft("word", "A word of the trade in plain words.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "Its name in references.");
    public static final Key<String> WORD = DRAFT.required("word", Type.TEXT, "The word.");
    public static final Key<String> MEANING = DRAFT.required("meaning", Type.TEXT, "What it means, for a renter.");
    public static final Key<String> BRITISH = DRAFT.optional("british", Type.TEXT, "The British or European word.");
    public static final Key<List<Located<String>>> ALSO =
            DRAFT.optional("also", Type.list(Type.TEXT), "Other names for it.");
    public static final Key<List<Located<String>>> AVOID =
            DRAFT.optional("avoid", Type.list(Type.TEXT), "Words that no text for American renters uses for it.");
    public static final Key<Boolean> MANY_MEANINGS = DRAFT.optional(
            "many-meanings",
            Type.YES_NO,
            "Whether it means other things, too; else its first use on a page is linked to its meaning.");
    public static final Shape<Word> SHAPE = DRAFT.done(Word::new);

    public String id() {
        return facts.get(ID);
    }

    public String word() {
        return facts.get(WORD);
    }

    public String meaning() {
        return facts.get(MEANING);
    }

    public Optional<String> british() {
        return facts.find(BRITISH);
    }
}
