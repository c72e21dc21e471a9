package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;

/** A finding that the writer has looked at and lives with, said beside the thing that it is about. */
public record Acceptance(Facts facts) implements Described {
    private static final Shape.Draft<Acceptance> DRAFT =
            Shape.draft("acceptance", "A warning or note that the writer has looked at and lives with.");
    public static final Key<String> CODE =
            DRAFT.required("code", Type.ID, "The code of the finding, as printed at its end.");
    public static final Key<String> REASON = DRAFT.required("reason", Type.TEXT, "Why it is right as it is.");
    public static final Shape<Acceptance> SHAPE = DRAFT.done(Acceptance::new);

    public String code() {
        return facts.get(CODE);
    }
}
