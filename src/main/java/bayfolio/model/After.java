package bayfolio.model;

import bayfolio.fact.Described;
import bayfolio.fact.Facts;
import bayfolio.fact.Key;
import bayfolio.fact.Shape;
import bayfolio.fact.Type;
import bayfolio.source.Located;
import java.util.List;

/** What is done before something else, and why. */
public record After(Facts facts) implements Described {
    private static final Shape.Draft<After> DRAFT =
            Shape.draft("order", "What is done before this, where a coach has it.");
    public static final Key<List<Located<String>>> WHAT =
            DRAFT.optional("what", Type.list(Type.ID), "Turns or kinds of equipment that come before.");
    public static final Key<List<Located<Equipment.Takes>>> TAKING = DRAFT.optional(
            "taking",
            Type.list(Type.choice(Equipment.Takes.class)),
            "All equipment that takes one of these comes before: what needs the battery, before that is switched off.");
    public static final Key<String> WHY = DRAFT.required("why", Type.TEXT, "What happens else, in one sentence.");
    public static final Key<Boolean> MUST = DRAFT.optional(
            "must",
            Type.YES_NO,
            "Whether somebody is hurt or something breaks else; what is merely better gives way to a coach's own order.");
    public static final Shape<After> SHAPE = DRAFT.done(After::new);

    /** Whether a kind comes before. */
    boolean names(Equipment kind) {
        return kind.isOneOf(facts.all(WHAT))
                || facts.all(TAKING).stream().anyMatch(kind.facts().all(Equipment.TAKES)::contains);
    }

    public boolean must() {
        return facts.find(MUST).orElse(false);
    }
}
