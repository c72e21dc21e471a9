package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** The marks of earlier hires, a file of its own: staff add to it at each return, and the description stays as it is. */
public record HireMarks(Facts facts) implements Described {
    private static final Shape.Draft<HireMarks> DRAFT =
            Shape.draft("marks", "What earlier hires left on a coach, the oldest first.");
    public static final Key<List<Located<HireMark>>> MARKS =
            DRAFT.required("marks", Type.list(Type.nested(HireMark.SHAPE)), "All that is there now.");
    public static final Shape<HireMarks> SHAPE = DRAFT.done(HireMarks::new);
}
