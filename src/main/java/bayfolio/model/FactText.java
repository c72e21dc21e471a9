package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** The text of a fact in another language. */
public record FactText(Facts facts) implements Described {
    private static final Shape.Draft<FactText> DRAFT =
            Shape.draft("fact-text", "The text of a fact in another language.");
    public static final Key<String> OF = DRAFT.required(
            "of",
            Type.TEXT,
            "The fact: `switch/pump-switch/name`, `unit/water/full-sign`, `word/black-water/meaning`.");
    public static final Key<String> SOURCE = DRAFT.required(
            "source", Type.TEXT, "The digest of the text that was translated; `bayfolio texts` writes it.");
    public static final Key<String> TEXT = DRAFT.optional(
            "text", Type.TEXT, "The text in this language; until it is there, readers get the one that is written.");
    public static final Shape<FactText> SHAPE = DRAFT.done(FactText::new);
}
