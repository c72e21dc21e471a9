package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** What backs a procedure: a regulation, a standard, a manual, an article; or the practice of the trade. */
public record PublishedSource(Facts facts) implements Described {
    private static final Shape.Draft<PublishedSource> DRAFT =
            Shape.draft("source", "What backs a procedure, for staff to look up.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "Its name in the heads of procedures.");
    public static final Key<String> TITLE = DRAFT.required("title", Type.TEXT, "What was read, so that it is found.");
    public static final Key<String> BACKS = DRAFT.optional("backs", Type.TEXT, "What it backs.");
    public static final Shape<PublishedSource> SHAPE = DRAFT.done(PublishedSource::new);

    public String id() {
        return facts.get(ID);
    }

    public String title() {
        return facts.get(TITLE);
    }
}
