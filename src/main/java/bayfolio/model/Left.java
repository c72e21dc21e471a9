package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import java.util.Optional;

/** A coach that is no longer in the fleet; its old addresses stay. */
public record Left(Facts facts) implements Described {
    private static final Shape.Draft<Left> DRAFT =
            Shape.draft("left", "A coach that was in the fleet, and what became of it.");
    public static final Key<String> ID = DRAFT.required("id", Type.ID, "The id that it had.");
    public static final Key<String> NAME = DRAFT.required("name", Type.NAME, "What it was called.");
    public static final Key<String> TEXT = DRAFT.optional(
            "text", Type.TEXT, "What became of it: its old pages say so. Left out, `instead` leads on at once.");
    public static final Key<String> INSTEAD =
            DRAFT.optional("instead", Type.ID, "The coach that readers are led to, by its id.");
    public static final Shape<Left> SHAPE = DRAFT.done(Left::new);

    public String id() {
        return facts.get(ID);
    }

    public String name() {
        return facts.get(NAME);
    }

    public Optional<String> text() {
        return facts.find(TEXT);
    }

    public Optional<String> instead() {
        return facts.find(INSTEAD);
    }
}
