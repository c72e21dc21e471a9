package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** What backs the procedures, a file of its own. */
public record Sources(Facts facts) implements Described {
    private static final Shape.Draft<Sources> DRAFT = Shape.draft("sources", "What backs the procedures.");
    public static final Key<List<Located<PublishedSource>>> SOURCES =
            DRAFT.required("sources", Type.list(Type.nested(PublishedSource.SHAPE)), "All sources there are.");
    public static final Shape<Sources> SHAPE = DRAFT.done(Sources::new);
}
