package bayfolio.procedure;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** The head of a text in another language; for whom and when it is, the text that it translates says. */
public record TranslationHead(Facts facts) implements Described {
    private static final Shape.Draft<TranslationHead> DRAFT =
            Shape.draft("translation", "A procedure, trouble guide or stage page in another language.");
    public static final Key<String> OF = DRAFT.required("of", Type.ID, "The id of the text that it translates.");
    public static final Key<String> TITLE = DRAFT.required("title", Type.TEXT, "Its title in this language.");
    public static final Key<String> LINE = DRAFT.optional(
            "line",
            Type.TEXT,
            "What a reader gets from it, in this language; left out, the first sentence is sent with the link.");
    public static final Key<String> SOURCE = DRAFT.required(
            "source",
            Type.TEXT,
            "The digest of the text that was translated; `check` names the present one, and tells when the text has changed since.");
    public static final Shape<TranslationHead> SHAPE = DRAFT.done(TranslationHead::new);
}
