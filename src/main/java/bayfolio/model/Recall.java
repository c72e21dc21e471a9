package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** What is to be done on several coaches, each ticked off when it is done there. */
public record Recall(Facts facts) implements Described {
    private static final Shape.Draft<Recall> DRAFT =
            Shape.draft("recall", "What is to be done on several coaches, each ticked off.");
    public static final Key<String> CAMPAIGN =
            DRAFT.required("campaign", Type.NAME, "What the maker or the fleet calls it: `Dump valve seals 26-4`.");
    public static final Key<List<Located<Recalled>>> COACHES =
            DRAFT.required("coaches", Type.list(Type.nested(Recalled.SHAPE)), "The coaches on which it is to be done.");
    public static final Shape<Recall> SHAPE = DRAFT.done(Recall::new);

    public String campaign() {
        return facts.get(CAMPAIGN);
    }

    /** All of its coaches, as written. */
    public List<Recalled> coaches() {
        return facts.all(COACHES);
    }

    /** Ids of the coaches on which it is still to be done. */
    public List<String> open() {
        return coaches().stream()
                .filter(it -> it.doneOn().isEmpty())
                .map(Recalled::coach)
                .toList();
    }
}
