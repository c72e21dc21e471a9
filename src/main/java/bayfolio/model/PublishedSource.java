package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.util.Optional;

/** What backs a procedure: a regulation, a standard, a manual, an article; or the practice of the trade. */
public record PublishedSource(Facts facts) implements Described {
    /** How far a source carries. */
    public enum Status {
        OFFICIAL,
        PUBLISHED,
        MANUAL,
        UNCONFIRMED
    }

    private static final Shape.Draft<PublishedSource> DRAFT =
            Shape.draft("source", "What backs a procedure, for staff to look up.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "Its name in the heads of procedures.");
    public static final Key<String> TITLE = DRAFT.required("title", Type.TEXT, "What was read, so that it is found.");
    public static final Key<Status> STATUS = DRAFT.optional(
            "status",
            Type.choice(Status.class),
            "How far it carries: `official` is a law, a standard or a public body; `published` a book or a magazine with its "
                    + "date; `manual` holds for one make; `unconfirmed` waits for a better one.");
    public static final Key<String> BACKS = DRAFT.optional("backs", Type.TEXT, "What it backs.");
    public static final Shape<PublishedSource> SHAPE = DRAFT.done(PublishedSource::new);

    public String id() {
        return facts.get(ID);
    }

    public Optional<Status> status() {
        return facts.find(STATUS);
    }

    public String title() {
        return facts.get(TITLE);
    }
}
